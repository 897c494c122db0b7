/// Short soaks with measured carbide, and their limit.

#include "common.hpp"
#include "gibbsteel/measured_carbide.hpp"
#include "gibbsteel/short_soak_limit.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Holder = std::shared_ptr<ParameterSet>;

std::string word_of(CarbideSource source) {
  return source == CarbideSource::soak ? "soak" : "annealed";
}

/// The one of two words that `word` is.
bool is_second(const char* place, const std::string& word, const char* first,
               const char* second) {
  if (word != first && word != second)
    throw InputError({{"gibbsteel.input.262", place, "is '" + word + "'",
                       std::string("choose '") + first + "' or '" + second + "'"}});
  return word == second;
}

ShortSoak run(const State& state, const std::vector<MeasuredCarbide>& measured,
              const std::string& composition, std::optional<double> annealed_kelvin,
              const std::string& unlisted, const Holder& parameters) {
  MeasuredCarbideOptions options;
  if (is_second("composition", composition, "soak", "annealed"))
    options.composition = CarbideSource::annealed;
  if (is_second("unlisted", unlisted, "kept", "absent"))
    options.unlisted = UnlistedCarbide::absent;
  if (annealed_kelvin) options.annealed_at = Temperature::kelvin(*annealed_kelvin);
  options.parameters = parameters;
  const py::gil_scoped_release release;
  return with_measured_carbide(state, measured, options);
}

ShortSoakLimitOptions limit_options(std::optional<double> annealed_kelvin,
                                    const Holder& parameters) {
  ShortSoakLimitOptions options;
  if (annealed_kelvin) options.annealed_at = Temperature::kelvin(*annealed_kelvin);
  options.parameters = parameters;
  return options;
}

ShortSoak limit(const State& state, std::optional<double> annealed_kelvin,
                const Holder& parameters) {
  const ShortSoakLimitOptions options = limit_options(annealed_kelvin, parameters);
  const py::gil_scoped_release release;
  return short_soak_limit(state, options);
}

Quantity limit_quantity(const std::string& element,
                        std::optional<double> annealed_kelvin,
                        const Holder& parameters) {
  return quantities::short_soak_matrix(element,
                                       limit_options(annealed_kelvin, parameters));
}

void bind_measurement(py::module_& m) {
  py::class_<MeasuredCarbide>(m, "MeasuredCarbide",
                              "Carbide of one kind, counted under the microscope.")
      .def(py::init([](std::string kind, double volume_percent,
                       double standard_deviation, std::optional<double> smallest) {
             return MeasuredCarbide{std::move(kind), volume_percent, standard_deviation,
                                    smallest};
           }),
           py::arg("kind"), py::arg("volume_percent"),
           py::arg("standard_deviation") = 0.0,
           py::arg("smallest_counted") = py::none())
      .def_readonly("kind", &MeasuredCarbide::kind, "For instance ``\"M3C\"``.")
      .def_readonly("volume_percent", &MeasuredCarbide::volume_percent, "Of the steel.")
      .def_readonly("standard_deviation", &MeasuredCarbide::standard_deviation,
                    "Of the count [vol%].")
      .def_readonly("smallest_counted", &MeasuredCarbide::smallest_counted,
                    "Smallest particle that was counted [micrometre], or None.")
      .def("__repr__",
           [](const MeasuredCarbide& c) {
             return py::str("<MeasuredCarbide {}: {:.4g} vol%>")
                 .format(c.kind, c.volume_percent);
           })
      .def(
          "__eq__",
          [](const MeasuredCarbide& a, const MeasuredCarbide& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const MeasuredCarbide& c) {
            return py::make_tuple(c.kind, c.volume_percent, c.standard_deviation,
                                  c.smallest_counted);
          },
          [](const py::tuple& t) {
            return MeasuredCarbide{t[0].cast<std::string>(), t[1].cast<double>(),
                                   t[2].cast<double>(),
                                   t[3].cast<std::optional<double>>()};
          }));
}

py::tuple carbide_state(const CarbideInBalance& c) {
  return py::make_tuple(c.kind, c.volume_percent, c.standard_deviation,
                        c.long_hold_volume, c.measured,
                        c.composition == CarbideSource::annealed, c.weight_percent,
                        c.other_source_exists);
}

CarbideInBalance carbide_of(const py::tuple& t) {
  return {t[0].cast<std::string>(),
          t[1].cast<double>(),
          t[2].cast<double>(),
          t[3].cast<double>(),
          t[4].cast<bool>(),
          t[5].cast<bool>() ? CarbideSource::annealed : CarbideSource::soak,
          t[6].cast<NamedValues>(),
          t[7].cast<bool>()};
}

void bind_carbide(py::module_& m) {
  py::class_<CarbideInBalance>(m, "CarbideInBalance",
                               "A carbide as it entered the balance of a short soak.")
      .def_readonly("kind", &CarbideInBalance::kind, "For instance ``\"M3C\"``.")
      .def_readonly("volume_percent", &CarbideInBalance::volume_percent,
                    "As measured, kept or computed.")
      .def_readonly("standard_deviation", &CarbideInBalance::standard_deviation,
                    "Of the count [vol%].")
      .def_readonly("long_hold_volume", &CarbideInBalance::long_hold_volume,
                    "In the state that was started from [vol%].")
      .def_readonly("measured", &CarbideInBalance::measured,
                    "False: kept at the long-hold volume; of a limit or timed soak, "
                    "computed.")
      .def_property_readonly(
          "composition",
          [](const CarbideInBalance& c) { return word_of(c.composition); },
          "'soak' or 'annealed': where it was taken from.")
      .def_readonly("weight_percent", &CarbideInBalance::weight_percent,
                    "Composition used: dict of weight percents.")
      .def_readonly("other_source_exists", &CarbideInBalance::other_source_exists,
                    "True when the other source has the kind as well.")
      .def("__repr__",
           [](const CarbideInBalance& c) {
             const bool kept = !c.measured && c.volume_percent == c.long_hold_volume;
             return py::str("<CarbideInBalance {}: {:.4g} vol%{}>")
                 .format(c.kind, c.volume_percent, kept ? ", kept" : "");
           })
      .def(
          "__eq__",
          [](const CarbideInBalance& a, const CarbideInBalance& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&carbide_state, &carbide_of));
}

void bind_band(py::module_& m) {
  py::class_<MatrixBand>(m, "MatrixBand",
                         "One element of the matrix and how sure it is [wt%].")
      .def_readonly("element", &MatrixBand::element, "Symbol.")
      .def_readonly("value", &MatrixBand::value, "As on the state.")
      .def_readonly("long_hold", &MatrixBand::long_hold,
                    "In the state that was started from.")
      .def_readonly("standard_deviation", &MatrixBand::standard_deviation,
                    "From those of the counts.")
      .def_readonly("other_composition", &MatrixBand::other_composition,
                    "Of measured carbide with that of the other source; else `value`.")
      .def_readonly("low", &MatrixBand::low,
                    "Of measured carbide the lower of the two compositions, less two "
                    "standard deviations; of a limit the lower of it and the long "
                    "hold; of a timed soak that of a third of the minutes.")
      .def_readonly("high", &MatrixBand::high,
                    "Of measured carbide the higher of the two, plus two standard "
                    "deviations; of a limit the higher of it and the long hold; of a "
                    "timed soak that of three times the minutes.")
      .def("__repr__",
           [](const MatrixBand& b) {
             return py::str("<MatrixBand {}: {:.3f} wt%, {:.3f} to {:.3f}>")
                 .format(b.element, b.value, b.low, b.high);
           })
      .def(
          "__eq__", [](const MatrixBand& a, const MatrixBand& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const MatrixBand& b) {
            return py::make_tuple(b.element, b.value, b.long_hold, b.standard_deviation,
                                  b.other_composition, b.low, b.high);
          },
          [](const py::tuple& t) {
            return MatrixBand{t[0].cast<std::string>(), t[1].cast<double>(),
                              t[2].cast<double>(),      t[3].cast<double>(),
                              t[4].cast<double>(),      t[5].cast<double>(),
                              t[6].cast<double>()};
          }));
}

ShortSoak set_state(const py::tuple& t) {
  return {t[0].cast<State>(), t[1].cast<std::vector<MeasuredCarbide>>(),
          t[2].cast<std::vector<CarbideInBalance>>(),
          t[3].cast<std::vector<MatrixBand>>(),
          Temperature::kelvin(t[4].cast<double>())};
}

void bind_short_soak(py::module_& m) {
  py::class_<ShortSoak>(
      m, "ShortSoak",
      "Carbide of a short soak, seen or computed, and the matrix that "
      "it leaves.")
      .def_readonly("state", &ShortSoak::state,
                    "State of a short soak; no equilibrium, so potentials and driving "
                    "forces are missing, and with measured carbide the activity.")
      .def_readonly("measured", &ShortSoak::measured,
                    "As entered; empty where the carbide is computed.")
      .def_readonly("carbides", &ShortSoak::carbides, "As they entered the balance.")
      .def_readonly("bands", &ShortSoak::bands, "Elements of the matrix.")
      .def_property_readonly(
          "annealed_kelvin",
          [](const ShortSoak& s) { return s.annealed_at.in_kelvin(); },
          "Annealing temperature [K].")
      .def_property_readonly(
          "annealed_celsius",
          [](const ShortSoak& s) { return s.annealed_at.in_celsius(); },
          "Annealing temperature [C].")
      .def_property_readonly(
          "annealed_fahrenheit",
          [](const ShortSoak& s) { return s.annealed_at.in_fahrenheit(); },
          "Annealing temperature [F].")
      .def("band", &ShortSoak::band, py::arg("element"), "The band of one element.")
      .def("__repr__", [](const ShortSoak& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &ShortSoak::full)
      .def(tagged_pickle(
          [](const ShortSoak& s) {
            return py::make_tuple(s.state, s.measured, s.carbides, s.bands,
                                  s.annealed_at.in_kelvin());
          },
          &set_state));
}

}  // namespace

void bind_measured_carbide(py::module_& m) {
  bind_measurement(m);
  bind_carbide(m);
  bind_band(m);
  bind_short_soak(m);
  m.def("with_measured_carbide", &run, py::arg("state"), py::arg("measured"),
        py::arg("composition"), py::arg("annealed_kelvin"), py::arg("unlisted"),
        py::arg("parameters"));
  m.def("short_soak_limit", &limit, py::arg("state"), py::arg("annealed_kelvin"),
        py::arg("parameters"));
  m.def("quantity_short_soak_matrix", &limit_quantity, py::arg("element"),
        py::arg("annealed_kelvin"), py::arg("parameters"));
}

}  // namespace gibbsteel::python
