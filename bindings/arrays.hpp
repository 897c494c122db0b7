#pragma once
/// Read-only numpy arrays from vectors.

#include <pybind11/numpy.h>

#include <vector>

namespace gibbsteel::python {

namespace py = pybind11;

/// A copy of `values` with the given shape that Python cannot write to.
inline py::array_t<double> read_only(const std::vector<double>& values,
                                     const std::vector<py::ssize_t>& shape) {
  py::array_t<double> array(shape, values.data());
  array.attr("flags").attr("writeable") = false;
  return array;
}

inline py::array_t<double> read_only(const std::vector<double>& values) {
  return read_only(values, {static_cast<py::ssize_t>(values.size())});
}

}  // namespace gibbsteel::python
