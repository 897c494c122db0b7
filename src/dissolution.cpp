/// The temperature above which a kind of phase is gone; see phase_changes.hpp.

#include <algorithm>

#include "internal/distinct_warnings.hpp"
#include "internal/liquid_share.hpp"
#include "internal/melts.hpp"
#include "internal/phase_change_text.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;

std::string intervals_text(const Dissolution& found, TemperatureUnit unit) {
  std::string text;
  for (const PhaseField& interval : found.intervals)
    text += (text.empty() ? "" : ", and ") + internal::interval_text(interval, unit);
  return text;
}

std::string sentence(const Dissolution& found, TemperatureUnit unit) {
  const std::string present =
      found.kind + " is present from " + intervals_text(found, unit);
  switch (found.status) {
    case DissolutionStatus::found:
      return found.kind + " is gone above " +
             internal::degrees(*found.temperature, unit) +
             internal::in_brackets(
                 internal::at_least(found.uncertainty_at_least, unit)) +
             "; " + present;
    case DissolutionStatus::never_present:
      return found.kind + " is not present anywhere in the range";
    case DissolutionStatus::still_present:
      return found.kind + " is still there at the high end of the range; " + present;
    case DissolutionStatus::not_known:
      break;
  }
  const std::string why = "part of the range is not known";
  return found.intervals.empty() ? why + "; " + found.kind + " is not present elsewhere"
                                 : why + "; " + present;
}

/// True when nothing above the temperature is unknown.
bool known_above(const PhaseChanges& changes, Temperature t) {
  if (!changes.stopped.empty()) return false;
  return changes.gaps.empty() || changes.gaps.back().high < t;
}

DissolutionStatus status_of(const PhaseChanges& changes, const Dissolution& found) {
  if (found.intervals.empty())
    return changes.complete() ? DissolutionStatus::never_present
                              : DissolutionStatus::not_known;
  const PhaseField& last = found.intervals.back();
  if (last.high_edge == Edge::range && changes.stopped.empty())
    return DissolutionStatus::still_present;
  return last.high_edge == Edge::change && known_above(changes, last.high)
             ? DissolutionStatus::found
             : DissolutionStatus::not_known;
}

/// The change at which the kind goes; null without one.
const PhaseChange* change_of(const PhaseChanges& changes, const Dissolution& found) {
  if (found.temperature)
    for (const PhaseChange& change : changes.changes)
      if (change.temperature == *found.temperature) return &change;
  return nullptr;
}

/// Both sides of the change at which the kind goes; else the ends of the search.
std::vector<Warning> warnings_of(const PhaseChanges& changes,
                                 const PhaseChange* change) {
  return change ? internal::distinct_warnings({&change->below, &change->above})
                : internal::distinct_warnings({&changes.low, &changes.high});
}

/// False: read from a pickle of the format that did not hold it.
bool says_where(const Dissolution& found) { return !found.parameters.empty(); }

}  // namespace

std::string_view to_string(DissolutionStatus status) noexcept {
  switch (status) {
    case DissolutionStatus::found:
      return "found";
    case DissolutionStatus::never_present:
      return "never present";
    case DissolutionStatus::still_present:
      return "still present";
    case DissolutionStatus::not_known:
      break;
  }
  return "not known";
}

std::string_view to_string(Edge edge) noexcept {
  if (edge == Edge::change) return "change";
  return edge == Edge::range ? "range" : "gap";
}

Dissolution PhaseChanges::dissolution(std::string_view kind) const {
  Dissolution found;
  found.kind = kind;
  found.steel = steel;
  found.range = range;
  found.analysis = low.analysis;
  found.parameters = low.parameters;
  found.intervals = intervals(kind);
  found.status = status_of(*this, found);
  if (found.status == DissolutionStatus::found)
    found.temperature = found.intervals.back().high;
  const PhaseChange* change = change_of(*this, found);
  if (change) found.uncertainty_at_least = change->uncertainty_at_least;
  found.temperature_unit = temperature_unit;
  found.text = sentence(found, temperature_unit);
  if (found.temperature && kind != internal::kLiquid &&
      internal::melts(*this, *found.temperature))
    found.text += "; in the melt";
  found.warnings = warnings_of(*this, change);
  return found;
}

std::string Dissolution::brief() const {
  std::string result;
  if (says_where(*this))
    result = (steel.empty() ? "steel" : steel) + ", " +
             internal::degrees(range, temperature_unit) + ", ";
  return result + "long-hold limit: " + std::string(to_string(status)) + ": " + text;
}

std::string Dissolution::full() const {
  std::string result = internal::wrapped(brief(), kWidth, 2);
  if (says_where(*this))
    result += internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
              "parameters: " + parameters + "\n\n";
  for (const Warning& warning : warnings)
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
