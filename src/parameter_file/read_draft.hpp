#pragma once
/// Reads one whole file, section by section.

#include <optional>
#include <string>

#include "draft.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "json_tree.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

/// With a set `below` the file is a layer and may leave out what lies below. Nothing is
/// returned where the text is no parameter file at all.
std::optional<Draft> read_draft(const JsonNode& root, const std::string& file,
                                const ParameterSet* below, const FileLimits& limits,
                                Problems& problems);

}  // namespace gibbsteel::parameter_file
