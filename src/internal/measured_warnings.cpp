#include "internal/measured_warnings.hpp"

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

/// A count is not read closer than this [vol%].
constexpr double kReading = 0.1;

std::string percent(double value) { return fixed(value, 2) + " vol%"; }

bool below_the_limit(const CarbideInBalance& c) {
  return c.measured &&
         c.volume_percent + 2.0 * c.standard_deviation + kReading < c.long_hold_volume;
}

}  // namespace

std::vector<Warning> measured_warnings(const ShortSoak& result) {
  std::vector<Warning> list{
      {"gibbsteel.warning.345",
       "A short soak, not an equilibrium: the carbide was measured, the matrix is what "
       "it leaves (its band: see the ShortSoak); potentials are not known."}};
  for (const MeasuredCarbide& m : result.measured)
    if (m.smallest_counted)
      list.push_back({"gibbsteel.warning.346",
                      m.kind + " below " + shortest(*m.smallest_counted) +
                          " micrometre was not counted: what it holds is shown in the "
                          "matrix."});
  for (const CarbideInBalance& c : result.carbides) {
    if (!c.measured)
      list.push_back({"gibbsteel.warning.347",
                      c.kind + " was not measured and is kept at its long-hold " +
                          percent(c.volume_percent) + "."});
    if (below_the_limit(c))
      list.push_back({"gibbsteel.warning.348",
                      "Less " + c.kind + " was measured, " + percent(c.volume_percent) +
                          ", than the long-hold limit holds, " +
                          percent(c.long_hold_volume) +
                          ": check the count, the temperature and the analysis."});
  }
  return list;
}

}  // namespace gibbsteel::internal
