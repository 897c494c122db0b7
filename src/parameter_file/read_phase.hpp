#pragma once
/// Reads one phase.

#include <string>

#include "draft.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "json_tree.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

/// `complete`: the phase is new, so nothing may be left out.
DraftPhase read_phase(const JsonNode& node, const std::string& place,
                      const std::string& file, bool complete, const FileLimits& limits,
                      Problems& problems);

}  // namespace gibbsteel::parameter_file
