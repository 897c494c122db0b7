#include "section/section_text.hpp"

#include <algorithm>

#include "gibbsteel/section_map.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace internal {

std::string field_label(const std::vector<std::string>& kinds) {
  constexpr const char* kMany[] = {"", "", " (two)", " (three)", " (several)"};
  std::string label;
  for (std::size_t i = 0; i < kinds.size();) {
    std::size_t many = 1;
    while (i + many < kinds.size() && kinds[i + many] == kinds[i]) ++many;
    label += (label.empty() ? "" : " + ") + kinds[i];
    label += kMany[std::min<std::size_t>(many, 4)];
    i += many;
  }
  return label;
}

}  // namespace internal

namespace {

using internal::fixed;
using internal::wrapped;

constexpr std::size_t kWidth = 78;

std::string value_text(const SectionMap& map, const SectionAxis& axis, double value) {
  if (axis.element.empty())
    return internal::degrees(Temperature::celsius(value), map.temperature_unit);
  return fixed(value, 3) + " wt% " + axis.element;
}

std::string point_text(const SectionMap& map, SectionPoint p) {
  return value_text(map, map.x, p.x) + ", " + value_text(map, map.y, p.y);
}

std::string axis_text(const SectionMap& map, const SectionAxis& axis) {
  if (axis.element.empty())
    return internal::degrees(
        {Temperature::celsius(axis.low), Temperature::celsius(axis.high)},
        map.temperature_unit);
  return fixed(axis.low, 2) + " to " + fixed(axis.high, 2) + " wt% " + axis.element;
}

std::string fields_text(const SectionMap& map) {
  std::vector<std::vector<std::string>> rows{{"field", "share of map %"}};
  for (const SectionField& field : map.fields)
    rows.push_back({field.label, fixed(100.0 * field.area_share, 2)});
  return internal::text_table(rows);
}

/// Reactions at one temperature, with the range that they cover.
std::string reactions_text(const SectionMap& map) {
  std::string text;
  for (const SectionBoundary& boundary : map.boundaries) {
    if (!boundary.invariant) continue;
    const auto by_x = [](SectionPoint a, SectionPoint b) { return a.x < b.x; };
    const auto [left, right] =
        std::minmax_element(boundary.points.begin(), boundary.points.end(), by_x);
    text += wrapped("  " + point_text(map, *left) + " to " + point_text(map, *right) +
                        ": " + internal::field_label(boundary.left) + " | " +
                        internal::field_label(boundary.right),
                    kWidth, 4);
  }
  return text.empty() ? text : "\nreactions at one temperature\n" + text;
}

std::string nodes_text(const SectionMap& map) {
  std::string text;
  for (const SectionNode& node : map.nodes) {
    std::string fields;
    for (const std::string& label : node.fields)
      fields += (fields.empty() ? "" : " | ") + label;
    text += wrapped("  " + point_text(map, node.at) + ": " + fields, kWidth, 4);
  }
  return text.empty() ? text : "\npoints where fields meet\n" + text;
}

std::string unknown_text(const SectionMap& map) {
  std::string text;
  if (!map.stopped.empty())
    text += wrapped("NOT COMPLETE: " + map.stopped + ".", kWidth, 2);
  if (!map.gaps.empty())
    text += wrapped("NOT KNOWN: " + std::to_string(map.gaps.size()) +
                        " region(s), the first because: " + map.gaps.front().reason,
                    kWidth, 2);
  return text;
}

}  // namespace

std::string SectionAxis::unit() const { return element.empty() ? "C" : "wt%"; }

std::string SectionAxis::label() const {
  return (element.empty() ? "temperature" : element) + " [" + unit() + "]";
}

std::string SectionMap::brief() const {
  std::string text = (steel.empty() ? "steel" : steel) + ", " + axis_text(*this, x) +
                     " against " + axis_text(*this, y);
  if (temperature) text += " at " + internal::degrees(*temperature, temperature_unit);
  text += ": " + std::to_string(fields.size()) + " fields, " +
          std::to_string(boundaries.size()) + " boundaries";
  return text + (complete() ? "" : ", NOT COMPLETE") + ", long-hold limit";
}

std::string SectionMap::full() const {
  std::string text = wrapped(brief(), kWidth, 2) +
                     wrapped("steel, wt%: " + analysis.brief(), kWidth, 2) +
                     "parameters: " + parameters + "\n\n" + fields_text(*this) +
                     reactions_text(*this) + nodes_text(*this) + "\n" +
                     unknown_text(*this);
  for (const Warning& warning : warnings)
    text += wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text + wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
