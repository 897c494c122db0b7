/// A point that is followed takes no memory: counted by a malloc() of this file in the
/// place of that of the C library (operator new and Eigen both end there). Under a
/// sanitizer, which has a malloc() of its own, only that the points are followed.

#include <doctest/doctest.h>

#include <atomic>
#include <cstddef>

#include "continuation/line_solver.hpp"
#include "gibbsteel/gibbsteel.hpp"

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__) || !defined(__GLIBC__)
constexpr bool kCounted = false;
constexpr long allocations = 0;
#else
constexpr bool kCounted = true;
static std::atomic<long> allocations{0};
extern "C" void* __libc_malloc(std::size_t);
extern "C" void* malloc(std::size_t size) {
  ++allocations;
  return __libc_malloc(size);
}
#endif

using namespace gibbsteel;

TEST_CASE("a followed soak of a high-speed steel takes no memory") {
  NamedValues percent{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}};
  percent.set("Co", 5.0);
  for (const char* tramp : {"Ni", "Mn", "Si"}) percent.set(tramp, 0.3);
  const Steel steel(percent);
  std::vector<std::string> phases;
  for (const Phase& phase : steel.parameters()->phases) phases.push_back(phase.name);
  const PhaseSystem system(steel.parameters(), steel.elements(), phases);
  internal::LineSolver line(system, {});
  const auto at = [](int i) { return Temperature::celsius(1100.0 + 0.1 * i); };
  const std::vector<double> x = steel.mole_fractions();
  for (int i = 0; i < 5; ++i) line.next(at(i), x);
  const long before = allocations;
  long cold = 0;
  for (int i = 5; i < 105; ++i) {
    line.next(at(i), x);
    cold += line.is_cold() ? 1 : 0;
  }
  const long taken = allocations - before;
  CHECK(cold == 0);
  CHECK(line.report().certificate == Certificate::followed);
  if (!kCounted) return;
  CHECK(taken == 0);
  const std::vector<double> seen(1);  // the counter counts
  CHECK(allocations > before);
}
