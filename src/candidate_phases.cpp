#include "internal/candidate_phases.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/kind_names.hpp"

namespace gibbsteel::internal {
namespace {

using Names = std::vector<std::string>;

bool holds(const Names& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

void check_names(const ParameterSet& set, const Names& names, const char* place,
                 std::vector<Problem>& problems) {
  const Names known = kind_names(set);
  for (const auto& name : names)
    if (!holds(known, name)) problems.push_back(no_such_kind(known, name, place));
}

/// A model is taken out when all its kinds are named.
void check_kinds(const ParameterSet& set, const Names& suppressed,
                 std::vector<Problem>& problems) {
  for (const Phase& phase : set.phases) {
    if (!phase.second_occurrence) continue;
    const std::string& other = phase.second_occurrence->name;
    if (holds(suppressed, phase.name) == holds(suppressed, other)) continue;
    problems.push_back(
        {"gibbsteel.input.212", "suppressed",
         "'" + phase.name + "' and '" + other + "' are two kinds of one phase model",
         "suppress both or neither"});
  }
}

}  // namespace

std::vector<std::string> candidate_phases(const ParameterSet& set,
                                          const SoakOptions& options) {
  std::vector<Problem> problems;
  if (options.phases) check_names(set, *options.phases, "phases", problems);
  check_names(set, options.suppressed, "suppressed", problems);
  check_kinds(set, options.suppressed, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  Names names;
  for (const Phase& phase : set.phases) {
    bool wanted = phase.name != "graphite" || options.graphite;
    if (options.phases)
      wanted = holds(*options.phases, phase.name) ||
               (phase.second_occurrence &&
                holds(*options.phases, phase.second_occurrence->name));
    if (wanted && !holds(options.suppressed, phase.name)) names.push_back(phase.name);
  }
  return names;
}

std::vector<std::string> all_kinds(const ParameterSet& set, const Names& models) {
  Names kinds = models;
  for (const Phase& phase : set.phases)
    if (phase.second_occurrence && holds(models, phase.name))
      kinds.push_back(phase.second_occurrence->name);
  return kinds;
}

}  // namespace gibbsteel::internal
