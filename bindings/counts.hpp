#pragma once
/// Whole numbers of Python as counts of the library.

#include <cstdint>

#include "common.hpp"

namespace gibbsteel::python {

/// @throws InputError gibbsteel.input.220: no whole number, or below 0; see
/// arguments.py
inline std::size_t count_of(const py::object& value, const char* place) {
  const auto count = py::module_::import("gibbsteel.arguments").attr("count");
  return count(value, place, 0, std::int64_t{1} << 53).cast<std::size_t>();
}

}  // namespace gibbsteel::python
