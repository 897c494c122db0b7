#pragma once
/// Whether a parameter set computes what the file that ships computes.

#include <string>

namespace gibbsteel::internal {

/// True of the shipped file, also below the layers that only add to it.
/// @param title, hash  of the ParameterSet; below layers the title alone decides
bool has_shipped_numbers(const std::string& title, const std::string& hash);

}  // namespace gibbsteel::internal
