#include "read_sections.hpp"

#include <array>
#include <string_view>
#include <utility>

#include "../internal/error_codes.hpp"
#include "fixed_units.hpp"
#include "gibbsteel/elements.hpp"
#include "message_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 5> kUnitKeys{
    "energy", "temperature", "volume", "curie_temperature", "magnetic_moment"};
constexpr std::array<std::string_view, 2> kValidityKeys{"temperature_K",
                                                        "weight_percent"};
constexpr std::array<std::string_view, 2> kSourceKeys{"citation",
                                                      "fitted_to_check_records"};
constexpr std::array<std::string_view, 2> kElementKeys{"molar_mass_g_per_mol",
                                                       "reference_curve"};
constexpr NumberRange kTemperatures{0.0, 6000.0, false, true};  // [K]
constexpr NumberRange kPercents{0.0, 100.0};
constexpr NumberRange kMolarMasses{0.0, 400.0, false, true};  // [g/mol]
constexpr std::size_t kMostSources = 2000;
constexpr std::size_t kMostRecords = 1000;

/// A list [low, high] of two numbers.
std::optional<std::pair<double, double>> read_pair(const JsonNode& node,
                                                   const std::string& place,
                                                   const NumberRange& range,
                                                   bool may_be_equal,
                                                   Problems& problems) {
  if (node.type != JsonNode::Type::list || node.items.size() != 2) {
    problems.add(codes::kWrongType, place, "is not a list of two numbers",
                 "give [lowest, highest]");
    return std::nullopt;
  }
  const auto low = read_number(node.items[0], place + "/0", range, problems);
  const auto high = read_number(node.items[1], place + "/1", range, problems);
  if (!low || !high) return std::nullopt;
  if (*low > *high || (*low == *high && !may_be_equal)) {
    problems.add(codes::kRangeReversed, place,
                 "the lowest value is not below the highest", "give [lowest, highest]");
    return std::nullopt;
  }
  return std::pair{*low, *high};
}

}  // namespace

const JsonNode* SectionReader::section(std::string_view key, std::size_t most,
                                       bool& sound) const {
  const JsonNode* node = top.find(key, need());
  if (node == nullptr) {
    sound = layer;
    return nullptr;
  }
  sound = is_object(*node, top.place_of(key), most, problems);
  return sound ? node : nullptr;
}

void SectionReader::check_units() const {
  const JsonNode* node = top.find("units", need());
  if (node == nullptr) return;
  const FieldReader fields(*node, top.place_of("units"), problems, kUnitKeys);
  for (const FixedUnit& fixed : kFixedUnits) {
    const auto given = fields.text(fixed.quantity, need());
    if (!given || *given == fixed.unit) continue;
    problems.add(codes::kWrongUnit, fields.place_of(fixed.quantity),
                 "is " + in_quotes(*given),
                 "the only unit that can stand here is " + in_quotes(fixed.unit));
  }
}

void SectionReader::read_validity(Draft& draft) const {
  const JsonNode* node = top.find("validity", need());
  if (node == nullptr) return;
  const FieldReader fields(*node, top.place_of("validity"), problems, kValidityKeys);
  if (const JsonNode* range = fields.find("temperature_K", need())) {
    draft.temperatures = read_pair(*range, fields.place_of("temperature_K"),
                                   kTemperatures, false, problems);
  }
  const JsonNode* percents = fields.find("weight_percent", need());
  const std::string place = fields.place_of("weight_percent");
  if (percents == nullptr || !is_object(*percents, place, limits.elements, problems)) {
    return;
  }
  for (const JsonNode& item : percents->items) {
    const std::string item_place = place + "/" + pointer_step(item.key);
    const auto range = read_pair(item, item_place, kPercents, true, problems);
    const auto [low, high] = range.value_or(std::pair{0.0, 100.0});
    draft.ranges.push_back({{item.key, low, high}, item_place, range.has_value()});
  }
}

void SectionReader::read_sources(Draft& draft) const {
  const JsonNode* node = section("sources", kMostSources, draft.sources_sound);
  if (node == nullptr) return;
  for (const JsonNode& item : node->items) {
    if (problems.full()) return;
    const std::string place = "/sources/" + pointer_step(item.key);
    const std::size_t before = problems.count();
    if (!name_is_usable(item.key, place, problems)) continue;
    const FieldReader fields(item, place, problems, kSourceKeys);
    Source source;
    source.key = item.key;
    source.file = file;
    source.citation = fields.text("citation", Need::required).value_or("");
    const JsonNode* records = fields.find("fitted_to_check_records", Need::optional);
    const std::string list_place = fields.place_of("fitted_to_check_records");
    if (records != nullptr && is_list(*records, list_place, kMostRecords, problems)) {
      for (std::size_t i = 0; i < records->items.size(); ++i) {
        auto name = read_name(records->items[i], list_place + "/" + std::to_string(i),
                              problems);
        source.fitted_to_check_records.push_back(name.value_or(""));
      }
    }
    draft.sources.push_back({std::move(source), place, problems.count() == before});
  }
}

void SectionReader::read_elements(Draft& draft) const {
  const JsonNode* node = section("elements", limits.elements, draft.elements_sound);
  if (node == nullptr) return;
  for (const JsonNode& item : node->items) {
    const std::string place = "/elements/" + pointer_step(item.key);
    const std::size_t before = problems.count();
    const FieldReader fields(item, place, problems, kElementKeys);
    // The element meant is then missing, which need not be said as well.
    if (!find_element(item.key)) draft.elements_sound = false;
    Element element;
    element.symbol = item.key;
    element.file = file;
    element.molar_mass =
        fields.number("molar_mass_g_per_mol", Need::required, kMolarMasses)
            .value_or(0.0);
    element.reference_curve =
        fields.name("reference_curve", Need::required).value_or("");
    draft.elements.push_back({std::move(element), place, problems.count() == before});
  }
}

}  // namespace gibbsteel::parameter_file
