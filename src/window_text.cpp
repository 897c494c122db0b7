#include "internal/window_text.hpp"

#include <algorithm>

#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

std::string span_text(const TemperatureRange& range) {
  return fixed(range.low.in_celsius(), 0) + " to " + fixed(range.high.in_celsius(), 0) +
         " C";
}

/// "no ferrite" for the rule that sets an end.
std::string name_of(const HardeningWindow& window, WindowRule rule) {
  for (const RuleSpans& known : window.rules)
    if (known.rule == rule) return known.text;
  return "temperatures beyond are not known";
}

/// "floor set by: no ferrite"; an end that no rule sets is said to be none.
std::string end_text(const char* end, const HardeningWindow& window, WindowRule rule) {
  if (rule == WindowRule::range)
    return std::string("no ") + end + " found: the range that was searched ends there";
  return std::string(end) + " set by: " + name_of(window, rule);
}

std::string rules_text(const HardeningWindow& window) {
  std::string text;
  for (const RuleSpans& rule : window.rules) {
    std::string where;
    for (const WindowSpan& span : rule.spans)
      where += (where.empty() ? "" : ", ") + span_text(span.range);
    text += (text.empty() ? "" : "; ") + rule.text + ": " +
            (where.empty() ? "nowhere" : where);
  }
  return text;
}

std::string soak_row(const char* name, const State& state) {
  return internal::wrapped(std::string(name) + ": " + state.brief(), kWidth, 2);
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

std::string internal::solidus_text(const SolidusBound& bound) {
  const std::string at =
      fixed(bound.celsius, 0) + " C (+-" + fixed(bound.uncertainty, 0) + ")";
  switch (bound.sense) {
    case SolidusSense::at_least:
      return "what is known to be free of melt of " + bound.steel + ", " + at;
    case SolidusSense::at_most:
      return "where " + bound.steel + " has been seen to melt, " + at;
    case SolidusSense::measured:
      break;
  }
  return "the start of melting of " + bound.steel + ", " + at;
}

std::string internal::window_text(const HardeningWindow& window) {
  switch (window.status) {
    case WindowStatus::found:
      return span_text(window.spans.front().range) + "; " +
             end_text("floor", window, window.floor_rule) + "; " +
             end_text("ceiling", window, window.ceiling_rule);
    case WindowStatus::no_window:
      return "none: no temperature in the range keeps all rules (" +
             rules_text(window) + ")";
    case WindowStatus::not_known:
      break;
  }
  return "none found, but part of the range is not known (" + rules_text(window) + ")";
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
  for (const RuleSpans& rule : rules) {
    std::string where;
    for (const WindowSpan& span : rule.spans)
      where += (where.empty() ? "" : ", ") + span_text(span.range);
    result += internal::wrapped(rule.text + ": " + (where.empty() ? "nowhere" : where),
                                kWidth, 2);
  }
  if (status == WindowStatus::found)
    result += soak_row("floor", at_floor) + soak_row("ceiling", at_ceiling);
  for (const std::string& remark : remarks)
    result += internal::wrapped(remark, kWidth, 2);
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
