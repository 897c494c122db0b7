#include <array>
#include <string_view>
#include <utility>

#include "../internal/error_codes.hpp"
#include "message_text.hpp"
#include "read_expression.hpp"
#include "read_sections.hpp"
#include "read_terms.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 6> kCorrelationKeys{
    "between", "coefficient", "source", "kind", "confidence", "note"};
constexpr std::array<std::string_view, 5> kNameKeys{"phase", "property", "on", "order",
                                                    "power"};
constexpr std::array<std::string_view, 3> kProperties{"energy", "curie_temperature",
                                                      "magnetic_moment"};
constexpr NumberRange kCoefficients{-1.0, 1.0};

CoefficientName read_coefficient_name(const JsonNode& node, const std::string& place,
                                      const FileLimits& limits, Problems& problems) {
  CoefficientName name;
  const FieldReader fields(node, place, problems, kNameKeys);
  if (!fields.readable()) return name;
  name.phase = fields.name("phase", Need::required).value_or("");
  if (const auto property = fields.word("property", Need::required, kProperties))
    name.property = static_cast<PhaseProperty>(*property);
  if (const JsonNode* on = fields.find("on", Need::required))
    name.on = read_on(*on, fields.place_of("on"), limits, problems);
  name.order = read_order(fields, problems);
  if (const auto power = fields.text("power", Need::required))
    name.power = read_power(*power, fields.place_of("power"), problems)
                     .value_or(TemperaturePower{});
  return name;
}

}  // namespace

Placed<Correlation> SectionReader::read_correlation(const JsonNode& node,
                                                    const std::string& place) const {
  const std::size_t before = problems.count();
  Placed<Correlation> placed;
  placed.place = place;
  const FieldReader fields(node, place, problems, kCorrelationKeys);
  if (const JsonNode* between = fields.find("between", Need::required)) {
    const std::string pair = fields.place_of("between");
    if (between->type != JsonNode::Type::list || between->items.size() != 2) {
      problems.add(codes::kWrongType, pair, "is not a list of two coefficients",
                   "give two objects, each with phase, property, on and power");
    } else {
      placed.value.first =
          read_coefficient_name(between->items[0], pair + "/0", limits, problems);
      placed.value.second =
          read_coefficient_name(between->items[1], pair + "/1", limits, problems);
    }
  }
  placed.value.coefficient =
      fields.number("coefficient", Need::required, kCoefficients).value_or(0.0);
  placed.value.provenance = read_provenance(fields, Need::required, file);
  placed.sound = problems.count() == before;
  return placed;
}

void SectionReader::read_correlations(Draft& draft) const {
  const JsonNode* node = top.find("correlations", Need::optional);
  if (node == nullptr ||
      !is_list(*node, top.place_of("correlations"), limits.correlations, problems)) {
    return;
  }
  for (std::size_t i = 0; i < node->items.size() && !problems.full(); ++i) {
    draft.correlations.push_back(
        read_correlation(node->items[i], "/correlations/" + std::to_string(i)));
  }
}

}  // namespace gibbsteel::parameter_file
