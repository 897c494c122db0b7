#pragma once
/// What a measurement in a file is about.

#include <optional>

#include "gibbsteel/quantity.hpp"
#include "parameter_file/field_reader.hpp"

namespace gibbsteel::measurement_file {

/// Reads `quantity`, `in`, `of` and `coldest_celsius`.
std::optional<Quantity> read_quantity(const parameter_file::FieldReader& fields,
                                      parameter_file::Problems& problems);

}  // namespace gibbsteel::measurement_file
