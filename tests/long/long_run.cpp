/// The long run: random cold conditions and swept lines with judges of every result.
///
///   long_run [--conditions N] [--sweep-points M] [--threads T] [--first F]
///            [--proof-every K] [--deep-every K] [--search-every K]
///
/// Prints tables; exit code 1 when a result is wrong without a flag. An interrupt or a
/// request to terminate ends it early, with the tables of what is done; exit code 3.

#include <atomic>
#include <charconv>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <map>
#include <mutex>

#include "gibbsteel/build_info.hpp"
#include "internal/parallel_for.hpp"
#include "long/cold_conditions.hpp"
#include "long/summary.hpp"
#include "long/sweep_lines.hpp"

namespace gibbsteel::long_run {
namespace {

using Arguments = std::map<std::string, std::size_t>;

/// @return false when the command line is not understood
bool read(int count, char** words, Arguments& arguments) {
  for (int k = 1; k + 1 < count; k += 2) {
    const auto place = arguments.find(words[k]);
    const char* end = words[k + 1] + std::strlen(words[k + 1]);
    if (place == arguments.end() ||
        std::from_chars(words[k + 1], end, place->second).ptr != end)
      return false;
  }
  return count % 2 == 1;
}

std::atomic<bool> stopped{false};
static_assert(std::atomic<bool>::is_always_lock_free);
extern "C" void stop(int) { stopped = true; }

/// Says on stderr how far it is, about every minute.
class Progress {
 public:
  Progress(const char* what, std::size_t parts) : what_(what), parts_(parts) {}
  void one_more() {
    const std::lock_guard guard(mutex_);
    ++done_;
    const auto now = Clock::now();
    if (now - last_ < std::chrono::seconds(60)) return;
    last_ = now;
    std::fprintf(stderr, "%s: %zu of %zu\n", what_, done_, parts_);
  }

 private:
  using Clock = std::chrono::steady_clock;
  const char* what_;
  std::size_t parts_, done_ = 0;
  Clock::time_point last_ = Clock::now();
  std::mutex mutex_;
};

/// The parts in their order, whatever thread did them.
template <class Part>
Outcome all_parts(const char* what, std::size_t parts, const Arguments& arguments,
                  const Part& part) {
  std::vector<Outcome> outcomes(parts);
  Progress progress(what, parts);
  internal::parallel_for(parts, arguments.at("--threads"), [&](std::size_t k) {
    if (stopped) return;
    outcomes[k] = part(arguments.at("--first") + k);
    progress.one_more();
  });
  Outcome all;
  for (Outcome& outcome : outcomes) all.add(std::move(outcome));
  return all;
}

std::size_t run_cold(const SharedParameters& set, const Arguments& arguments) {
  ColdOptions options;
  options.proof_every = arguments.at("--proof-every");
  options.deep_every = arguments.at("--deep-every");
  const std::size_t parts =
      (arguments.at("--conditions") + kGroupSize - 1) / kGroupSize;
  if (parts == 0) return 0;
  const Outcome outcome =
      all_parts("cold conditions", parts, arguments,
                [&](std::size_t number) { return cold_group(set, number, options); });
  const auto describe = [&](std::size_t part, std::size_t member) {
    return text(group(*set, part).steels[member]);
  };
  std::printf("RANDOM COLD CONDITIONS\n\n%s\n",
              summary(outcome, "conditions", describe).c_str());
  return outcome.wrong.size();
}

std::size_t run_lines(const SharedParameters& set, const Arguments& arguments) {
  const std::size_t every = arguments.at("--search-every");
  const std::size_t parts =
      (arguments.at("--sweep-points") + kLinePoints - 1) / kLinePoints;
  if (parts == 0) return 0;
  const Outcome outcome = all_parts("lines", parts, arguments, [&](std::size_t number) {
    return sweep_line(set, number, every > 0 && (number / 2) % every == 0);
  });
  const auto describe = [&](std::size_t part, std::size_t member) {
    return text(line(*set, part), member);
  };
  std::printf("SWEPT LINES\n\n%s\n", summary(outcome, "points", describe).c_str());
  return outcome.wrong.size();
}

int run(int count, char** words) {
  Arguments arguments{{"--conditions", 100000}, {"--sweep-points", 100000},
                      {"--threads", 2},         {"--first", 0},
                      {"--proof-every", 20},    {"--deep-every", 50},
                      {"--search-every", 4}};
  if (!read(count, words, arguments)) {
    std::fprintf(stderr, "long_run: each option takes a number:\n");
    for (const auto& [name, number] : arguments)
      std::fprintf(stderr, "  %s (%zu)\n", name.c_str(), number);
    return 2;
  }
  const SharedParameters set = default_parameters();
  const BuildInfo built = build_info();
  std::printf("gibbsteel %s, %s, %s\nparameters: %s\n", built.version.c_str(),
              built.compiler.c_str(), built.flags.c_str(), built.parameters.c_str());
  for (const auto& [name, number] : arguments)
    std::printf("%s %zu  ", name.c_str(), number);
  std::printf("\n\n");
  std::signal(SIGINT, stop);
  std::signal(SIGTERM, stop);
  std::size_t wrong = run_cold(set, arguments);
  if (!stopped) wrong += run_lines(set, arguments);
  std::printf("%zu silent wrong%s\n", wrong, stopped ? ", STOPPED EARLY" : "");
  return wrong > 0 ? 1 : stopped ? 3 : 0;
}

}  // namespace
}  // namespace gibbsteel::long_run

int main(int count, char** words) { return gibbsteel::long_run::run(count, words); }
