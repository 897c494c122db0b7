#include "read_draft.hpp"

#include <array>
#include <string_view>

#include "../internal/error_codes.hpp"
#include "field_reader.hpp"
#include "message_text.hpp"
#include "number_text.hpp"
#include "read_phase.hpp"
#include "read_sections.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::array<std::string_view, 13> kTopKeys{
    "format",          "title",        "edition",       "licence",  "units",
    "reference_state", "validity",     "sources",       "elements", "curves",
    "phases",          "correlations", "solidus_bounds"};
constexpr std::array<std::string_view, 2> kFormatKeys{"name", "version"};
constexpr std::string_view kFormatName = "gibbsteel parameter file";
constexpr double kFormatVersion = 1.0;

/// Nothing else is worth reading in a file of another kind.
bool is_parameter_file(const JsonNode& root, Problems& problems) {
  if (root.type != JsonNode::Type::object) {
    problems.add(codes::kWrongFormat, "", "is " + std::string(kind_of(root)),
                 "give a parameter file: an object with the key \"format\"");
    return false;
  }
  const JsonNode* format = root.find("format");
  const JsonNode* name = format == nullptr ? nullptr : format->find("name");
  if (name == nullptr || name->text != kFormatName) {
    problems.add(codes::kWrongFormat, format == nullptr ? "" : "/format",
                 "does not say that this is a parameter file",
                 "begin with \"format\": {\"name\": \"gibbsteel parameter file\", "
                 "\"version\": 1}");
    return false;
  }
  const JsonNode* version = format->find("version");
  if (version == nullptr || version->type != JsonNode::Type::number ||
      version->number != kFormatVersion) {
    problems.add(codes::kWrongFormat, "/format/version",
                 "is no version that can be read here", "version 1 can be read");
    return false;
  }
  const FieldReader check_keys(*format, "/format", problems, kFormatKeys);
  return true;
}

FileRecord read_record(const FieldReader& top, const std::string& file) {
  FileRecord record;
  record.name = file;
  record.title = top.name("title", Need::required).value_or("");
  record.edition = top.name("edition", Need::required).value_or("");
  record.licence = top.name("licence", Need::required).value_or("");
  return record;
}

void read_phases(const FieldReader& top, const std::string& file,
                 const ParameterSet* below, const FileLimits& limits,
                 Problems& problems, Draft& draft) {
  const bool layer = below != nullptr;
  const JsonNode* node = top.find("phases", layer ? Need::optional : Need::required);
  const std::string place = top.place_of("phases");
  draft.phases_sound =
      node == nullptr ? layer : is_object(*node, place, limits.phases, problems);
  if (node == nullptr || !draft.phases_sound) return;
  for (const JsonNode& item : node->items) {
    if (problems.full()) break;
    const std::string phase_place = place + "/" + pointer_step(item.key);
    if (!name_is_usable(item.key, phase_place, problems)) continue;
    const bool complete = !layer || below->find_phase(item.key) == nullptr;
    draft.phases.push_back(
        read_phase(item, phase_place, file, complete, limits, problems));
  }
}

}  // namespace

std::optional<Draft> read_draft(const JsonNode& root, const std::string& file,
                                const ParameterSet* below, const FileLimits& limits,
                                Problems& problems) {
  if (!is_parameter_file(root, problems)) return std::nullopt;
  Draft draft;
  const bool layer = below != nullptr;
  const FieldReader top(root, "", problems, kTopKeys);
  draft.record = read_record(top, file);
  const SectionReader sections{top, file, layer, limits, problems};
  sections.check_units();
  draft.reference_state =
      top.text("reference_state", layer ? Need::optional : Need::required);
  sections.read_validity(draft);
  sections.read_sources(draft);
  sections.read_elements(draft);
  sections.read_curves(draft);
  read_phases(top, file, below, limits, problems, draft);
  sections.read_correlations(draft);
  sections.read_solidus_bounds(draft);
  return draft;
}

}  // namespace gibbsteel::parameter_file
