#include "read_phase.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <utility>

#include "../internal/error_codes.hpp"
#include "field_reader.hpp"
#include "read_terms.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 10> kPhaseKeys{
    "role",        "lattice",   "sublattices",       "second_occurrence",
    "magnetism",   "energy",    "curie_temperature", "magnetic_moment",
    "room_volume", "hot_volume"};
constexpr std::array<std::string_view, 2> kSublatticeKeys{"sites", "constituents"};
constexpr std::array<std::string_view, 2> kMagnetismKeys{"structure_factor",
                                                         "negative_value_divisor"};
constexpr std::array<std::string_view, 3> kOccurrenceKeys{"name", "role", "when"};
constexpr std::array<std::string_view, 3> kWhenKeys{"sublattice", "constituent",
                                                    "site_fraction_above"};
constexpr std::array<std::string_view, 3> kRoles{"matrix", "carbide", "other"};

DraftSublattice read_sublattice(const JsonNode& node, const std::string& place,
                                bool complete, const FileLimits& limits,
                                Problems& problems) {
  DraftSublattice sublattice;
  sublattice.place = place;
  const FieldReader fields(node, place, problems, kSublatticeKeys);
  constexpr NumberRange kSites{0.0, 1000.0, false, true};
  sublattice.sites =
      fields.number("sites", complete ? Need::required : Need::optional, kSites);
  const JsonNode* names = fields.find("constituents", Need::required);
  if (names == nullptr) return sublattice;
  const std::string names_place = fields.place_of("constituents");
  const bool none_added =
      !complete && names->type == JsonNode::Type::list && names->items.empty();
  if (none_added ||
      !is_list(*names, names_place, limits.constituents_per_phase, problems)) {
    return sublattice;
  }
  for (std::size_t i = 0; i < names->items.size(); ++i) {
    const std::string name_place = names_place + "/" + std::to_string(i);
    if (auto name = read_name(names->items[i], name_place, problems)) {
      sublattice.constituents.push_back({std::move(*name), name_place, true});
    }
  }
  return sublattice;
}

std::optional<std::vector<DraftSublattice>> read_sublattices(const FieldReader& fields,
                                                             bool complete,
                                                             const FileLimits& limits,
                                                             Problems& problems) {
  const JsonNode* node =
      fields.find("sublattices", complete ? Need::required : Need::optional);
  const std::string place = fields.place_of("sublattices");
  if (node == nullptr ||
      !is_list(*node, place, limits.sublattices_per_phase, problems)) {
    return std::nullopt;
  }
  std::vector<DraftSublattice> sublattices;
  for (std::size_t i = 0; i < node->items.size(); ++i) {
    sublattices.push_back(read_sublattice(
        node->items[i], place + "/" + std::to_string(i), complete, limits, problems));
  }
  return sublattices;
}

/// One name, or a list of names that are counted together.
std::vector<std::string> read_counted(const FieldReader& rule, Problems& problems) {
  constexpr std::size_t kMost = 20;
  const JsonNode* node = rule.find("constituent", Need::required);
  if (node == nullptr) return {};
  const std::string place = rule.place_of("constituent");
  std::vector<std::string> names;
  const auto add = [&](const JsonNode& item, const std::string& item_place) {
    auto name = read_name(item, item_place, problems);
    if (!name) return;
    if (std::find(names.begin(), names.end(), *name) != names.end())
      problems.add(codes::kSecondOccurrence, item_place,
                   "\"" + *name + "\" stands in the list twice", "name it once");
    names.push_back(std::move(*name));
  };
  if (node->type != JsonNode::Type::list) {
    add(*node, place);
  } else if (is_list(*node, place, kMost, problems)) {
    for (std::size_t i = 0; i < node->items.size(); ++i)
      add(node->items[i], place + "/" + std::to_string(i));
  }
  return names;
}

Placed<SecondOccurrence> read_occurrence(const JsonNode& node, const std::string& place,
                                         Problems& problems) {
  const std::size_t before = problems.count();
  Placed<SecondOccurrence> placed;
  placed.place = place;
  SecondOccurrence& occurrence = placed.value;
  const FieldReader fields(node, place, problems, kOccurrenceKeys);
  occurrence.name = fields.name("name", Need::required).value_or("");
  if (const auto role = fields.word("role", Need::required, kRoles)) {
    occurrence.role = static_cast<Role>(*role);
  }
  if (const JsonNode* when = fields.find("when", Need::required)) {
    const FieldReader rule(*when, fields.place_of("when"), problems, kWhenKeys);
    constexpr NumberRange kFractions{0.0, 1.0, false, false};
    constexpr NumberRange kPositions{1.0, 100.0};
    const double position =
        rule.number("sublattice", Need::required, kPositions).value_or(1.0);
    if (position != std::floor(position)) {
      problems.add(codes::kWrongType, rule.place_of("sublattice"),
                   "is not a whole number", "give 1 for the first sublattice");
    }
    occurrence.sublattice = static_cast<std::size_t>(position) - 1;
    occurrence.constituents = read_counted(rule, problems);
    occurrence.site_fraction_above =
        rule.number("site_fraction_above", Need::required, kFractions).value_or(0.5);
  }
  placed.sound = problems.count() == before;
  return placed;
}

Magnetism read_magnetism(const JsonNode& node, const std::string& place,
                         Problems& problems) {
  const FieldReader fields(node, place, problems, kMagnetismKeys);
  constexpr NumberRange kFactors{0.0, 1.0, false, false};
  constexpr NumberRange kDivisors{0.0, 100.0, false, true};
  Magnetism magnetism;
  magnetism.structure_factor =
      fields.number("structure_factor", Need::required, kFactors).value_or(0.28);
  magnetism.negative_value_divisor =
      fields.number("negative_value_divisor", Need::required, kDivisors).value_or(1.0);
  return magnetism;
}

void read_shape(const FieldReader& fields, bool complete, const FileLimits& limits,
                Problems& problems, DraftPhase& phase) {
  const Need need = complete ? Need::required : Need::optional;
  if (const auto role = fields.word("role", need, kRoles)) {
    phase.role = static_cast<Role>(*role);
  }
  phase.lattice = fields.text("lattice", need);
  phase.sublattices = read_sublattices(fields, complete, limits, problems);
  if (const JsonNode* node = fields.find("second_occurrence", Need::optional)) {
    phase.second_occurrence =
        read_occurrence(*node, fields.place_of("second_occurrence"), problems);
  }
  if (const JsonNode* node = fields.find("magnetism", Need::optional)) {
    phase.magnetism = read_magnetism(*node, fields.place_of("magnetism"), problems);
  }
}

}  // namespace

DraftPhase read_phase(const JsonNode& node, const std::string& place,
                      const std::string& file, bool complete, const FileLimits& limits,
                      Problems& problems) {
  DraftPhase phase;
  phase.name = node.key;
  phase.place = place;
  const std::size_t before = problems.count();
  const FieldReader fields(node, place, problems, kPhaseKeys);
  read_shape(fields, complete, limits, problems, phase);
  phase.sound = problems.count() == before;
  const std::size_t before_energy = problems.count();
  if (const JsonNode* list =
          fields.find("energy", complete ? Need::required : Need::optional)) {
    phase.energy = read_terms(*list, fields.place_of("energy"), file, limits, problems);
  }
  phase.energy_sound = problems.count() == before_energy;
  if (const JsonNode* list = fields.find("curie_temperature", Need::optional)) {
    phase.curie_temperature =
        read_terms(*list, fields.place_of("curie_temperature"), file, limits, problems);
  }
  if (const JsonNode* list = fields.find("magnetic_moment", Need::optional)) {
    phase.magnetic_moment =
        read_terms(*list, fields.place_of("magnetic_moment"), file, limits, problems);
  }
  if (const JsonNode* block = fields.find("room_volume", Need::optional)) {
    phase.room_volume = read_volume(*block, fields.place_of("room_volume"), file,
                                    complete, limits, problems);
  }
  if (const JsonNode* block = fields.find("hot_volume", Need::optional)) {
    phase.hot_volume = read_volume(*block, fields.place_of("hot_volume"), file,
                                   complete, limits, problems);
  }
  return phase;
}

}  // namespace gibbsteel::parameter_file
