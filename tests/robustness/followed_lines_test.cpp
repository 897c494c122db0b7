/// Lines of random steels in temperature and composition, followed from point to point,
/// against cold soaks with the certificate from many starts: no point may lie above.
///
/// GIBBSTEEL_LINES sets the number of lines (20 without), GIBBSTEEL_LINE_CHECK every
/// how many points a cold soak is made (10 without).

#include <doctest/doctest.h>

#include <cstdlib>

#include "continuation/solve_line.hpp"
#include "robustness/random_steels.hpp"

using namespace gibbsteel;
using internal::LinePoint;

namespace {

constexpr std::size_t kPoints = 200;
constexpr double kSameEnergy = 1e-4;  ///< [J/mol of atoms]

std::size_t from_environment(const char* name, std::size_t otherwise) {
  const char* text = std::getenv(name);
  return text ? std::strtoul(text, nullptr, 10) : otherwise;
}

struct RandomLine {
  PhaseSystem system;
  std::vector<LinePoint> points;
};

/// Over 550 C at one composition, or with one element from its content to 0.3 to 1.7
/// times that at one temperature.
RandomLine draw_line(const SharedParameters& set, bool heated,
                     std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(0.0, 1.0);
  const auto steel = testing::draw(*set, {700, 1250}, random);
  RandomLine line{
      PhaseSystem(set, steel.elements, testing::phases_without_graphite(*set)), {}};
  const auto e =
      1 + static_cast<std::size_t>(u(random) * static_cast<double>(steel.x.size() - 1));
  const double change = heated ? 0.0 : steel.x[e] * (1.4 * u(random) - 0.7);
  for (std::size_t i = 0; i < kPoints; ++i) {
    const double s = static_cast<double>(i) / (kPoints - 1);
    LinePoint& point = line.points.emplace_back();
    point.temperature =
        Temperature::celsius(heated ? 700.0 + 550.0 * s : steel.celsius);
    point.mole_fractions = steel.x;
    point.mole_fractions[e] += s * change;
    point.mole_fractions[0] -= s * change;
  }
  return line;
}

struct Tally {
  std::size_t compared = 0, above = 0, below = 0, not_usable = 0;
  internal::LineCounts counts;
};

void compare(const RandomLine& line, const std::vector<Equilibrium>& followed,
             std::size_t every, Tally& tally) {
  for (std::size_t i = 0; i < followed.size(); i += every) {
    const LinePoint& point = line.points[i];
    const auto cold = minimize(line.system, point.temperature, point.mole_fractions);
    if (!followed[i].report.usable() || !cold.report.usable()) {
      ++tally.not_usable;
      continue;
    }
    ++tally.compared;
    const double higher = followed[i].gibbs_energy - cold.gibbs_energy;
    tally.above += higher > kSameEnergy;
    tally.below += higher < -kSameEnergy;
    INFO("point ", i, ", ", point.temperature.in_celsius(), " C, higher by ", higher);
    CHECK(higher < kSameEnergy);
  }
}

}  // namespace

TEST_CASE("followed lines have the energies of cold soaks") {
  const std::size_t lines = from_environment("GIBBSTEEL_LINES", 20);
  const std::size_t every = from_environment("GIBBSTEEL_LINE_CHECK", 10);
  const auto set = default_parameters();
  std::mt19937_64 random(20260825);
  Tally tally;
  for (std::size_t l = 0; l < lines; ++l) {
    const RandomLine line = draw_line(set, l % 2 == 0, random);
    std::vector<Equilibrium> followed;
    const auto counts = internal::solve_line(
        line.system, {}, line.points, [&](std::size_t i, Equilibrium&& result) {
          CHECK(i == followed.size());
          CHECK((!result.report.usable() || result.report.balance_residual <= 1e-11));
          followed.push_back(std::move(result));
          return true;
        });
    REQUIRE(followed.size() == line.points.size());
    compare(line, followed, every, tally);
    tally.counts += counts;
  }
  MESSAGE(tally.counts.points, " points, ", tally.compared, " compared: ", tally.above,
          " above, ", tally.below, " below the cold soak, ", tally.not_usable,
          " not usable; solved cold ", tally.counts.cold, ", again ",
          tally.counts.again, ", anchors ", tally.counts.anchors, ", phase changes ",
          tally.counts.events);
  // Followed, or the line would prove nothing.
  CHECK(tally.counts.cold * 10 < tally.counts.points);
  CHECK(tally.not_usable * 200 <= tally.compared);
}
