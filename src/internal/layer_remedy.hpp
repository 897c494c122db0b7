#pragma once
/// How to get what a layer beside the shipped file has.

#include <string>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// "lay layers/liquid.json on it, in Python ...", with the layers that lie there
/// already; empty when the set does not rest on the shipped file.
/// @param layer  its name, "liquid"
std::string how_to_lay(const ParameterSet& set, const std::string& layer);

/// The same as a sentence after another: " Lay layers/liquid.json on it, ... ."
std::string layer_remedy(const ParameterSet& set, const std::string& layer);

}  // namespace gibbsteel::internal
