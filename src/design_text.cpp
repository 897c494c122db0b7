#include "internal/design_text.hpp"

#include <cmath>

#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

std::string number(double value, const std::string& unit) {
  if (std::isnan(value)) return "n/a";
  return internal::significant(value, 4) + (unit.empty() ? "" : " " + unit);
}

std::string wish(const TargetOutcome& target) {
  const std::string text = number(target.wanted, target.unit);
  return target.sense == TargetSense::equal
             ? text
             : std::string(to_string(target.sense)) + " " + text;
}

std::string composition(const Design& design) {
  std::string text;
  for (const DesignedElement& e : design.elements)
    text += (text.empty() ? "" : " ") + internal::significant(e.weight_percent, 4) +
            e.symbol;
  return text;
}

std::size_t count_met(const Design& design) {
  std::size_t count = 0;
  for (const TargetOutcome& target : design.targets) count += target.met ? 1 : 0;
  return count;
}

/// "Mo in the matrix by -0.31 wt%, ..."
std::string misses(const Design& design) {
  std::string text;
  for (const TargetOutcome& target : design.targets)
    if (!target.met)
      text += (text.empty() ? "" : ", ") + target.name + " by " +
              (target.miss > 0.0 ? "+" : "") + number(target.miss, target.unit);
  return text;
}

std::string element_table(const Design& design) {
  std::vector<std::vector<std::string>> rows{{"element, wt%", "from", "to", "result"}};
  for (const DesignedElement& e : design.elements)
    rows.push_back({e.symbol, internal::shortest(e.range.low),
                    internal::shortest(e.range.high),
                    fixed(e.weight_percent, 3) + (e.at_bound ? " *" : "  ")});
  return internal::text_table(rows);
}

std::string target_table(const Design& design) {
  std::vector<std::vector<std::string>> rows{
      {"target", "at, C", "wanted", "value", "missed by", "tolerance", ""}};
  for (TargetOutcome t : design.targets) {
    const std::string label = t.name + (t.unit.empty() ? "" : ", " + t.unit);
    t.unit.clear();
    rows.push_back({label,
                    internal::degree_cells({&t.temperature, 1}, t.temperature_unit)[0],
                    wish(t), number(t.value, ""),
                    t.miss == 0.0 ? "-" : internal::significant(t.miss, 2),
                    t.tolerance == 0.0 ? "-" : internal::significant(t.tolerance, 2),
                    t.met ? "met" : "NOT MET"});
  }
  return internal::text_table(rows);
}

bool any_at_bound(const Design& design) {
  for (const DesignedElement& e : design.elements)
    if (e.at_bound) return true;
  return false;
}

}  // namespace

std::string internal::sentence_of(const Design& design) {
  const std::string with = composition(design) + " (wt%)";
  const std::string count = std::to_string(count_met(design)) + " of " +
                            std::to_string(design.targets.size()) + " targets";
  switch (design.status) {
    case DesignStatus::met:
      return "all targets are met with " + with;
    case DesignStatus::compromise:
      return count + " are met with " + with + "; missed: " + misses(design);
    case DesignStatus::infeasible:
      return "no composition inside the bounds was found from " +
             std::to_string(design.starts) +
             " starts that keeps to all limits; the nearest, " + with +
             ", misses: " + misses(design);
    case DesignStatus::stopped:
      return "stopped by the caller after " + std::to_string(design.soaks) +
             " soaks; the best so far, " + with + ", meets " + count;
    case DesignStatus::not_converged:
      break;
  }
  return "soaks without a usable result stood in the way; nothing is known";
}

std::string_view to_string(TargetSense sense) noexcept {
  switch (sense) {
    case TargetSense::at_least:
      return "at least";
    case TargetSense::at_most:
      return "at most";
    case TargetSense::equal:
      break;
  }
  return "equal";
}

std::string_view to_string(DesignStatus status) noexcept {
  switch (status) {
    case DesignStatus::met:
      return "met";
    case DesignStatus::compromise:
      return "compromise";
    case DesignStatus::infeasible:
      return "infeasible";
    case DesignStatus::stopped:
      return "stopped";
    case DesignStatus::not_converged:
      break;
  }
  return "not converged";
}

std::string Design::brief() const {
  return steel.name() + ", long-hold limit: " + std::string(to_string(status)) + ": " +
         text;
}

std::string Design::full() const {
  std::string result =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + steel.analysis().brief(), kWidth, 2);
  if (!states.empty()) result += "parameters: " + states.front().parameters + "\n";
  result += "\n" + element_table(*this);
  if (any_at_bound(*this)) result += "*: at its bound\n";
  result += "\n" + target_table(*this);
  if (status == DesignStatus::compromise || status == DesignStatus::infeasible)
    result += internal::wrapped("the best of " + std::to_string(starts) +
                                    " starts; a better one cannot be ruled out",
                                kWidth, 2);
  result += "\n";
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
