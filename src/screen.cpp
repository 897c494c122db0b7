#include "gibbsteel/screen.hpp"

#include <algorithm>
#include <atomic>
#include <thread>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/parallel_for.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/soak_problem.hpp"
#include "screening/screen_rows.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kBlocksPerThread = 16;  ///< of a chunk, when not chosen

using Problems = std::vector<Problem>;

void check_columns(const ScreenInput& input, Problems& problems) {
  const auto& names = input.elements;
  if (names.empty())
    problems.push_back({"gibbsteel.input.320", "compositions", "have no columns",
                        "name the element of each column, for instance C, Cr, Mo"});
  else if (input.compositions.size() % names.size() != 0)
    problems.push_back({"gibbsteel.input.320", "compositions",
                        "are " + std::to_string(input.compositions.size()) +
                            " numbers for " + std::to_string(names.size()) + " columns",
                        "give one number per element in every row"});
  for (auto symbol = names.begin(); symbol != names.end(); ++symbol) {
    if (std::find(names.begin(), symbol, *symbol) != symbol) {
      problems.push_back({"gibbsteel.input.321", "elements",
                          "'" + *symbol + "' has two columns",
                          "give each element one column"});
    } else if (!find_element(*symbol)) {
      const auto meant = suggest_element(*symbol);
      problems.push_back({"gibbsteel.input.201", "elements",
                          "'" + *symbol + "' is not the symbol of an element",
                          meant.empty()
                              ? "give symbols such as C, Cr, Mo"
                              : "did you mean '" + std::string(meant) + "'?"});
    }
  }
}

void check_counts(const ScreenInput& input, const ScreenOptions& options,
                  Problems& problems) {
  const std::size_t given = input.temperatures.size();
  if (given == 0)
    problems.push_back({"gibbsteel.input.322", "temperatures", "are none",
                        "give at least one temperature"});
  else if (input.one_per_composition && given != input.count())
    problems.push_back({"gibbsteel.input.322", "temperatures",
                        "are " + std::to_string(given) + " for " +
                            std::to_string(input.count()) + " compositions",
                        "give one per composition"});
  if (options.first_row > input.rows() || options.first_row > options.last_row)
    problems.push_back({"gibbsteel.input.323", "first_row",
                        "is " + std::to_string(options.first_row) + " of " +
                            std::to_string(std::min(input.rows(), options.last_row)) +
                            " rows",
                        "give the number of a row, counted from 0"});
}

void check(const ScreenInput& input, const ScreenOptions& options) {
  Problems problems = options.soak.solve.problems();
  check_columns(input, problems);
  if (problems.empty()) check_counts(input, options, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  internal::require_known(options.quantities, options.parameters
                                                  ? *options.parameters
                                                  : *default_parameters());
  if (!input.one_per_composition)
    internal::check_temperatures(input.temperatures, options.soak.temperature_unit);
}

std::size_t thread_count(std::size_t asked) {
  return asked ? asked : std::max(1u, std::thread::hardware_concurrency());
}

/// One screen, chunk after chunk.
class Run {
 public:
  Run(const ScreenInput& input, const ScreenOptions& options,
      const ScreenProgress& progress)
      : options_(options),
        progress_(progress),
        rows_(input, options),
        last_row_(std::min(options.last_row, rows_.rows())) {}

  std::size_t last_row() const noexcept { return last_row_; }
  bool stopped() const noexcept { return stopped_; }

  /// Rows first to last; fewer when the caller stops.
  ScreenTable chunk(std::size_t first, std::size_t last) {
    ScreenTable table = rows_.blank();
    table.first_row = first;
    table.rows_asked = last - first;
    table.resize(last - first);
    const std::size_t begin = first / kScreenBlockRows;
    const std::size_t end = (last + kScreenBlockRows - 1) / kScreenBlockRows;
    std::vector<char> done(end - begin, 0);
    solve_blocks(begin, done, table);
    const auto gap = std::find(done.begin(), done.end(), 0);
    const auto whole = static_cast<std::size_t>(gap - done.begin());
    const std::size_t reached = (begin + whole) * kScreenBlockRows;
    table.resize(std::clamp(reached, first, last) - first);
    return table;
  }

 private:
  /// Each block writes its own rows and its own mark only.
  void solve_blocks(std::size_t begin, std::vector<char>& done, ScreenTable& table) {
    const auto caller = std::this_thread::get_id();
    const auto task = [&](std::size_t i) {
      if (stopped_) return;
      try {
        rows_.solve(begin + i, table);
      } catch (const StopScreen&) {
        stopped_ = true;
        return;
      }
      done[i] = 1;
      blocks_done_ += 1;
      if (std::this_thread::get_id() == caller && !wants_more()) stopped_ = true;
    };
    internal::parallel_for(done.size(), thread_count(options_.threads), task);
    if (!stopped_ && blocks_done_ > blocks_told_ && !wants_more()) stopped_ = true;
  }

  bool wants_more() {
    blocks_told_ = blocks_done_;
    const std::size_t all = last_row_ - options_.first_row;
    return !progress_ || progress_(std::min(blocks_told_ * kScreenBlockRows, all));
  }

  const ScreenOptions& options_;
  const ScreenProgress& progress_;
  internal::ScreenRows rows_;
  std::size_t last_row_;
  std::atomic<std::size_t> blocks_done_{0};
  std::size_t blocks_told_ = 0;  ///< to the progress function
  std::atomic<bool> stopped_{false};
};

/// Whole blocks, and no more than hold all rows.
std::size_t chunk_rows(const ScreenOptions& options, std::size_t rows) {
  const std::size_t most = rows / kScreenBlockRows + 1;
  const std::size_t wanted =
      options.chunk_rows
          ? (std::min(options.chunk_rows, rows) + kScreenBlockRows - 1) /
                kScreenBlockRows
          : kBlocksPerThread * std::min(thread_count(options.threads), most);
  return std::min(wanted, most) * kScreenBlockRows;
}

/// @return  the first row that is not done
std::size_t run_chunks(Run& run, const ScreenOptions& options, const ScreenSink& sink) {
  const std::size_t size = chunk_rows(options, run.last_row());
  std::size_t row = options.first_row;
  while (row < run.last_row() && !run.stopped()) {
    // Chunks end where blocks end, so that no block is solved twice.
    const std::size_t whole = (row + size) / kScreenBlockRows * kScreenBlockRows;
    const std::size_t end = std::min(whole, run.last_row());
    ScreenTable table = run.chunk(row, end);
    row = table.next_row();
    if (!sink(std::move(table))) break;
  }
  return row;
}

ScreenOptions with_parameters(ScreenOptions options) {
  if (!options.parameters) options.parameters = default_parameters();
  return options;
}

}  // namespace

std::size_t ScreenInput::rows() const noexcept {
  return one_per_composition ? count() : count() * temperatures.size();
}

NamedValues ScreenInput::composition(std::size_t row) const {
  const auto given = numbers(row);
  NamedValues weight_percent;
  for (std::size_t e = 0; e < elements.size(); ++e)
    weight_percent.set(elements[e], given[e]);
  return weight_percent;
}

std::span<const double> ScreenInput::numbers(std::size_t row) const {
  const std::size_t i = one_per_composition ? row : row / temperatures.size();
  return compositions.subspan(i * elements.size(), elements.size());
}

Temperature ScreenInput::temperature(std::size_t row) const {
  return temperatures[one_per_composition ? row : row % temperatures.size()];
}

std::size_t screen_chunks(const ScreenInput& input, const ScreenOptions& options,
                          const ScreenSink& sink, const ScreenProgress& progress) {
  check(input, options);
  const ScreenOptions chosen = with_parameters(options);
  Run run(input, chosen, progress);
  return run_chunks(run, chosen, sink);
}

ScreenTable screen(const ScreenInput& input, const ScreenOptions& options,
                   const ScreenProgress& progress) {
  check(input, options);
  const ScreenOptions chosen = with_parameters(options);
  Run run(input, chosen, progress);
  // One chunk for all: nothing is copied, and no thread waits for the end of another.
  return run.chunk(chosen.first_row, run.last_row());
}

}  // namespace gibbsteel
