#pragma once
/// Quantity::Ends as a pair of numbers, in pickles and for Python.

#include <utility>

#include "common.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel::python {

template <class Search>
std::pair<double, double> band_of_nearest(const Search& search) {
  return {search.band_of_nearest.low, search.band_of_nearest.high};
}

inline Quantity::Ends ends_from(const py::handle& pair) {
  const auto [low, high] = pair.cast<std::pair<double, double>>();
  return {low, high};
}

/// @param c  class of a TemperatureSearch or CompositionSearch
template <class Search>
void def_band_of_nearest(py::class_<Search>& c) {
  c.def_property_readonly(
      "band_of_nearest", &band_of_nearest<Search>,
      "(low, high) between which a measurement should lie at the soak that comes "
      "nearest, where an estimate never reaches the value; else NaN.");
}

}  // namespace gibbsteel::python
