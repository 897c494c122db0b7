#pragma once
/// Sections that whole files and layers have in common, as JSON.

#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

std::string format_json();
std::string sources_json(const std::vector<Source>& sources);
std::string correlations_json(const std::vector<Correlation>& correlations);

}  // namespace gibbsteel::parameter_file
