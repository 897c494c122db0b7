#pragma once
/// Quantity::Ends as a pair of numbers, in pickles and for Python.

#include <utility>

#include "common.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel::python {

inline constexpr const char* kBandOfCrossing =
    "(low, high) between which a measurement should lie, of an estimate; else NaN.";

inline std::pair<double, double> ends_of(const Quantity::Ends& ends) {
  return {ends.low, ends.high};
}

/// NaN of formats that do not have them.
inline Quantity::Ends ends_at(const py::tuple& fields, std::size_t at) {
  if (fields.size() <= at) return {};
  const auto [low, high] = fields[at].cast<std::pair<double, double>>();
  return {low, high};
}

/// @param c  class of a TemperatureSearch or CompositionSearch
template <class Search>
void def_band_of_nearest(py::class_<Search>& c) {
  c.def_property_readonly(
      "band_of_nearest", [](const Search& s) { return ends_of(s.band_of_nearest); },
      "(low, high) between which a measurement should lie at the soak that comes "
      "nearest, where an estimate never reaches the value; else NaN.");
}

}  // namespace gibbsteel::python
