#include "measure.hpp"

#include <algorithm>
#include <chrono>

namespace gibbsteel::contest {
namespace {

constexpr std::size_t kRepetitions = 5, kMostRepetitions = 1000;
constexpr double kLeastSeconds = 0.02;

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  return 0.5 * (values[(n - 1) / 2] + values[n / 2]);
}

}  // namespace

Outcome measure(const Task& task, const std::function<Answer()>& solve,
                double most_seconds) {
  using Clock = std::chrono::steady_clock;
  Answer answer;
  std::vector<double> times;
  double used = 0.0;
  const auto wanted = [&] {
    if (times.size() < kRepetitions) return times.empty() || used < most_seconds;
    return used < kLeastSeconds && times.size() < kMostRepetitions;
  };
  while (wanted()) {
    const auto begin = Clock::now();
    answer = solve();
    times.push_back(std::chrono::duration<double>(Clock::now() - begin).count());
    used += times.back();
  }
  Outcome outcome = judge(task, answer);
  outcome.seconds = median(times);
  outcome.repetitions = static_cast<int>(times.size());
  return outcome;
}

}  // namespace gibbsteel::contest
