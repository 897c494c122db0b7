#include "internal/window_text.hpp"

#include <algorithm>
#include <cmath>

#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::degrees;

constexpr std::size_t kWidth = 78;

/// "831 to 1038 C"; an end that no rule sets is not named: "from 831 C".
std::string span_text(const WindowSpan& span, TemperatureUnit unit) {
  const bool low = span.floor != WindowRule::range;
  const bool high = span.ceiling != WindowRule::range;
  if (low && high) return degrees(span.range, unit);
  if (low) return "from " + degrees(span.range.low, unit);
  return high ? "up to " + degrees(span.range.high, unit) : "all over the range";
}

std::string where_text(const RuleSpans& rule, TemperatureUnit unit) {
  std::string where;
  for (const WindowSpan& span : rule.spans)
    where += (where.empty() ? "" : ", ") + span_text(span, unit);
  return rule.text + ": " + (where.empty() ? "nowhere" : where);
}

/// "no ferrite" for the rule that sets an end.
std::string name_of(const HardeningWindow& window, WindowRule rule) {
  for (const RuleSpans& known : window.rules)
    if (known.rule == rule) return known.text;
  return "temperatures beyond are not known";
}

bool has_rule(const HardeningWindow& window, WindowRule rule) {
  return std::any_of(window.rules.begin(), window.rules.end(),
                     [&](const RuleSpans& known) { return known.rule == rule; });
}

std::string floor_text(const HardeningWindow& window) {
  if (window.floor_rule == WindowRule::range)
    return "no floor: nothing that was given sets one down to " +
           degrees(window.range.low, window.temperature_unit) +
           ", where the search began";
  const bool ferrite_alone = window.floor_rule == WindowRule::ferrite &&
                             !has_rule(window, WindowRule::hardness);
  return "floor set by: " + name_of(window, window.floor_rule) +
         (ferrite_alone ? " alone" : "");
}

std::string ceiling_text(const HardeningWindow& window) {
  if (window.ceiling_rule == WindowRule::range)
    return "no ceiling: nothing that was given sets one up to " +
           degrees(window.range.high, window.temperature_unit) +
           ", where the search ended";
  return "ceiling set by: " + name_of(window, window.ceiling_rule);
}

std::string rules_text(const HardeningWindow& window) {
  std::string text;
  for (const RuleSpans& rule : window.rules)
    text += (text.empty() ? "" : "; ") + where_text(rule, window.temperature_unit);
  return text;
}

/// @param end  "floor" or "ceiling"; where there is none, the end of the search
std::string soak_row(const char* end, const char* of_search, WindowRule rule,
                     const State& state) {
  const std::string name = rule == WindowRule::range ? of_search : end;
  return internal::wrapped(name + ": " + state.brief(), kWidth, 2);
}

}  // namespace

std::string_view to_string(WindowRule rule) noexcept {
  switch (rule) {
    case WindowRule::range:
      return "range";
    case WindowRule::ferrite:
      return "ferrite";
    case WindowRule::hardness:
      return "hardness";
    case WindowRule::pinning:
      return "pinning";
    case WindowRule::solidus:
      return "solidus";
    case WindowRule::melting:
      return "melting";
    case WindowRule::left_out:
      return "left out";
    case WindowRule::unknown:
      break;
  }
  return "unknown";
}

std::string_view to_string(WindowStatus status) noexcept {
  switch (status) {
    case WindowStatus::found:
      return "found";
    case WindowStatus::no_window:
      return "no window";
    case WindowStatus::not_known:
      break;
  }
  return "not known";
}

std::string internal::solidus_text(const SolidusBound& bound, double margin,
                                   double sooner, TemperatureUnit unit) {
  const Temperature t = Temperature::celsius(bound.celsius);
  const std::string at = ", " + degrees_with_error(t, bound.uncertainty, unit);
  const std::string start = below_low_end(t, margin, bound.uncertainty, unit);
  switch (bound.sense) {
    case SolidusSense::at_least:
      return "the low end of what is known to be free of melt of " + bound.steel + at +
             (sooner < 0.5 ? ""
                           : ", less " + degrees_apart(std::round(sooner), unit) +
                                 " for more carbon");
    case SolidusSense::at_most:
      return start + "where " + bound.steel + " has been seen to melt" + at;
    case SolidusSense::measured:
      break;
  }
  return start + "the start of melting of " + bound.steel + at;
}

std::string internal::window_text(const HardeningWindow& window) {
  const TemperatureUnit unit = window.temperature_unit;
  const std::string searched = degrees(window.range, unit);
  switch (window.status) {
    case WindowStatus::found:
      return span_text(window.spans.front(), unit) + "; " + floor_text(window) + "; " +
             ceiling_text(window);
    case WindowStatus::no_window:
      return "none: no temperature in the range, " + searched + ", keeps all rules (" +
             rules_text(window) + ")";
    case WindowStatus::not_known:
      break;
  }
  return "none found, but part of the range, " + searched + ", is not known (" +
         rules_text(window) + ")";
}

std::string HardeningWindow::brief() const {
  return (steel.empty() ? "steel" : steel) +
         ", hardening window, long-hold limit: " + text;
}

std::string HardeningWindow::full() const {
  std::string result =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      internal::wrapped("parameters: " + parameters, kWidth, 2) + "\n";
  result +=
      internal::wrapped("searched: " + degrees(range, temperature_unit), kWidth, 2);
  for (const RuleSpans& rule : rules)
    result += internal::wrapped(where_text(rule, temperature_unit), kWidth, 2);
  if (status == WindowStatus::found)
    result += soak_row("floor", "low end of the search", floor_rule, at_floor) +
              soak_row("ceiling", "high end of the search", ceiling_rule, at_ceiling);
  for (const std::string& remark : remarks)
    result += internal::wrapped(remark, kWidth, 2);
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
