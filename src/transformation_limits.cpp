#include "internal/transformation_limits.hpp"

#include <algorithm>

#include "internal/melts.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"

namespace gibbsteel::internal {
namespace {

bool knows(const PhaseChanges& changes, const char* kind) {
  const auto& kinds = changes.low.kinds;
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

TransformationLimit no(std::string text) { return {std::nullopt, std::move(text)}; }

TransformationLimit at(const PhaseChanges& changes, Temperature t,
                       const std::string& text) {
  return {t, text + " at " + degrees(t, changes.temperature_unit)};
}

TransformationLimit start_of_austenite(const PhaseChanges& changes) {
  const auto austenite = changes.intervals("austenite");
  if (austenite.empty()) return no("there is no austenite in the range");
  switch (austenite.front().low_edge) {
    case Edge::change:
      return at(changes, austenite.front().low, "austenite first forms");
    case Edge::range:
      return no("there is austenite already at the low end of the range");
    case Edge::gap:
      break;
  }
  return no("austenite first forms where nothing is known");
}

/// The first stretch of ferrite: one that comes back at high temperature is another.
TransformationLimit end_of_ferrite(const PhaseChanges& changes) {
  const auto ferrite = changes.intervals("ferrite");
  if (ferrite.empty() || ferrite.front().low_edge == Edge::change)
    return no("there is no ferrite at the low end of the range");
  switch (ferrite.front().high_edge) {
    case Edge::change:
      if (melts(changes, ferrite.front().high))
        return no("ferrite melts before it is gone");
      return at(changes, ferrite.front().high, "the last ferrite is gone");
    case Edge::range:
      return no("there is ferrite up to the high end of the range");
    case Edge::gap:
      break;
  }
  return no("the last ferrite goes where nothing is known");
}

TransformationLimit end_of_cementite(const PhaseChanges& changes) {
  const auto cementite = changes.intervals("M3C");
  if (cementite.empty()) return no("there is no M3C in the range");
  const PhaseField& last = cementite.back();
  if (last.high_edge == Edge::range)
    return no("there is M3C up to the high end of the range");
  if (last.high_edge == Edge::gap) return no("M3C goes where nothing is known");
  const auto& ae3 = changes.ae3.temperature;
  if (melts(changes, last.high)) return no("M3C melts before it is gone");
  if (ae3 && last.high <= *ae3) return no("no M3C is left above Ae3");
  return at(changes, last.high, "M3C is gone");
}

}  // namespace

void find_limits(PhaseChanges& changes) {
  if (!knows(changes, "austenite") || !knows(changes, "ferrite")) {
    changes.ae1 = changes.ae3 = no("the parameter file lacks austenite or ferrite");
  } else {
    changes.ae1 = start_of_austenite(changes);
    changes.ae3 = end_of_ferrite(changes);
  }
  changes.acm = knows(changes, "M3C") ? end_of_cementite(changes)
                                      : no("the parameter file has no M3C");
}

}  // namespace gibbsteel::internal
