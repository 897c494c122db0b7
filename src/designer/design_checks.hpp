#pragma once
/// What design() refuses before it calculates.

#include <vector>

#include "gibbsteel/design.hpp"

namespace gibbsteel::internal {

/// @throws InputError gibbsteel.input.269, .210
void check_design(const Steel& start, const std::vector<DesignElement>& elements,
                  const std::vector<DesignTarget>& targets,
                  const DesignOptions& options);

}  // namespace gibbsteel::internal
