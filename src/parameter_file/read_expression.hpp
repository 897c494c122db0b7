#pragma once
/// Reads the parts that curves and terms have in common: sums of powers of T and of
/// curves, and where a number comes from.

#include <optional>
#include <string>

#include "field_reader.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

/// Reads the keys "terms" and "curves". At least one of them must hold something.
Expression read_expression(const FieldReader& fields, Problems& problems);

/// Reads the optional key "standard_deviations" into the terms of the expression.
void read_deviations(const FieldReader& fields, Expression& expression,
                     Problems& problems);

/// The power of T that a key or text names.
std::optional<TemperaturePower> read_power(const std::string& text,
                                           const std::string& place,
                                           Problems& problems);

/// Reads "source", "kind", "confidence", "note"; `need` is for the first two.
Provenance read_provenance(const FieldReader& fields, Need need,
                           const std::string& file);

/// Key of a power: "1", "T", "T ln T", "T^2", "T^-1" (Eq. (P1)).
std::string power_text(const TemperaturePower& power);

}  // namespace gibbsteel::parameter_file
