/// Measurements in files, and what stands behind a soak:
/// gibbsteel/measurement_file.hpp, evidence.hpp.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/evidence.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Recorded = RecordedMeasurement;
using Row = EvidenceRow;

Evidence run(const Steel& steel, double kelvin, std::size_t most_soaks,
             const std::optional<std::vector<Recorded>>& measurements,
             const std::string& unit) {
  const py::gil_scoped_release release;
  return evidence(steel, Temperature::kelvin(kelvin),
                  {most_soaks, measurements, temperature_unit(unit)});
}

void bind_recorded(py::module_& m) {
  py::class_<Recorded>(m, "RecordedMeasurement",
                       "A measurement and what is known of it.")
      .def_readonly("measurement", &Recorded::measurement, "For calibrate().")
      .def_readonly("source", &Recorded::source, "Citation.")
      .def_readonly("confidence", &Recorded::confidence,
                    "'high', 'medium' or 'low'; empty of one of your own.")
      .def_readonly("from_memory", &Recorded::from_memory,
                    "Quoted from memory, not looked up again.")
      .def_readonly("fitted_to", &Recorded::fitted_to,
                    "Numbers of the shipped file were fitted to it.")
      .def_readonly("remark", &Recorded::remark,
                    "For instance why the shipped file misses it; or empty.")
      .def("__repr__",
           [](const Recorded& r) {
             return py::str("<Recorded{}")
                 .format(py::repr(py::cast(r.measurement)).attr("lstrip")("<"));
           })
      .def(tagged_pickle(
          [](const Recorded& r) {
            return py::make_tuple(r.measurement, r.source, r.confidence, r.from_memory,
                                  r.fitted_to, r.remark);
          },
          [](const py::tuple& t) {
            return Recorded{t[0].cast<Measurement>(), t[1].cast<std::string>(),
                            t[2].cast<std::string>(), t[3].cast<bool>(),
                            t[4].cast<bool>(),        t[5].cast<std::string>()};
          }));
}

py::tuple row_state(const Row& r) {
  return py::make_tuple(r.steel, r.record, r.source, r.confidence, r.remark,
                        r.weight_percent, r.temperature.in_kelvin(), r.distance.value,
                        r.distance.by, r.quantity, r.unit, r.value, r.uncertainty,
                        r.computed, r.from_memory, r.fitted_to, r.reason, r.phases,
                        r.by_hardening);
}

Row row_from(const py::tuple& t) {
  Row r;
  r.steel = t[0].cast<std::string>();
  r.record = t[1].cast<std::string>();
  r.source = t[2].cast<std::string>();
  r.confidence = t[3].cast<std::string>();
  r.remark = t[4].cast<std::string>();
  r.weight_percent = t[5].cast<NamedValues>();
  r.temperature = Temperature::kelvin(t[6].cast<double>());
  r.distance = {t[7].cast<double>(), t[8].cast<std::string>()};
  r.quantity = t[9].cast<std::string>();
  r.unit = t[10].cast<std::string>();
  r.value = t[11].cast<double>();
  r.uncertainty = t[12].cast<double>();
  r.computed = t[13].cast<double>();
  r.from_memory = t[14].cast<bool>();
  r.fitted_to = t[15].cast<bool>();
  r.reason = t[16].cast<std::string>();
  r.phases = t[17].cast<std::optional<std::vector<std::string>>>();
  r.by_hardening = t[18].cast<bool>();
  return r;
}

using RowClass = py::class_<Row>;

/// On what it was measured.
void bind_origin(RowClass& row) {
  row.def_readonly("steel", &Row::steel, "On which it was measured.")
      .def_readonly("record", &Row::record, "Its name in the file of measurements.")
      .def_readonly("source", &Row::source, "Citation.")
      .def_readonly("confidence", &Row::confidence,
                    "'high', 'medium' or 'low'; empty of one of your own.")
      .def_readonly("remark", &Row::remark, "Why the shipped file misses it; or empty.")
      .def_readonly("weight_percent", &Row::weight_percent, "Of that steel.")
      .def_property_readonly(
          "kelvin", [](const Row& r) { return r.temperature.in_kelvin(); }, "Soak [K].")
      .def_property_readonly(
          "celsius", [](const Row& r) { return celsius_of(r.temperature); },
          "Soak [C].")
      .def_property_readonly(
          "fahrenheit", [](const Row& r) { return fahrenheit_of(r.temperature); },
          "Soak [F].")
      .def_property_readonly(
          "distance", [](const Row& r) { return r.distance.value; }, "Eq. (V1).")
      .def_property_readonly(
          "distance_by", [](const Row& r) { return r.distance.by; },
          "What it is largest in: an element or 'temperature'.");
}

void bind_row(py::module_& m) {
  RowClass row(m, "EvidenceRow", "One measured number, computed as well.");
  bind_origin(row);
  row.def_readonly("phases", &Row::phases, "The only ones that may form; None: all.")
      .def_readonly("by_hardening", &Row::by_hardening,
                    "Martensite start, retained austenite or hardness.")
      .def_readonly("quantity", &Row::quantity, "What was measured.")
      .def_readonly("unit", &Row::unit, "Of value, uncertainty and computed.")
      .def_readonly("value", &Row::value, "Measured.")
      .def_readonly("uncertainty", &Row::uncertainty, "Published.")
      .def_readonly("computed", &Row::computed,
                    "By the long-hold limit; NaN: see reason.")
      .def_property_readonly("miss", &Row::miss, "(computed - value) / uncertainty.")
      .def_property_readonly("met", &Row::met, "Missed by one uncertainty or less.")
      .def_readonly("from_memory", &Row::from_memory, "Quoted from memory.")
      .def_readonly("fitted_to", &Row::fitted_to,
                    "Numbers of the shipped file were fitted to it.")
      .def_readonly("reason", &Row::reason, "Why it was not computed; or empty.")
      .def("__repr__",
           [](const Row& r) {
             return py::str("<EvidenceRow {}, {}: {:.4g} +- {:.3g}, computed {:.4g}>")
                 .format(r.steel, r.quantity, r.value, r.uncertainty, r.computed);
           })
      .def(
          "__eq__", [](const Row& a, const Row& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&row_state, &row_from));
}

py::tuple evidence_state(const Evidence& e) {
  return py::make_tuple(e.steel, e.analysis, e.parameters, e.temperature.in_kelvin(),
                        static_cast<int>(e.temperature_unit), e.measurements, e.rows);
}

Evidence evidence_from(const py::tuple& t) {
  return {t[0].cast<std::string>(),
          t[1].cast<MillAnalysis>(),
          t[2].cast<std::string>(),
          Temperature::kelvin(t[3].cast<double>()),
          enumerator(t[4], TemperatureUnit::kelvin),
          t[5].cast<std::size_t>(),
          t[6].cast<std::vector<Row>>()};
}

void bind_result(py::module_& m) {
  py::class_<Evidence>(m, "Evidence",
                       "Measurements of the steels most like one, and what is computed "
                       "for them.")
      .def_readonly("steel", &Evidence::steel, "Its name.")
      .def_readonly("analysis", &Evidence::analysis, "Its certificate.")
      .def_readonly("parameters", &Evidence::parameters, "Title of the set.")
      .def_property_readonly(
          "kelvin", [](const Evidence& e) { return e.temperature.in_kelvin(); }, "[K]")
      .def_property_readonly(
          "celsius", [](const Evidence& e) { return celsius_of(e.temperature); }, "[C]")
      .def_property_readonly(
          "fahrenheit", [](const Evidence& e) { return fahrenheit_of(e.temperature); },
          "[F]")
      .def_readonly("measurements", &Evidence::measurements,
                    "How many were looked through.")
      .def_readonly("rows", &Evidence::rows, "Nearest first.")
      .def_property_readonly(
          "nearest", [](const Evidence& e) { return e.nearest().value; },
          "Distance of the nearest, Eq. (V1): up to 1 a steel of this kind, up to 3 a "
          "related one.")
      .def_property_readonly(
          "computed", [](const Evidence& e) { return e.computed(); },
          "Rows with a number.")
      .def_property_readonly(
          "met", [](const Evidence& e) { return e.met(); },
          "Of these, within the published uncertainty.")
      .def("__repr__", [](const Evidence& e) { return "<" + e.brief() + ">"; })
      .def("__str__", &Evidence::full)
      .def("__len__", [](const Evidence& e) { return e.rows.size(); })
      .def(
          "__eq__", [](const Evidence& a, const Evidence& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&evidence_state, &evidence_from));
}

}  // namespace

void bind_evidence(py::module_& m) {
  bind_recorded(m);
  bind_row(m);
  bind_result(m);
  m.def("published_measurements", &published_measurements);
  m.def(
      "load_measurements",
      [](const std::string& file) { return load_measurements(file); }, py::arg("file"));
  m.def("own_measurement", &own_measurement, py::arg("measurement"));
  m.def("evidence", &run, py::arg("steel"), py::arg("kelvin"), py::arg("most_soaks"),
        py::arg("measurements"), py::arg("unit"));
}

}  // namespace gibbsteel::python
