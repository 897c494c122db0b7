/// Sets in which every solution wants to fall apart. The reference is brute force: the
/// lower convex hull of energies on a dense grid, written down here once more.

#include <doctest/doctest.h>

#include <array>

#include <cmath>
#include <random>

#include "fuzz/solve_checks.hpp"
#include "hostile_sets.hpp"

using namespace gibbsteel;

namespace {

struct Solution {
  double iron, chromium;           ///< end members [J/mol]
  std::array<double, 3> exchange;  ///< orders 0, 1, 2 [J/mol]
};

/// x ln x, 0 at 0
double entropy(double x) { return x > 0.0 ? x * std::log(x) : 0.0; }

double energy(const Solution& s, double kelvin, double x) {
  const double difference = 1.0 - 2.0 * x;  // y(Fe) - y(Cr)
  return s.iron * (1.0 - x) + s.chromium * x +
         x * (1.0 - x) *
             (s.exchange[0] +
              difference * (s.exchange[1] + difference * s.exchange[2])) +
         kGasConstant * kelvin * (entropy(x) + entropy(1.0 - x));
}

/// Fractions from 0 to 1, 0.5 % apart near the ends and 0.0005 in the middle: with a
/// curvature of R T / x a chord is off by less than 0.02 J/mol.
std::vector<double> grid() {
  std::vector<double> x{0.0};
  for (double v = 1e-9; v < 0.05; v *= 1.005) x.push_back(v);
  for (int i = 0; i < 900; ++i) x.push_back(0.05 + 0.0005 * i);
  const std::size_t half = x.size();
  x.push_back(0.5);
  for (std::size_t i = half; i > 0; --i) x.push_back(1.0 - x[i - 1]);
  return x;
}

/// Lowest energy of any mixture of grid points with overall fraction `x`.
double hull_energy(const std::vector<Solution>& solutions, double kelvin, double x) {
  std::vector<std::pair<double, double>> hull;
  for (const double at : grid()) {
    double lowest = energy(solutions.front(), kelvin, at);
    for (const Solution& s : solutions)
      lowest = std::min(lowest, energy(s, kelvin, at));
    while (hull.size() > 1) {
      const auto &a = hull[hull.size() - 2], &b = hull.back();
      if ((b.first - a.first) * (lowest - a.second) >
          (b.second - a.second) * (at - a.first))
        break;
      hull.pop_back();
    }
    hull.emplace_back(at, lowest);
  }
  std::size_t k = 1;
  while (hull[k].first < x) ++k;
  const auto &a = hull[k - 1], &b = hull[k];
  return a.second + (b.second - a.second) * (x - a.first) / (b.first - a.first);
}

hostile::PhaseText text_of(const std::string& name, const Solution& s) {
  hostile::PhaseText phase{
      name,
      R"([{"sites": 1, "constituents": ["Fe", "Cr"]}])",
      {hostile::term(R"(["Fe"])", s.iron), hostile::term(R"(["Cr"])", s.chromium)}};
  for (int order = 0; order < 3; ++order)
    phase.terms.push_back(hostile::term(
        R"([["Fe", "Cr"]])", s.exchange[static_cast<std::size_t>(order)], order));
  return phase;
}

/// Whole numbers, so that the text of the file says exactly the same.
double whole(std::mt19937& random, double low, double high) {
  return std::round(std::uniform_real_distribution(low, high)(random));
}

std::vector<Solution> random_solutions(std::mt19937& random) {
  std::vector<Solution> solutions(1 + random() % 4);
  for (Solution& s : solutions)
    s = {whole(random, -3000, 3000),
         whole(random, -3000, 3000),
         {whole(random, 15000, 45000), whole(random, -12000, 12000),
          whole(random, -8000, 8000)}};
  return solutions;
}

struct Count {
  int usable = 0, flagged = 0, two = 0;
  double highest = -1e300, lowest = 1e300;  ///< against the hull [J/mol]
};

void compare(const std::vector<Solution>& solutions, double kelvin, double x,
             Count& count) {
  std::vector<hostile::PhaseText> phases;
  for (const Solution& s : solutions)
    phases.push_back(text_of("s" + std::to_string(phases.size()), s));
  const auto set =
      parse_parameters(hostile::file_of({"Fe", "Cr"}, phases), "gaps.json");
  const PhaseSystem system(set, {"Fe", "Cr"}, hostile::names_of(*set));
  const std::vector<double> overall{1.0 - x, x};
  const auto result = minimize(system, Temperature::kelvin(kelvin), overall);
  fuzz::check_result(system, overall, result);
  if (!result.report.usable()) {
    ++count.flagged;
    MESSAGE("flagged at " << kelvin << " K, x = " << x << ": "
                          << result.report.brief());
    return;
  }
  ++count.usable;
  count.two += result.present.size() == 2 ? 1 : 0;
  const double above = result.gibbs_energy - hull_energy(solutions, kelvin, x);
  count.highest = std::max(count.highest, above);
  count.lowest = std::min(count.lowest, above);
}

}  // namespace

TEST_CASE("one to four solutions, each with a gap, against a dense grid") {
  std::mt19937 random(7);
  Count count;
  for (int i = 0; i < 400; ++i) {
    CAPTURE(i);
    const auto solutions = random_solutions(random);
    const double kelvin = whole(random, 600, 2600);
    const double x = std::uniform_real_distribution(0.001, 0.999)(random);
    compare(solutions, kelvin, x, count);
  }
  MESSAGE(count.usable << " usable, " << count.two << " of them two phases; "
                       << count.flagged << " flagged; energy " << count.lowest << " to "
                       << count.highest << " J/mol above the grid's");
  CHECK(count.two > 100);
  CHECK(count.usable >= 396);    // 99 %
  CHECK(count.highest <= 1e-6);  // the grid can only be higher, but for rounding
  CHECK(count.lowest >= -0.02);
}

TEST_CASE("ternary: three nearly pure phases of one solution model") {
  const std::vector<std::string> symbols{"Fe", "Cr", "Mo"};
  auto phase = hostile::solution("one", symbols, 0.0, 0.0);
  phase.terms.resize(3);
  hostile::add_order(phase, symbols, 0, 40000.0);
  const auto set = parse_parameters(hostile::file_of(symbols, {phase}), "three.json");
  const PhaseSystem system(set, symbols, {"one"});
  const std::vector<double> overall{0.5, 0.3, 0.2};
  const auto result = minimize(system, Temperature::kelvin(1000.0), overall);
  fuzz::check_result(system, overall, result);
  REQUIRE(result.report.usable());
  REQUIRE(result.present.size() == 3);
  // By symmetry each phase has y, (1 - y)/2, (1 - y)/2, and mu is the same for all:
  // ln(y / z) = 40000 (y - z) / R T. Solved here by iteration.
  double z = 0.01;
  for (int i = 0; i < 200; ++i)
    z = (1.0 - 2.0 * z) *
        std::exp(-40000.0 * (1.0 - 3.0 * z) / (kGasConstant * 1000.0));
  for (const PhasePoint& point : result.present)
    CHECK(*std::max_element(point.y.begin(), point.y.end()) ==
          doctest::Approx(1.0 - 2.0 * z).epsilon(1e-7));
}

TEST_CASE("thirty elements at a temperature where none dissolves another") {
  const auto& symbols = hostile::thirty_elements();
  auto phase = hostile::solution("one", symbols, 0.0, 0.0);
  phase.terms.resize(30);
  hostile::add_order(phase, symbols, 0, 40000.0);
  const auto set = parse_parameters(hostile::file_of(symbols, {phase}), "thirty.json");
  const PhaseSystem system(set, symbols, {"one"});
  const std::vector<double> overall(30, 1.0 / 30.0);
  const auto result = minimize(system, Temperature::kelvin(400.0), overall);
  fuzz::check_result(system, overall, result);
  MESSAGE(result.report.brief() << ", " << result.present.size() << " phases");
  // k elements in one phase have 20000 (1 - 1/k) - R T ln k: lowest for k = 1.
  if (result.report.usable()) CHECK(result.present.size() == 30);
}
