#include <set>

#include "fixed_units.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "write_phase.hpp"
#include "write_sections.hpp"

namespace gibbsteel {

namespace {

using namespace parameter_file;

constexpr auto kOneLine = JsonText::Layout::one_line;
constexpr auto kLines = JsonText::Layout::lines;

/// A set of several layers is written as one file: what the files say of themselves is
/// joined, each different text once.
std::string joined(const std::vector<FileRecord>& files,
                   std::string FileRecord::*text) {
  std::string result;
  std::set<std::string> seen;
  for (const FileRecord& file : files) {
    if (!seen.insert(file.*text).second) continue;
    result += (result.empty() ? "" : " + ") + file.*text;
  }
  return result;
}

std::string pair_json(double low, double high) {
  auto list = JsonText::list(kOneLine);
  list.add(json_number(low)).add(json_number(high));
  return list.text();
}

std::string validity_json(const ParameterSet& set) {
  auto ranges = JsonText::object(kLines);
  for (const ElementRange& range : set.validity)
    ranges.add(range.symbol, pair_json(range.low, range.high));
  auto object = JsonText::object(kLines);
  object
      .add("temperature_K", pair_json(set.lowest_temperature, set.highest_temperature))
      .add("weight_percent", ranges.text());
  return object.text();
}

std::string elements_json(const ParameterSet& set) {
  auto object = JsonText::object(kLines);
  for (const Element& element : set.elements) {
    auto item = JsonText::object(kOneLine);
    item.add_number("molar_mass_g_per_mol", element.molar_mass)
        .add_text("reference_curve", element.reference_curve);
    object.add(element.symbol, item.text());
  }
  return object.text();
}

std::string bounds_json(const ParameterSet& set) {
  auto list = JsonText::list(kLines);
  for (const SolidusBound& bound : set.solidus_bounds) {
    auto percents = JsonText::object(kOneLine);
    for (const auto& [symbol, percent] : bound.weight_percent)
      percents.add_number(symbol, percent);
    auto item = JsonText::object(kOneLine);
    item.add_text("steel", bound.steel)
        .add("weight_percent", percents.text())
        .add_text("sense", to_string(bound.sense))
        .add_number("solidus_C", bound.celsius)
        .add_number("uncertainty_C", bound.uncertainty);
    add_provenance(item, bound.provenance);
    list.add(item.text());
  }
  return list.text();
}

std::string units_json() {
  auto object = JsonText::object(kLines);
  for (const FixedUnit& fixed : kFixedUnits)
    object.add_text(fixed.quantity, fixed.unit);
  return object.text();
}

}  // namespace

std::string write_parameters(const ParameterSet& set) {
  auto curves = JsonText::object(kLines);
  for (const Curve& curve : set.curves) curves.add(curve.name, curve_json(curve));
  auto phases = JsonText::object(kLines);
  for (const Phase& phase : set.phases) phases.add(phase.name, phase_json(phase));
  auto top = JsonText::object(kLines);
  top.add("format", format_json())
      .add_text("title", joined(set.files, &FileRecord::title))
      .add_text("edition", joined(set.files, &FileRecord::edition))
      .add_text("licence", joined(set.files, &FileRecord::licence))
      .add("units", units_json())
      .add_text("reference_state", set.reference_state)
      .add("validity", validity_json(set))
      .add("sources", sources_json(set.sources))
      .add("elements", elements_json(set))
      .add("curves", curves.text())
      .add("phases", phases.text());
  if (!set.correlations.empty())
    top.add("correlations", correlations_json(set.correlations));
  if (!set.solidus_bounds.empty()) top.add("solidus_bounds", bounds_json(set));
  return top.text() + "\n";
}

}  // namespace gibbsteel
