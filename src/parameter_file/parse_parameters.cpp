#include <memory>
#include <optional>
#include <string>

#include "checks.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "json_tree.hpp"
#include "merge.hpp"
#include "problems.hpp"
#include "read_draft.hpp"

namespace gibbsteel {

namespace {

using namespace parameter_file;

/// Name under which the numbers of this file are known; a layer that is named like a
/// file below it gets its position in addition.
std::string record_name(const std::string& file_name, const ParameterSet* below) {
  if (below == nullptr) return file_name;
  for (const FileRecord& file : below->files) {
    if (file.name != file_name) continue;
    return file_name + " (layer " + std::to_string(below->files.size()) + ")";
  }
  return file_name;
}

}  // namespace

SharedParameters parse_parameters(std::string_view text, const std::string& file_name,
                                  const SharedParameters& on_top_of,
                                  const FileLimits& limits) {
  Problems problems(file_name, limits.problems_reported);
  const std::optional<JsonNode> root = parse_json(text, limits, problems);
  if (!root) problems.throw_if_any();
  const ParameterSet* below = on_top_of.get();
  const std::optional<Draft> read =
      read_draft(*root, record_name(file_name, below), below, limits, problems);
  if (!read) problems.throw_if_any();
  const Draft& draft = *read;
  auto set = std::make_shared<ParameterSet>(merge(draft, below, problems));
  const Check check{draft, *set, limits, problems};
  check_elements(check);
  check_sources(check);
  check_curves(check);
  check_phases(check);
  check_correlations(check);
  check_solidus_bounds(check);
  problems.throw_if_any();
  return set;
}

}  // namespace gibbsteel
