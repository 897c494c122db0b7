#include "internal/melting_rule.hpp"

#include <algorithm>

#include "internal/liquid_share.hpp"
#include "internal/result_text.hpp"
#include "internal/soak_problem.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

/// The lowest stretch that is sure to be free of liquid, and what ends it; without
/// length when the range begins with liquid, or when nothing in it is known.
WindowSpan solid_part(const PhaseChanges& changes) {
  const Temperature low = changes.range.low;
  if (changes.fields.empty()) return {{low, low}, {}, WindowRule::unknown};
  const auto& phases = changes.fields.front().phases;
  if (std::find(phases.begin(), phases.end(), kLiquid) != phases.end())
    return {{low, low}, {}, WindowRule::melting};
  return without_kind(changes, kLiquid, WindowRule::melting).front();
}

/// From the end of the range as far as the margin reaches and a soak may go.
TemperatureRange beyond(const TemperatureRange& range, double margin) {
  const Temperature high = Temperature::kelvin(range.high.in_kelvin() + margin);
  return {range.high, std::min(high, highest_soak_temperature())};
}

std::string text_of(const WindowSpan& solid, double margin, double error,
                    TemperatureUnit unit) {
  const Temperature end = solid.range.high;
  if (solid.ceiling == WindowRule::range)
    return "no melting computed up to " + degrees(end, unit);
  const std::string name = "the computed solidus, ";
  const std::string start = degrees_apart(margin, unit) + " below " + name;
  if (solid.ceiling == WindowRule::unknown)
    return start + "not known beyond " + degrees(end, unit);
  const std::string at =
      error > 0.0 ? degrees_with_error(end, error, unit) : degrees(end, unit);
  if (!(solid.range.low < end)) return start + "not above " + at;
  return error > 0.0 ? below_low_end(end, margin, error, unit) + name + at : start + at;
}

}  // namespace

MeltingRule below_melting(
    const PhaseChanges& changes, double margin, double error,
    const std::function<PhaseChanges(const TemperatureRange&)>& look) {
  WindowSpan solid = solid_part(changes);
  const TemperatureRange above = beyond(changes.range, margin + error);
  if (solid.ceiling == WindowRule::range && above.low < above.high) {
    const WindowSpan more = solid_part(look(above));
    const bool goes_on = more.range.low == above.low;
    solid.ceiling = goes_on ? more.ceiling : WindowRule::unknown;
    if (goes_on) solid.range.high = more.range.high;
  }
  const Temperature most =
      Temperature::kelvin(solid.range.high.in_kelvin() - margin - error);
  const bool cut = solid.ceiling != WindowRule::range && most < changes.range.high;
  const TemperatureRange kept{solid.range.low, cut ? most : changes.range.high};
  MeltingRule rule{text_of(solid, margin, error, changes.temperature_unit), {}};
  if (solid.range.low < solid.range.high && kept.low < kept.high)
    rule.spans.push_back({kept, solid.floor, cut ? solid.ceiling : WindowRule::range});
  return rule;
}

}  // namespace gibbsteel::internal
