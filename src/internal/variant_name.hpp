#pragma once
/// What a steel with other weight percents is called.

#include <string>

#include "gibbsteel/named_values.hpp"

namespace gibbsteel::internal {

/// "M2, 0.9 C, 5 Co"; what the name says of these elements already is replaced. A steel
/// without a name gets none.
std::string variant_name(std::string name, const NamedValues& weight_percent);

}  // namespace gibbsteel::internal
