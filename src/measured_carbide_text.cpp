/// How a ShortSoak prints; see measured_carbide.hpp.

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/measured_carbide.hpp"
#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

int digits_of(const MatrixBand& band) { return band.element == "C" ? 3 : 2; }

bool is(const ShortSoak& soak, SolveStatus status) {
  return soak.state.solve_report.status == status;
}

/// Carbide was computed, not counted.
bool is_computed(const ShortSoak& soak) { return !is(soak, SolveStatus::measured); }

/// The count's own error; 0 says that none was given.
std::string deviation_text(const CarbideInBalance& c) {
  if (!c.measured) return "-";
  return c.standard_deviation > 0.0 ? fixed(c.standard_deviation, 2) : "not given";
}

/// What the band is made of.
std::string band_note(const ShortSoak& soak) {
  const std::string sources =
      "low, high: carbide composition of the soak or of annealing at " +
      fixed(soak.annealed_at.in_celsius(), 0) + " C";
  const bool counted =
      std::any_of(soak.carbides.begin(), soak.carbides.end(),
                  [](const CarbideInBalance& c) { return c.standard_deviation > 0.0; });
  return counted ? sources + ", and two\nstandard deviations of the count\n"
                 : sources + ";\nwithout the error of the count, which was not given\n";
}

std::string band_table(const ShortSoak& soak) {
  std::vector<std::vector<std::string>> rows{
      {"matrix, wt%", "value", "low", "high", "long hold"}};
  for (const MatrixBand& band : soak.bands) {
    if (band.element == "Fe") continue;
    const int digits = digits_of(band);
    rows.push_back({band.element, fixed(band.value, digits), fixed(band.low, digits),
                    fixed(band.high, digits), fixed(band.long_hold, digits)});
  }
  return internal::text_table(rows);
}

/// Carbide and matrix of a short-soak limit or timed soak beside the long hold.
std::string computed_tables(const ShortSoak& soak) {
  const bool timed = is(soak, SolveStatus::timed_soak);
  const std::string title = timed ? "timed soak" : "short soak";
  std::vector<std::vector<std::string>> carbides{{"carbide, vol%", title, "long hold"}};
  for (const CarbideInBalance& c : soak.carbides)
    carbides.push_back(
        {c.kind, fixed(c.volume_percent, 2), fixed(c.long_hold_volume, 2)});
  if (timed)
    return internal::text_table(carbides) + "\n" + band_table(soak) +
           "low, high: a third of the minutes, annealed up to 50 C colder, and three\n"
           "times, up to 30 C hotter\n";
  std::vector<std::vector<std::string>> matrix{{"matrix, wt%", title, "long hold"}};
  for (const MatrixBand& band : soak.bands)
    if (band.element != "Fe")
      matrix.push_back({band.element, fixed(band.value, digits_of(band)),
                        fixed(band.long_hold, digits_of(band))});
  return internal::text_table(carbides) + "\n" + internal::text_table(matrix);
}

std::string carbide_table(const ShortSoak& soak) {
  std::vector<std::vector<std::string>> rows{
      {"carbide", "vol%", "+-", "long hold", "composition of"}};
  for (const CarbideInBalance& c : soak.carbides) {
    const Temperature from = c.composition == CarbideSource::soak
                                 ? soak.state.temperature
                                 : soak.annealed_at;
    rows.push_back({c.kind + (c.measured ? "" : ", kept"), fixed(c.volume_percent, 2),
                    deviation_text(c), fixed(c.long_hold_volume, 2),
                    fixed(from.in_celsius(), 0) + " C"});
  }
  return internal::text_table(rows);
}

}  // namespace

const MatrixBand& ShortSoak::band(std::string_view element) const {
  std::string present;
  for (const MatrixBand& band : bands) {
    if (band.element == element) return band;
    present += (present.empty() ? "" : ", ") + band.element;
  }
  throw InputError(
      {{"gibbsteel.input.209", "matrix",
        "there is no '" + std::string(element) + "' in it", "present: " + present}});
}

std::string ShortSoak::brief() const {
  std::string text = state.brief();
  const auto carbon =
      std::find_if(bands.begin(), bands.end(),
                   [](const MatrixBand& band) { return band.element == "C"; });
  if (carbon == bands.end()) return text;
  if (is(*this, SolveStatus::short_soak_limit))
    return text + " (long-hold limit " + fixed(carbon->long_hold, 2) + ")";
  return text + " (" + fixed(carbon->low, 2) + " to " + fixed(carbon->high, 2) +
         "; long-hold limit " + fixed(carbon->long_hold, 2) + ")";
}

std::string ShortSoak::full() const {
  if (is_computed(*this)) return state.full() + "\n" + computed_tables(*this);
  return state.full() + "\n" + carbide_table(*this) + "\n" + band_table(*this) +
         band_note(*this);
}

}  // namespace gibbsteel
