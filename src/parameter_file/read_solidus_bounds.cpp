#include <array>
#include <string_view>
#include <utility>

#include "message_text.hpp"
#include "read_expression.hpp"
#include "read_sections.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 9> kBoundKeys{
    "steel",  "weight_percent", "sense",      "solidus_C", "uncertainty_C",
    "source", "kind",           "confidence", "note"};
constexpr std::array<std::string_view, 3> kSenses{"measured", "at least", "at most"};
constexpr NumberRange kPercents{0.0, 100.0};
constexpr NumberRange kSolidus{500.0, 3000.0};     // [C]
constexpr NumberRange kUncertainties{0.0, 500.0};  // [C]
constexpr std::size_t kMostBounds = 1000;

}  // namespace

Placed<SolidusBound> SectionReader::read_bound(const JsonNode& node,
                                               const std::string& place) const {
  const std::size_t before = problems.count();
  Placed<SolidusBound> placed;
  placed.place = place;
  SolidusBound& bound = placed.value;
  const FieldReader fields(node, place, problems, kBoundKeys);
  bound.steel = fields.name("steel", Need::required).value_or("");
  const JsonNode* percents = fields.find("weight_percent", Need::required);
  const std::string percents_place = fields.place_of("weight_percent");
  if (percents != nullptr &&
      is_object(*percents, percents_place, limits.elements, problems)) {
    for (const JsonNode& item : percents->items) {
      const auto value = read_number(
          item, percents_place + "/" + pointer_step(item.key), kPercents, problems);
      bound.weight_percent.emplace_back(item.key, value.value_or(0.0));
    }
  }
  if (const auto sense = fields.word("sense", Need::required, kSenses)) {
    bound.sense = static_cast<SolidusSense>(*sense);
  }
  bound.celsius = fields.number("solidus_C", Need::required, kSolidus).value_or(0.0);
  bound.uncertainty =
      fields.number("uncertainty_C", Need::required, kUncertainties).value_or(0.0);
  bound.provenance = read_provenance(fields, Need::required, file);
  placed.sound = problems.count() == before;
  return placed;
}

void SectionReader::read_solidus_bounds(Draft& draft) const {
  const JsonNode* node = top.find("solidus_bounds", Need::optional);
  if (node == nullptr ||
      !is_list(*node, top.place_of("solidus_bounds"), kMostBounds, problems)) {
    return;
  }
  for (std::size_t i = 0; i < node->items.size() && !problems.full(); ++i) {
    draft.bounds.push_back(
        read_bound(node->items[i], "/solidus_bounds/" + std::to_string(i)));
  }
}

}  // namespace gibbsteel::parameter_file
