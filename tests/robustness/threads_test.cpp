/// Results do not depend, to the last bit, on the number of threads, on the order of
/// the work, or on what an object was used for before.

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <latch>
#include <random>
#include <thread>

#include "gibbsteel/errors.hpp"
#include "internal/soak_problem.hpp"
#include "robustness/random_steels.hpp"
#include "robustness/workload.hpp"

using namespace gibbsteel;
using internal::SoakProblem;
using testing::Bits;
using testing::Job;

namespace {

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr std::array<std::size_t, 2> kThreads{2, 3};
constexpr std::size_t kSteels = 6;
#else
constexpr std::array<std::size_t, 4> kThreads{1, 2, 3, 8};
constexpr std::size_t kSteels = 60;
#endif

/// Every thread does all jobs, each in an order of its own, all at the same time.
void compare(const std::vector<Job>& jobs, const std::vector<Bits>& expected,
             std::size_t threads) {
  std::vector<std::vector<Bits>> found(threads, std::vector<Bits>(jobs.size()));
  std::latch start(static_cast<std::ptrdiff_t>(threads));
  const auto work = [&](std::size_t thread) {
    std::mt19937 random(static_cast<unsigned>(100 * threads + thread));
    std::vector<std::size_t> order(jobs.size());
    for (std::size_t k = 0; k < order.size(); ++k) order[k] = k;
    std::shuffle(order.begin(), order.end(), random);
    start.arrive_and_wait();
    for (const std::size_t k : order) found[thread][k] = jobs[k].run();
  };
  {
    std::vector<std::jthread> workers;
    for (std::size_t k = 0; k < threads; ++k) workers.emplace_back(work, k);
  }
  for (std::size_t thread = 0; thread < threads; ++thread)
    for (std::size_t k = 0; k < jobs.size(); ++k) {
      CAPTURE(jobs[k].name);
      CAPTURE(thread);
      CHECK(found[thread][k] == expected[k]);
    }
}

struct Condition {
  Steel steel;
  Temperature t;
};

std::vector<Condition> random_conditions() {
  std::mt19937_64 random(4711);
  std::vector<Condition> conditions;
  for (std::size_t k = 0; k < kSteels; ++k) {
    const auto drawn = testing::draw(*default_parameters(), {27.0, 2226.0}, random);
    NamedValues percents;
    for (std::size_t e = 1; e < drawn.elements.size(); ++e)
      percents.set(drawn.elements[e], drawn.weight_percent[e]);
    conditions.push_back({Steel(percents), Temperature::celsius(drawn.celsius)});
  }
  return conditions;
}

Bits bits_of(const SoakProblem& problem, Temperature t) {
  Bits bits;
  bits.add(problem.state_of(problem.solve(t)));
  return bits;
}

/// Alone, in an object that was never used.
Bits alone(const Condition& condition) {
  return bits_of(SoakProblem(condition.steel, {}), condition.t);
}

/// Uses the phases of a problem in ways that fail. @return number of failures
int failures(const SoakProblem& problem, Temperature t) {
  SolveOptions hopeless;
  hopeless.max_newton_steps = hopeless.max_rounds = 1;
  hopeless.balance_tolerance = 1e-300;
  const auto stalled = minimize(problem.system, t, problem.mole_fractions, hopeless);
  int failed = stalled.report.usable() ? 0 : 1;
  auto negative = problem.mole_fractions;
  negative[0] = -1.0;
  try {
    minimize(problem.system, t, negative);
  } catch (const InputError&) {
    ++failed;
  }
  return failed;
}

}  // namespace

TEST_CASE("threads that share a steel and its parameters get the bits of one alone") {
  const Steel steel = testing::workload_steel();
  const auto jobs = testing::workload(steel);
  std::vector<Bits> expected;
  for (const Job& job : jobs) {
    CAPTURE(job.name);
    expected.push_back(job.run());
    REQUIRE_FALSE(expected.back().empty());
  }
  for (const std::size_t threads : kThreads) compare(jobs, expected, threads);
}

TEST_CASE("the order of conditions changes no bit") {
  const auto conditions = random_conditions();
  std::vector<Bits> expected;
  std::vector<std::size_t> order;
  for (const Condition& condition : conditions) {
    order.push_back(expected.size());
    expected.push_back(alone(condition));
  }
  for (const unsigned seed : {1u, 2u}) {
    std::shuffle(order.begin(), order.end(), std::mt19937(seed));
    for (const std::size_t k : order) CHECK(alone(conditions[k]) == expected[k]);
  }
}

TEST_CASE("what an object solved, or failed to solve, before changes no bit") {
  int failed = 0;
  for (const Condition& condition : random_conditions()) {
    const Temperature other = Temperature::celsius(900.0);
    const Bits first = alone(condition), second = alone({condition.steel, other});
    CHECK_FALSE(first == second);
    SoakProblem problem(condition.steel, {});
    CHECK(bits_of(problem, other) == second);
    CHECK(bits_of(problem, condition.t) == first);
    failed += failures(problem, condition.t);
    CHECK(bits_of(problem, condition.t) == first);
    const SoakProblem moved = std::move(problem);
    failed += failures(moved, other);
    CHECK(bits_of(moved, other) == second);
    CHECK(bits_of(moved, condition.t) == first);
  }
  CHECK(failed == static_cast<int>(4 * kSteels));
}
