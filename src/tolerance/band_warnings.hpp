#pragma once
/// What a user should know about a band: codes 335, 350 to 354, 356 and 357.

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/tolerance_band.hpp"
#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel::internal {

/// First order in doubt, samples left out, phases that come and go.
std::vector<Warning> band_warnings(const Band& band);
/// These, worst corners in doubt, and tolerances outside the validity of the file.
std::vector<Warning> tolerance_warnings(const ParameterSet& set,
                                        const ToleranceBand& band);
/// Of quantities by families: the steel is near a border, or inputs reach across one.
std::vector<Warning> border_warnings(const ToleranceBand& band);
/// Those of band_warnings(), and phases whose numbers count as exact.
std::vector<Warning> parameter_warnings(
    const std::vector<parameter_file::UncertainNumber>& numbers, const Band& band);

}  // namespace gibbsteel::internal
