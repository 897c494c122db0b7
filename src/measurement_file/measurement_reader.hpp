#pragma once
/// The measurements of a file, checked.

#include <string_view>
#include <vector>

#include "gibbsteel/measurement_file.hpp"
#include "parameter_file/json_tree.hpp"
#include "parameter_file/problems.hpp"

namespace gibbsteel::measurement_file {

using parameter_file::JsonNode;
using parameter_file::Problems;

inline constexpr std::string_view kFileKind = "measurement file";

/// What is not sound is left out and reported.
/// @param root  of a file of this kind
std::vector<RecordedMeasurement> read_measurements(const JsonNode& root,
                                                   Problems& problems);

}  // namespace gibbsteel::measurement_file
