#pragma once
/// Members that ToleranceBand and ParameterBand share.

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/band.hpp"

namespace gibbsteel::python {

inline py::array_t<double> table(const std::vector<double>& values, std::size_t rows,
                                 std::size_t columns) {
  return read_only(values,
                   {static_cast<py::ssize_t>(rows), static_cast<py::ssize_t>(columns)});
}

template <class Bound>
void bind_band_members(py::class_<Bound>& c) {
  c.def_readonly("nominal", &Bound::nominal, "The State of the steel as it is.")
      .def_readonly("inputs", &Bound::inputs, "What scatters.")
      .def_readonly("percentiles", &Bound::percentiles, "In percent, upwards.")
      .def_readonly("quantities", &Bound::quantities, "list of QuantityBand.")
      .def_readonly("phases", &Bound::phases, "How often each phase is there.")
      .def_readonly("samples_asked", &Bound::samples_asked, "0: first order only.")
      .def_readonly("samples", &Bound::samples, "Soaked, the unusable ones included.")
      .def_readonly("cancelled", &Bound::cancelled, "True: stopped early.")
      .def_readonly("unusable", &Bound::unusable, "Samples left out, with the reason.")
      .def_readonly("warnings", &Bound::warnings, "list of SoakWarning.")
      .def_property_readonly(
          "usable", [](const Bound& b) { return b.usable(); },
          "Of the state of the steel as it is.")
      .def_property_readonly(
          "sample_inputs",
          [](const Bound& b) {
            return table(b.sample_inputs, b.samples, b.inputs.size());
          },
          "Array (samples, inputs), as drawn; units as `inputs`.")
      .def_property_readonly(
          "sample_values",
          [](const Bound& b) {
            return table(b.sample_values, b.samples, b.quantities.size());
          },
          "Array (samples, quantities); NaN for an unusable sample.")
      .def(
          "__getitem__",
          [](const Bound& b, const std::string& name) { return b.at(name); },
          "QuantityBand by name or label.")
      .def("__len__", [](const Bound& b) { return b.quantities.size(); })
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.band_frames")
                .attr("band_to_frame")(self);
          },
          "Table of the band (pandas), one row per quantity.");
}

}  // namespace gibbsteel::python
