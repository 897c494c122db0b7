#include "internal/other_kinds.hpp"

#include <algorithm>

#include "internal/liquid_share.hpp"

namespace gibbsteel::internal {
namespace {

using Names = std::vector<std::string>;

bool holds(const Names& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

}  // namespace

std::vector<std::string> other_kinds(const std::vector<const State*>& states) {
  Names kinds;
  for (const State* state : states)
    for (const Occurrence& o : state->occurrences)
      if (o.role == Role::other && !holds(kinds, o.kind)) kinds.push_back(o.kind);
  return kinds;
}

std::vector<std::string> with_other_kinds(Names carbides,
                                          const std::vector<const State*>& states) {
  const Names others = other_kinds(states);
  carbides.insert(carbides.end(), others.begin(), others.end());
  return carbides;
}

std::string others_text(const State& state) {
  std::string text;
  for (const std::string& kind : other_kinds({&state}))
    text += ", " + percent_text(share_of(state, kind)) + " " + kind;
  return text;
}

std::vector<std::string> other_kind_names(const ParameterSet& set,
                                          const Names& suppressed) {
  Names kinds;
  for (const Phase& phase : set.phases) {
    if (holds(suppressed, phase.name)) continue;
    if (phase.role == Role::other) kinds.push_back(phase.name);
    const auto& second = phase.second_occurrence;
    if (second && second->role == Role::other) kinds.push_back(second->name);
  }
  return kinds;
}

}  // namespace gibbsteel::internal
