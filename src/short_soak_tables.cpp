#include "internal/short_soak_tables.hpp"

#include <algorithm>

#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

using Rows = std::vector<std::vector<std::string>>;

/// The count's own error; 0 says that none was given.
std::string deviation_text(const CarbideInBalance& c) {
  if (!c.measured) return "-";
  return c.standard_deviation > 0.0 ? fixed(c.standard_deviation, 2) : "not given";
}

Rows counted_rows(const ShortSoak& soak) {
  Rows rows{{"carbide", "vol%", "+-", "long hold", "composition of"}};
  for (const CarbideInBalance& c : soak.carbides) {
    const Temperature from = c.composition == CarbideSource::soak
                                 ? soak.state.temperature
                                 : soak.annealed_at;
    rows.push_back({c.kind + (c.measured ? "" : ", kept"), fixed(c.volume_percent, 2),
                    deviation_text(c), fixed(c.long_hold_volume, 2), degrees(from)});
  }
  return rows;
}

}  // namespace

bool is_computed(const ShortSoak& soak) {
  return soak.state.solve_report.status != SolveStatus::measured;
}

Rows carbide_rows(const ShortSoak& soak) {
  if (!is_computed(soak)) return counted_rows(soak);
  const bool timed = soak.state.solve_report.status == SolveStatus::timed_soak;
  Rows rows{{"carbide, vol%", timed ? "timed soak" : "short soak", "long hold"}};
  for (const CarbideInBalance& c : soak.carbides)
    rows.push_back({c.kind, fixed(c.volume_percent, 2), fixed(c.long_hold_volume, 2)});
  return rows;
}

Rows band_rows(const ShortSoak& soak) {
  Rows rows{{"matrix, wt%", "value", "low", "high", "long hold"}};
  for (const MatrixBand& band : soak.bands) {
    if (band.element == "Fe") continue;
    const int digits = band.element == "C" ? 3 : 2;
    rows.push_back({band.element, fixed(band.value, digits), fixed(band.low, digits),
                    fixed(band.high, digits), fixed(band.long_hold, digits)});
  }
  return rows;
}

std::string band_sentence(const ShortSoak& soak) {
  switch (soak.state.solve_report.status) {
    case SolveStatus::timed_soak:
      return "low, high: a third of the minutes, annealed up to 50 C colder, and three "
             "times, up to 30 C hotter";
    case SolveStatus::short_soak_limit:
      return "low, high: this limit and the long-hold limit";
    default:
      break;
  }
  const std::string sources =
      "low, high: carbide composition of the soak or of annealing at " +
      degrees(soak.annealed_at);
  const bool counted =
      std::any_of(soak.carbides.begin(), soak.carbides.end(),
                  [](const CarbideInBalance& c) { return c.standard_deviation > 0.0; });
  return sources + (counted ? ", and two standard deviations of the count"
                            : "; without the error of the count, which was not given");
}

}  // namespace gibbsteel::internal
