#pragma once
/// Says whether a file is of the kind that is to be read.

#include <string_view>

#include "json_tree.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

/// @param kind  "parameter file": the name of the format is "gibbsteel " and this.
///              Nothing else is worth reading in a file of another kind.
bool has_format(const JsonNode& root, std::string_view kind, Problems& problems);

}  // namespace gibbsteel::parameter_file
