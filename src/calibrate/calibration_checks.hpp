#pragma once
/// What calibrate() refuses before it calculates.

#include <utility>
#include <vector>

#include "gibbsteel/calibrate.hpp"
#include "parameter_file/parameter_numbers.hpp"

namespace gibbsteel::internal {

/// The free numbers with their prior standard deviations, when everything is sound.
/// @throws InputError as calibrate()
std::vector<std::pair<parameter_file::ParameterNumber, double>> checked_calibration(
    const SharedParameters& set, const std::vector<FreeNumber>& numbers,
    const std::vector<Measurement>& measurements, const CalibrationOptions& options);

}  // namespace gibbsteel::internal
