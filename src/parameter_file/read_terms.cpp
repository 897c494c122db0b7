#include "read_terms.hpp"

#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "../internal/error_codes.hpp"
#include "field_reader.hpp"
#include "message_text.hpp"
#include "read_expression.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 9> kTermKeys{
    "on",     "order", "curves",     "terms", "standard_deviations",
    "source", "kind",  "confidence", "note"};
constexpr std::array<std::string_view, 7> kVolumeTermKeys{
    "on", "cm3_per_mol", "standard_deviation", "source", "kind", "confidence", "note"};
constexpr std::array<std::string_view, 4> kVolumeKeys{"at_K", "linear_expansion_per_K",
                                                      "note", "terms"};
constexpr std::size_t kMostMixing = 3;

/// Names of one entry of `on`; empty after a problem.
std::vector<std::string> read_entry(const JsonNode& node, const std::string& place,
                                    Problems& problems) {
  if (node.type == JsonNode::Type::text) return {node.text};
  if (node.type != JsonNode::Type::list) {
    problems.add(codes::kWrongType, place, "is " + std::string(kind_of(node)),
                 "give the name of a constituent, or a list of those that mix");
    return {};
  }
  std::vector<std::string> names;
  for (const JsonNode& item : node.items) {
    if (item.type != JsonNode::Type::text || names.size() > kMostMixing) break;
    names.push_back(item.text);
  }
  bool different = true;
  for (std::size_t i = 0; i < names.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) different = different && names[i] != names[j];
  }
  const bool good = names.size() == node.items.size() && names.size() >= 2 &&
                    names.size() <= kMostMixing && different;
  if (good) return names;
  problems.add(codes::kBadMix, place, "this is no list of two or three constituents",
               "give two or three different names that mix here, or a single name "
               "without brackets");
  return {};
}

Placed<Term> read_term(const JsonNode& node, const std::string& place,
                       const std::string& file, const FileLimits& limits,
                       Problems& problems) {
  const std::size_t before = problems.count();
  Placed<Term> placed;
  placed.place = place;
  const FieldReader fields(node, place, problems, kTermKeys);
  if (fields.readable()) {
    if (const JsonNode* on = fields.find("on", Need::required)) {
      placed.value.on = read_on(*on, fields.place_of("on"), limits, problems);
    }
    placed.value.order = read_order(fields, problems);
    placed.value.value = read_expression(fields, problems);
    read_deviations(fields, placed.value.value, problems);
    placed.value.provenance = read_provenance(fields, Need::required, file);
  }
  placed.sound = problems.count() == before;
  return placed;
}

Placed<VolumeTerm> read_volume_term(const JsonNode& node, const std::string& place,
                                    const std::string& file, const FileLimits& limits,
                                    Problems& problems) {
  const std::size_t before = problems.count();
  Placed<VolumeTerm> placed;
  placed.place = place;
  const FieldReader fields(node, place, problems, kVolumeTermKeys);
  const JsonNode* on = fields.find("on", Need::required);
  if (on != nullptr &&
      is_list(*on, fields.place_of("on"), limits.sublattices_per_phase, problems)) {
    for (std::size_t i = 0; i < on->items.size(); ++i) {
      const std::string entry = fields.place_of("on") + "/" + std::to_string(i);
      placed.value.on.push_back(read_name(on->items[i], entry, problems).value_or(""));
    }
  }
  constexpr NumberRange kVolumes{0.0, 1e5, false, true};  // [cm3/mol]
  placed.value.cm3_per_mol =
      fields.number("cm3_per_mol", Need::required, kVolumes).value_or(0.0);
  placed.value.standard_deviation =
      fields.number("standard_deviation", Need::optional, kVolumes).value_or(0.0);
  placed.value.provenance = read_provenance(fields, Need::optional, file);
  placed.sound = problems.count() == before;
  return placed;
}

}  // namespace

std::vector<std::vector<std::string>> read_on(const JsonNode& node,
                                              const std::string& place,
                                              const FileLimits& limits,
                                              Problems& problems) {
  std::vector<std::vector<std::string>> on;
  if (!is_list(node, place, limits.sublattices_per_phase, problems)) return on;
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    on.push_back(read_entry(node.items[i], place + "/" + std::to_string(i), problems));
  }
  return on;
}

std::optional<int> read_order(const FieldReader& fields, Problems& problems) {
  const JsonNode* node = fields.find("order", Need::optional);
  if (node == nullptr) return std::nullopt;
  constexpr double kMost = 1000.0;  // far above what any kind of term can have
  const bool whole = node->type == JsonNode::Type::number &&
                     std::abs(node->number) <= kMost &&
                     node->number == std::floor(node->number);
  if (!whole) {
    problems.add(codes::kWrongType, fields.place_of("order"), "is not a whole number",
                 "give 0, 1, 2, ...");
    return std::nullopt;
  }
  return static_cast<int>(node->number);
}

std::vector<Placed<Term>> read_terms(const JsonNode& node, const std::string& place,
                                     const std::string& file, const FileLimits& limits,
                                     Problems& problems) {
  std::vector<Placed<Term>> terms;
  if (!is_list(node, place, limits.terms_per_phase, problems)) return terms;
  terms.reserve(node.items.size());
  for (std::size_t i = 0; i < node.items.size() && !problems.full(); ++i) {
    terms.push_back(read_term(node.items[i], place + "/" + std::to_string(i), file,
                              limits, problems));
  }
  return terms;
}

DraftVolume read_volume(const JsonNode& node, const std::string& place,
                        const std::string& file, bool complete,
                        const FileLimits& limits, Problems& problems) {
  const std::size_t before = problems.count();
  DraftVolume volume;
  volume.place = place;
  const FieldReader fields(node, place, problems, kVolumeKeys);
  constexpr NumberRange kTemperatures{0.0, 6000.0, false, true};  // [K]
  constexpr NumberRange kExpansions{-1e-3, 1e-3};                 // [1/K]
  volume.at =
      fields.number("at_K", complete ? Need::required : Need::optional, kTemperatures);
  volume.linear_expansion =
      fields.number("linear_expansion_per_K", Need::optional, kExpansions);
  volume.note = fields.text("note", Need::optional).value_or("");
  const JsonNode* terms = fields.find("terms", Need::required);
  const std::string terms_place = fields.place_of("terms");
  if (terms != nullptr &&
      is_list(*terms, terms_place, limits.terms_per_phase, problems)) {
    for (std::size_t i = 0; i < terms->items.size() && !problems.full(); ++i) {
      volume.terms.push_back(read_volume_term(terms->items[i],
                                              terms_place + "/" + std::to_string(i),
                                              file, limits, problems));
    }
  }
  volume.sound = problems.count() == before;
  return volume;
}

}  // namespace gibbsteel::parameter_file
