#pragma once
/// A layer made by the library itself.

#include <string>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

/// @param part  files[0] describes the layer; sources, phases with the terms and
///              volumes that replace those below (their shapes are not written), and
///              correlations; the rest is not looked at
std::string write_layer(const ParameterSet& part);

}  // namespace gibbsteel::parameter_file
