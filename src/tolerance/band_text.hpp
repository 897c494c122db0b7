#pragma once
/// Pieces of a printed band.

#include <string>

#include "gibbsteel/band.hpp"

namespace gibbsteel::internal {

/// "punch heat 7 at 1120 C (2048 F)"
std::string band_heading(const Band& band);
/// "256 samples, 3 NOT USABLE"; empty when none were asked for.
std::string band_counts(const Band& band);
/// "long-hold limit", and what soaks of minutes the quantities are about.
std::string band_conditions(const Band& band);
/// "C in the matrix 0.467 (0.431 to 0.505) wt%": the first quantity.
std::string band_first(const Band& band);
/// Heading, analysis, parameters, basis of volumes, counts.
std::string band_top(const Band& band, const std::string& title);
/// @param corners  with the columns of the worst corners
std::string bands_table(const Band& band, bool corners);
std::string phases_text(const Band& band);
/// Stands under the tables.
std::string band_last_digits(const Band& band);
/// Warnings of the nominal state and of the band, then the caution.
std::string band_end(const Band& band);
/// A number of a quantity of this size: bands need one digit more than results.
std::string band_number(double value, double nominal);

}  // namespace gibbsteel::internal
