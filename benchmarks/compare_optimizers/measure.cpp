#include "measure.hpp"

#include <time.h>

#include <algorithm>

namespace gibbsteel::contest {
namespace {

constexpr std::size_t kRepetitions = 5;
constexpr double kLeastSeconds = 2e-3;  // of one timing

double processor_seconds() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  return 0.5 * (values[(n - 1) / 2] + values[n / 2]);
}

}  // namespace

Outcome measure(const Task& task, const std::function<Answer()>& solve,
                double most_seconds) {
  Answer answer;
  const auto seconds_of = [&](int calls) {
    const double begin = processor_seconds();
    for (int call = 0; call < calls; ++call) answer = solve();
    return (processor_seconds() - begin) / calls;
  };
  double last = seconds_of(1);
  int calls = 1;
  std::vector<double> times;
  if (last < kLeastSeconds)
    calls = 1 + static_cast<int>(kLeastSeconds / std::max(last, 1e-7));
  else
    times.push_back(last);
  double used = last;
  while (times.size() < kRepetitions && (times.empty() || used < most_seconds)) {
    last = seconds_of(calls);
    times.push_back(last);
    used += last * calls;
  }
  Outcome outcome = judge(task, answer);
  outcome.seconds = median(times);
  outcome.repetitions = static_cast<int>(times.size());
  return outcome;
}

}  // namespace gibbsteel::contest
