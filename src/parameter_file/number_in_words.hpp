#pragma once
/// What a number of a parameter set is, for people.

#include <optional>
#include <string>

#include "parameter_file/parameter_numbers.hpp"
#include "parameter_file/uncertain_numbers.hpp"

namespace gibbsteel::parameter_file {

/// Name of a coefficient in a term of a phase; none for a volume.
/// @pre the entry is no factor of a curve
std::optional<CoefficientName> coefficient_name(const ParameterSet& set,
                                                const ParameterNumber& number);

/// "M6C, energy on (Fe, Mo, W, C), power 1", "M6C, room volume of (Fe, Mo, W, C)"; the
/// place of a number that is no coefficient of a term and no volume.
std::string number_in_words(const ParameterSet& set, const ParameterNumber& number);
std::string number_in_words(const ParameterSet& set, const UncertainNumber& number);

}  // namespace gibbsteel::parameter_file
