#pragma once
/// Joins one phase of a layer with the phase of that name that lies below.

#include <string>

#include "draft.hpp"
#include "gibbsteel/parameter_set.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

Phase new_phase(const DraftPhase& draft, const std::string& file, Problems& problems);

/// Adds constituents and terms to `phase`, replaces terms; reports changes that a layer
/// cannot make (role, lattice, sites, magnetism, second occurrence).
void merge_phase(const DraftPhase& draft, const std::string& file, Phase& phase,
                 Problems& problems);

}  // namespace gibbsteel::parameter_file
