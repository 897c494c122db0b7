#include "read_draft.hpp"

#include <array>
#include <string_view>

#include "../internal/error_codes.hpp"
#include "field_reader.hpp"
#include "file_format.hpp"
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

/// What only a file that lies on another may lack, and what of it is not there.
std::string missing_below(const JsonNode& root) {
  std::string missing;
  for (const char* key : {"units", "reference_state", "validity", "elements", "curves"})
    if (root.find(key) == nullptr)
      missing += (missing.empty() ? "" : ", ") + in_quotes(key);
  return missing;
}

/// Files that stand alone have all of units, reference state and elements.
bool looks_like_layer(const JsonNode& root) {
  return root.find("title") != nullptr && root.find("reference_state") == nullptr &&
         (root.find("units") == nullptr || root.find("elements") == nullptr);
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
  if (!has_format(root, "parameter file", problems)) return std::nullopt;
  const bool layer = below != nullptr;
  if (!layer && looks_like_layer(root)) {
    problems.add(codes::kLayerAlone, "",
                 "looks like a layer, which lies on another file: it has no " +
                     missing_below(root),
                 "give the set below as on_top_of, for instance default_parameters()");
    return std::nullopt;
  }
  Draft draft;
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
