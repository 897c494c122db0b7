#pragma once
/// Numbers as text, in the shortest form that reads back to the same double.

#include <string>

namespace gibbsteel::parameter_file {

/// "1811", "-0.00439752", "2.29603e+31"; independent of the locale. `value` is finite.
std::string number_text(double value);

}  // namespace gibbsteel::parameter_file
