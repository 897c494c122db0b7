#include "gibbsteel/soak_grid.hpp"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "gibbsteel/errors.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/missing_carbon.hpp"
#include "internal/number_format.hpp"
#include "internal/parallel_for.hpp"
#include "internal/quantity_warnings.hpp"
#include "internal/soak_problem.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel {
namespace {

void check_values(const SweptVariable& variable, std::vector<Problem>& problems) {
  const auto finite = [](double x) { return std::isfinite(x); };
  const auto& values = variable.values;
  if (values.empty())
    problems.push_back({"gibbsteel.input.296", variable.name, "has no values",
                        "give a series of numbers"});
  else if (!std::all_of(values.begin(), values.end(), finite))
    problems.push_back({"gibbsteel.input.296", variable.name,
                        "has a value that is not a finite number",
                        "give a series of numbers"});
}

void check_variables(const SweptVariable& first, const SweptVariable& second,
                     bool fixed_temperature, std::vector<Problem>& problems) {
  const auto refuse = [&](std::string what, std::string remedy) {
    problems.push_back(
        {"gibbsteel.input.295", "grid", std::move(what), std::move(remedy)});
  };
  if (first.name == second.name)
    refuse("sweeps '" + first.name + "' twice", "sweep two different variables");
  if (first.name == "Fe" || second.name == "Fe")
    refuse("sweeps Fe, which is the balance", "sweep the other elements");
  const bool swept = first.is_temperature() || second.is_temperature();
  if (swept && fixed_temperature)
    refuse("has one temperature and sweeps it too", "give one or the other");
  if (!swept && !fixed_temperature)
    refuse("has no soak temperature", "give one, or sweep the temperature");
}

/// Refuses what no cell needs to be computed for.
void check(const SweptVariable& first, const SweptVariable& second,
           const std::optional<Temperature>& at, TemperatureUnit unit) {
  std::vector<Problem> problems;
  check_variables(first, second, at.has_value(), problems);
  check_values(first, problems);
  check_values(second, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  std::vector<Temperature> temperatures;
  if (at) temperatures.push_back(*at);
  for (const SweptVariable* variable : {&first, &second})
    if (variable->is_temperature())
      for (const double value : variable->values)
        temperatures.push_back(Temperature::celsius(value));
  internal::check_temperatures(temperatures, unit);
}

/// The compositions of a grid: one per pair, or one per row or column where the
/// temperature is swept. All are made before the first soak, so that a composition that
/// cannot be is refused at once.
class Compositions {
 public:
  Compositions(const Steel& steel, const SweptVariable& first,
               const SweptVariable& second)
      : by_row_(!first.is_temperature()),
        by_column_(!second.is_temperature()),
        columns_(by_column_ ? second.values.size() : 1) {
    const std::size_t rows = by_row_ ? first.values.size() : 1;
    for (std::size_t r = 0; r < rows; ++r)
      for (std::size_t c = 0; c < columns_; ++c) {
        NamedValues changes;
        if (by_row_) changes.set(first.name, first.values[r]);
        if (by_column_) changes.set(second.name, second.values[c]);
        add(steel, changes);
      }
    if (!problems_.empty()) throw InputError(std::move(problems_));
  }

  std::size_t index(std::size_t row, std::size_t column) const {
    return (by_row_ ? row : 0) * columns_ + (by_column_ ? column : 0);
  }
  const Steel& operator[](std::size_t index) const { return steels_[index]; }

 private:
  /// A problem that many cells share is kept once.
  void add(const Steel& steel, const NamedValues& changes) {
    try {
      steels_.push_back(steel.changed(changes, steel.name()));
    } catch (const InputError& error) {
      for (const Problem& problem : error.problems())
        if (std::find(problems_.begin(), problems_.end(), problem) == problems_.end())
          problems_.push_back(problem);
    }
  }

  bool by_row_, by_column_;
  std::size_t columns_;
  std::vector<Steel> steels_;
  std::vector<Problem> problems_;
};

Temperature temperature_at(const SoakGrid& grid, std::size_t row, std::size_t column) {
  if (grid.first.is_temperature()) return Temperature::celsius(grid.first.values[row]);
  if (grid.second.is_temperature())
    return Temperature::celsius(grid.second.values[column]);
  return *grid.temperature;
}

/// Each soak writes its own cell only. The calling thread tells of the progress of all.
void run(const Compositions& compositions, const SoakOptions& options,
         std::size_t threads, const std::function<bool(std::size_t)>& progress,
         SoakGrid& grid) {
  const auto caller = std::this_thread::get_id();
  const std::size_t cells = grid.states.size();
  std::atomic<std::size_t> done{0};
  std::atomic<bool> stopped{false};
  std::size_t told = 0;
  internal::parallel_for(cells, threads, [&](std::size_t i) {
    if (stopped) return;
    const std::size_t row = i / grid.columns(), column = i % grid.columns();
    const Steel& steel = compositions[compositions.index(row, column)];
    grid.states[i] = steel.soak(temperature_at(grid, row, column), options);
    const std::size_t count = ++done;
    if (!progress || std::this_thread::get_id() != caller) return;
    told = count;
    if (!progress(told)) stopped = true;
  });
  if (progress && !stopped && told < cells) progress(cells);
}

std::string range_text(const SweptVariable& variable, TemperatureUnit unit) {
  const auto [low, high] =
      std::minmax_element(variable.values.begin(), variable.values.end());
  if (variable.is_temperature())
    return variable.name + " " +
           internal::degrees({Temperature::celsius(*low), Temperature::celsius(*high)},
                             unit);
  return variable.name + " " + internal::significant(*low, 6) + " to " +
         internal::significant(*high, 6) + " " + variable.unit;
}

}  // namespace

SweptVariable SweptVariable::temperature(const std::vector<Temperature>& values) {
  SweptVariable variable{"temperature", "C", {}};
  for (const Temperature t : values) variable.values.push_back(t.in_celsius());
  return variable;
}

SweptVariable SweptVariable::element(std::string symbol,
                                     std::vector<double> weight_percent) {
  return {std::move(symbol), "wt%", std::move(weight_percent)};
}

std::string SweptVariable::label() const {
  return name + (is_temperature() ? "" : " in the steel") + " [" + unit + "]";
}

const std::optional<State>& SoakGrid::at(std::size_t row, std::size_t column) const {
  return states[row * columns() + column];
}

std::vector<double> SoakGrid::array(const Quantity& quantity) const {
  std::vector<double> values;
  for (const auto& state : states)
    values.push_back(state ? quantity.value(*state) : Occurrence::kUnknown);
  return values;
}

std::vector<Warning> SoakGrid::warnings_of(const Quantity& quantity) const {
  std::vector<const State*> done;
  for (const auto& state : states)
    if (state) done.push_back(&*state);
  std::vector<Warning> all = internal::distinct_warnings(done);
  internal::forget_swept_carbon({first.name, second.name}, all);
  for (const State* state : done)
    for (const Warning& warning : quantity.warnings(*state))
      internal::add_new_code(warning, all);
  if (!quantity.by_family()) return all;
  std::vector<const NamedValues*> steels;
  for (const State* state : done)
    if (state->usable()) steels.push_back(&state->analysis.modelled);
  for (const NamedValues* one : steels)
    internal::add_distinct(internal::near_border(*one), all);
  internal::add_distinct(internal::several_families(steels), all);
  return all;
}

std::size_t SoakGrid::not_done() const noexcept {
  return static_cast<std::size_t>(
      std::count(states.begin(), states.end(), std::nullopt));
}

std::size_t SoakGrid::failures() const noexcept {
  return static_cast<std::size_t>(
      std::count_if(states.begin(), states.end(),
                    [](const auto& state) { return state && !state->usable(); }));
}

std::vector<std::string> SoakGrid::carbide_kinds() const {
  std::vector<std::string> kinds;
  for (const auto& state : states) {
    if (!state) continue;
    for (const Occurrence& o : state->carbides())
      if (std::find(kinds.begin(), kinds.end(), o.kind) == kinds.end())
        kinds.push_back(o.kind);
  }
  return kinds;
}

std::string SoakGrid::brief() const {
  std::string text = (steel.empty() ? "steel" : steel) + ", " + std::to_string(rows()) +
                     " x " + std::to_string(columns()) + " soaks, " +
                     range_text(first, temperature_unit) + ", " +
                     range_text(second, temperature_unit);
  if (temperature) text += ", " + internal::degrees(*temperature, temperature_unit);
  if (failures() > 0) text += ", " + std::to_string(failures()) + " NOT USABLE";
  if (cancelled()) text += ", CANCELLED, " + std::to_string(not_done()) + " not done";
  return text + ", long-hold limit";
}

SoakGrid soak_grid(const Steel& steel, const SweptVariable& first,
                   const SweptVariable& second, std::optional<Temperature> at,
                   const SoakOptions& options,
                   const std::function<bool(std::size_t)>& progress,
                   std::size_t threads) {
  check(first, second, at, options.temperature_unit);
  const Compositions compositions(steel, first, second);
  SoakGrid grid{steel.name(),
                steel.analysis(),
                first,
                second,
                at,
                steel.parameters()->title(),
                steel.parameters_hash(),
                {},
                options.temperature_unit};
  grid.states.resize(grid.rows() * grid.columns());
  run(compositions, options, threads, progress, grid);
  return grid;
}

}  // namespace gibbsteel
