/// What a calibration is made of: measurements, and how numbers and measurements came
/// out.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/calibrate.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

py::tuple soak_state(const SoakOptions& s) {
  return py::make_tuple(s.graphite, s.phases, s.suppressed, static_cast<int>(s.basis),
                        s.solve, s.prove_every);
}

SoakOptions soak_from(const py::tuple& t) {
  SoakOptions s;
  s.graphite = t[0].cast<bool>();
  s.phases = t[1].cast<std::optional<std::vector<std::string>>>();
  s.suppressed = t[2].cast<std::vector<std::string>>();
  s.basis = enumerator(t[3], VolumeBasis::soak);
  s.solve = t[4].cast<SolveOptions>();
  s.prove_every = t[5].cast<int>();
  return s;
}

Measurement measurement(const std::string& steel, const NamedValues& weight_percent,
                        double kelvin, const Quantity& quantity, double value,
                        double uncertainty, const std::string& record, bool held_back,
                        const SoakOptions& soak) {
  return {steel,    weight_percent, Temperature::kelvin(kelvin),
          quantity, value,          uncertainty,
          record,   held_back,      soak};
}

py::tuple measurement_state(const Measurement& m) {
  return py::make_tuple(m.steel, m.weight_percent, m.temperature.in_kelvin(),
                        m.quantity, m.value, m.uncertainty, m.record, m.held_back,
                        soak_state(m.soak));
}

Measurement measurement_from(const py::tuple& t) {
  return measurement(t[0].cast<std::string>(), t[1].cast<NamedValues>(),
                     t[2].cast<double>(), t[3].cast<Quantity>(), t[4].cast<double>(),
                     t[5].cast<double>(), t[6].cast<std::string>(), t[7].cast<bool>(),
                     soak_from(t[8].cast<py::tuple>()));
}

void bind_measurement(py::module_& m) {
  py::class_<Measurement>(m, "Measurement",
                          "One measured number of a soaked steel.\n\n"
                          "Made by gibbsteel.measurement().")
      .def(py::init(&measurement), py::arg("steel"), py::arg("weight_percent"),
           py::arg("kelvin"), py::arg("quantity"), py::arg("value"),
           py::arg("uncertainty"), py::arg("record") = "", py::arg("held_back") = false,
           py::kw_only(), py::arg("soak"))
      .def_readonly("steel", &Measurement::steel, "Its name.")
      .def_readonly("weight_percent", &Measurement::weight_percent, "Of the steel.")
      .def_property_readonly(
          "celsius", [](const Measurement& x) { return celsius_of(x.temperature); },
          "[C]")
      .def_readonly("quantity", &Measurement::quantity, "What was measured.")
      .def_readonly("value", &Measurement::value, "In the unit of the quantity.")
      .def_readonly("uncertainty", &Measurement::uncertainty,
                    "One standard deviation, in the unit of the quantity.")
      .def_readonly("record", &Measurement::record,
                    "Where it is published; may be empty.")
      .def_readonly("held_back", &Measurement::held_back,
                    "Only compared with, not fitted to.")
      .def("__repr__",
           [](const Measurement& x) {
             return py::str("<Measurement {}, {} at {:.0f} C: {:.4g} +- {:.3g}{}>")
                 .format(x.steel, x.quantity.label(), x.temperature.in_celsius(),
                         x.value, x.uncertainty, x.held_back ? ", held back" : "");
           })
      .def(tagged_pickle(&measurement_state, &measurement_from));
}

void bind_number(py::module_& m) {
  using Number = CalibratedNumber;
  py::class_<Number>(m, "CalibratedNumber",
                     "A number of the parameter file before and after a calibration.")
      .def_readonly("place", &Number::place, "Place in the file.")
      .def_readonly("unit", &Number::unit, "Of all numbers here.")
      .def_readonly("text", &Number::text, "What it is.")
      .def_readonly("before", &Number::before, "In the file.")
      .def_readonly("after", &Number::after, "In the layer.")
      .def_readonly("prior_deviation", &Number::prior_deviation, "Given.")
      .def_readonly("deviation", &Number::deviation,
                    "Standard deviation after the fit, Eq. (K4).")
      .def_property_readonly("ratio", &Number::ratio,
                             "Standard deviation over that of the prior.")
      .def_property_readonly("seen", &Number::seen,
                             "False: the data say next to nothing about it.")
      .def("__repr__",
           [](const Number& n) {
             return py::str("<CalibratedNumber {}: {:.6g} to {:.6g} +- {:.3g}{}>")
                 .format(n.place, n.before, n.after, n.deviation,
                         n.seen() ? "" : ", NOT SEEN");
           })
      .def(
          "__eq__", [](const Number& a, const Number& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Number& n) {
            return py::make_tuple(n.place, n.unit, n.text, n.before, n.after,
                                  n.prior_deviation, n.deviation);
          },
          [](const py::tuple& t) {
            return Number{t[0].cast<std::string>(), t[1].cast<std::string>(),
                          t[2].cast<std::string>(), t[3].cast<double>(),
                          t[4].cast<double>(),      t[5].cast<double>(),
                          t[6].cast<double>()};
          }));
}

void bind_direction(py::module_& m) {
  using Direction = SeenDirection;
  py::class_<Direction>(
      m, "SeenDirection",
      "A combination of the numbers and how well the data see it, Eq. (K5).")
      .def_readonly("singular_value", &Direction::singular_value, "t_k of Eq. (K5).")
      .def_readonly("ratio", &Direction::ratio,
                    "Standard deviation over that of the prior.")
      .def_readonly("along", &Direction::along,
                    "Of each number, in prior standard deviations.")
      .def("__repr__",
           [](const Direction& d) {
             return py::str("<SeenDirection ratio {:.3f}>").format(d.ratio);
           })
      .def(
          "__eq__", [](const Direction& a, const Direction& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Direction& d) {
            return py::make_tuple(d.singular_value, d.ratio, d.along);
          },
          [](const py::tuple& t) {
            return Direction{t[0].cast<double>(), t[1].cast<double>(),
                             t[2].cast<std::vector<double>>()};
          }));
}

void bind_steel_left_out(py::module_& m) {
  using Left = LeftOutSteel;
  py::class_<Left>(m, "LeftOutSteel",
                   "Root mean squares of the misses of one steel, in uncertainties.")
      .def_readonly("steel", &Left::steel, "Its name.")
      .def_readonly("count", &Left::count, "Measurements that count.")
      .def_readonly("before", &Left::before, "With the file.")
      .def_readonly("fitted", &Left::fitted, "With the steel in the fit.")
      .def_readonly("predicted", &Left::predicted, "By the fit without it.")
      .def_property_readonly(
          "status", [](const Left& s) { return std::string(to_string(s.status)); },
          "Of the fit without it.")
      .def("__repr__",
           [](const Left& s) {
             return py::str("<LeftOutSteel {}: {:.2f} fitted, {:.2f} predicted>")
                 .format(s.steel, s.fitted, s.predicted);
           })
      .def(
          "__eq__", [](const Left& a, const Left& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Left& s) {
            return py::make_tuple(s.steel, s.count, s.before, s.fitted, s.predicted,
                                  static_cast<int>(s.status));
          },
          [](const py::tuple& t) {
            return Left{t[0].cast<std::string>(),
                        t[1].cast<std::size_t>(),
                        t[2].cast<double>(),
                        t[3].cast<double>(),
                        t[4].cast<double>(),
                        enumerator(t[5], CalibrationStatus::compared)};
          }));
}

/// Of a pickle that may be damaged.
void check_counts(const PublishedCheck& x) {
  const auto fits = [&](std::size_t met, std::size_t others_met) {
    return met <= x.count && others_met <= x.others() && others_met <= met &&
           met - others_met <= x.fitted_to;
  };
  if (x.fitted_to > x.count || !fits(x.met_before, x.others_met_before) ||
      !fits(x.met_after, x.others_met_after))
    throw py::value_error("counts that do not fit each other");
}

void bind_published_check(py::module_& m) {
  using Check = PublishedCheck;
  py::class_<Check>(m, "PublishedCheck",
                    "What a calibration does to the published measurements.")
      .def_readonly("count", &Check::count, "Computed before and after.")
      .def_readonly("met_before", &Check::met_before,
                    "Missed by one published uncertainty or less, with the file.")
      .def_readonly("met_after", &Check::met_after, "The same with the layer.")
      .def_readonly("fitted_to", &Check::fitted_to,
                    "Of them, those that the calibration was fitted to.")
      .def_property_readonly("others", &Check::others, "The others: a test.")
      .def_readonly("others_met_before", &Check::others_met_before,
                    "Of the others, with the file.")
      .def_readonly("others_met_after", &Check::others_met_after,
                    "Of the others, with the layer.")
      .def_property_readonly("worse", &Check::worse,
                             "Fewer are met than before, of the others; of all where "
                             "there are no others.")
      .def("__repr__",
           [](const Check& x) {
             return "<PublishedCheck" + (x.count == 0 ? "" : ": " + x.brief()) + ">";
           })
      .def(
          "__eq__", [](const Check& a, const Check& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Check& x) {
            return py::make_tuple(x.count, x.met_before, x.met_after, x.fitted_to,
                                  x.others_met_before, x.others_met_after);
          },
          [](const py::tuple& t) {
            const auto at = [&](std::size_t i) { return t[i].cast<std::size_t>(); };
            const Check check{at(0), at(1), at(2), at(3), at(4), at(5)};
            check_counts(check);
            return check;
          }));
}

}  // namespace

void bind_calibration_parts(py::module_& m) {
  bind_measurement(m);
  bind_number(m);
  bind_direction(m);
  bind_steel_left_out(m);
  bind_published_check(m);
}

}  // namespace gibbsteel::python
