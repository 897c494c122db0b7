#pragma once
/// Measured numbers as a parameter set computes them.

#include <string>
#include <vector>

#include "gibbsteel/calibrate.hpp"

namespace gibbsteel::internal {

struct ComputedMeasurement {
  double value = Occurrence::kUnknown;  ///< NaN where `reason` says why
  std::string reason{};
};

/// Each distinct soak once, so many at a time; quantities by the calling thread. What
/// the set cannot soak is a reason, not an exception.
std::vector<ComputedMeasurement> computed_measurements(
    const std::vector<const Measurement*>& measurements, const SharedParameters& set,
    bool bind_tramp_elements, std::size_t threads);

}  // namespace gibbsteel::internal
