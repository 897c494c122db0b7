#pragma once
/// Phases that are neither matrix nor carbide: graphite and liquid.

#include <string>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// Kinds of role `other` that occur in these states, in order of first appearance.
std::vector<std::string> other_kinds(const std::vector<const State*>& states);

/// Those behind the kinds of carbide: what the columns of a table show.
std::vector<std::string> with_other_kinds(std::vector<std::string> carbides,
                                          const std::vector<const State*>& states);

/// ", 2.6 vol% graphite, 13.4 vol% liquid"; nothing where there is neither.
std::string others_text(const State& state);

/// Kinds of role `other` of a parameter set whose models are not among those left out.
std::vector<std::string> other_kind_names(const ParameterSet& set,
                                          const std::vector<std::string>& suppressed);

}  // namespace gibbsteel::internal
