#pragma once
/// What the kernels can hold, checked once before a phase is compiled.

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// @throws DataError gibbsteel.data.103 (too many sublattices or constituents), .154
///         (order or mix that no kernel knows), .158 (magnetic term that depends on T)
void check_capacity(const Phase& phase);

}  // namespace gibbsteel::internal
