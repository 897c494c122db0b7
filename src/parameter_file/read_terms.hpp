#pragma once
/// Reads lists of terms and of molar volumes.

#include <optional>
#include <string>
#include <vector>

#include "draft.hpp"
#include "field_reader.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "json_tree.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

std::vector<Placed<Term>> read_terms(const JsonNode& node, const std::string& place,
                                     const std::string& file, const FileLimits& limits,
                                     Problems& problems);

/// The key "on" of a term, and what a correlation names.
std::vector<std::vector<std::string>> read_on(const JsonNode& node,
                                              const std::string& place,
                                              const FileLimits& limits,
                                              Problems& problems);
std::optional<int> read_order(const FieldReader& fields, Problems& problems);

/// `complete`: "at_K" must be given (a layer may leave it out).
DraftVolume read_volume(const JsonNode& node, const std::string& place,
                        const std::string& file, bool complete,
                        const FileLimits& limits, Problems& problems);

}  // namespace gibbsteel::parameter_file
