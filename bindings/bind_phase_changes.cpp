/// PhaseChanges and PhaseChange.

#include "gibbsteel/phase_changes.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

PhaseChanges run(const Steel& steel, Pair kelvin, const SoakOptions& options,
                 SearchOptions search, const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return phase_changes(steel, range_of(kelvin), options, search);
}

void bind_change(py::module_& m) {
  py::class_<PhaseChange> change(
      m, "PhaseChange", "Phases appear or disappear; all words are those of heating.");
  def_temperature(change, [](const PhaseChange& c) { return c.temperature; });
  change
      .def_readonly("bracket_width", &PhaseChange::bracket_width,
                    "[K]: `below` and `above` are that far apart.")
      .def_readonly("appears", &PhaseChange::appears, "list of kinds.")
      .def_readonly("disappears", &PhaseChange::disappears, "list of kinds.")
      .def_readonly("invariant", &PhaseChange::invariant,
                    "True: several phases react at one temperature, and amounts jump.")
      .def_readonly("text", &PhaseChange::text, "One line.")
      .def_readonly("below", &PhaseChange::below, "State below the change.")
      .def_readonly("above", &PhaseChange::above, "State above the change.")
      .def_readonly("uncertainty_at_least", &PhaseChange::uncertainty_at_least,
                    "[K] One standard deviation of the temperature by those that the "
                    "file states, Eq. (B8); NaN when not known.")
      .def("__repr__",
           [](const PhaseChange& c) { return "<PhaseChange " + c.text + ">"; })
      .def(tagged_pickle(
          [](const PhaseChange& c) {
            return py::make_tuple(c.temperature.in_kelvin(), c.bracket_width, c.appears,
                                  c.disappears, c.invariant, c.text, c.below, c.above,
                                  c.uncertainty_at_least);
          },
          [](const py::tuple& t) {
            using Names = std::vector<std::string>;
            return PhaseChange{Temperature::kelvin(t[0].cast<double>()),
                               t[1].cast<double>(),
                               t[2].cast<Names>(),
                               t[3].cast<Names>(),
                               t[4].cast<bool>(),
                               t[5].cast<std::string>(),
                               t[6].cast<State>(),
                               t[7].cast<State>(),
                               number_at(t, 8)};
          },
          2));
}

void bind_limit(py::module_& m) {
  py::class_<TransformationLimit> limit(
      m, "TransformationLimit", "A temperature that exists (else None), and why.");
  def_temperature(limit, [](const TransformationLimit& x) { return x.temperature; });
  def_equality(limit);
  limit.def_readonly("text", &TransformationLimit::text, "One line.")
      .def("__repr__",
           [](const TransformationLimit& x) {
             return "<TransformationLimit: " + x.text + ">";
           })
      .def(tagged_pickle(
          [](const TransformationLimit& x) {
            return py::make_tuple(kelvins(x.temperature), x.text);
          },
          [](const py::tuple& t) {
            return TransformationLimit{
                temperature_of(t[0].cast<std::optional<double>>()),
                t[1].cast<std::string>()};
          }));
}

py::tuple changes_state(const PhaseChanges& c) {
  return py::make_tuple(c.steel, kelvins(c.range), c.tolerance, c.changes, c.fields,
                        c.gaps, c.ae1, c.ae3, c.acm, c.low, c.high, c.soaks, c.stopped,
                        static_cast<int>(c.temperature_unit));
}

PhaseChanges changes_from(const py::tuple& t) {
  PhaseChanges c;
  c.steel = t[0].cast<std::string>();
  c.range = range_of(t[1].cast<Pair>());
  c.tolerance = t[2].cast<double>();
  c.changes = t[3].cast<std::vector<PhaseChange>>();
  c.fields = t[4].cast<std::vector<PhaseField>>();
  c.gaps = t[5].cast<std::vector<PhaseGap>>();
  c.ae1 = t[6].cast<TransformationLimit>();
  c.ae3 = t[7].cast<TransformationLimit>();
  c.acm = t[8].cast<TransformationLimit>();
  c.low = t[9].cast<State>();
  c.high = t[10].cast<State>();
  c.soaks = t[11].cast<std::size_t>();
  c.stopped = t[12].cast<std::string>();
  c.temperature_unit = unit_at(t, 13);
  return c;
}

using ChangesClass = py::class_<PhaseChanges>;

void bind_content(ChangesClass& changes) {
  changes
      .def_readonly("steel", &PhaseChanges::steel, "Name of the steel; may be empty.")
      .def_readonly("tolerance", &PhaseChanges::tolerance, "[K]")
      .def_readonly("changes", &PhaseChanges::changes, "list of PhaseChange, upwards.")
      .def_readonly("fields", &PhaseChanges::fields, "list of PhaseField, upwards.")
      .def_readonly("gaps", &PhaseChanges::gaps, "list of PhaseGap, upwards.")
      .def_readonly("ae1", &PhaseChanges::ae1, "Austenite first forms.")
      .def_readonly("ae3", &PhaseChanges::ae3, "The last ferrite is gone.")
      .def_readonly("acm", &PhaseChanges::acm, "M3C is gone, above Ae3.")
      .def_readonly("low", &PhaseChanges::low, "State at the low end.")
      .def_readonly("high", &PhaseChanges::high, "State at the high end.")
      .def_readonly("soaks", &PhaseChanges::soaks, "Number that the search took.")
      .def_readonly("stopped", &PhaseChanges::stopped,
                    "Why the range was not searched to its end; else empty.")
      .def_property_readonly("complete", &PhaseChanges::complete,
                             "True when nothing in the range is unknown.")
      .def_property_readonly("kinds", &PhaseChanges::kinds,
                             "Kinds that are present anywhere.")
      .def_property_readonly("warnings", &PhaseChanges::warnings,
                             "The distinct warnings of all states.");
}

}  // namespace

void bind_phase_changes(py::module_& m) {
  bind_change(m);
  bind_limit(m);
  ChangesClass changes(m, "PhaseChanges",
                       "Where phases appear and disappear on heating.");
  def_answers(changes, [](const PhaseChanges& c) { return c.changes; });
  def_searched(changes, [](const PhaseChanges& c) { return c.range; });
  bind_content(changes);
  changes
      .def("intervals", &PhaseChanges::intervals, py::arg("kind"),
           "Where a kind is present: list of PhaseField.")
      .def("dissolution", &PhaseChanges::dissolution, py::arg("kind"),
           "The temperature above which a kind is gone.")
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.target_frames")
                .attr("phase_changes_to_frame")(self);
          },
          "Table (pandas): one row per change.")
      .def("__repr__", [](const PhaseChanges& c) { return "<" + c.brief() + ">"; })
      .def("__str__", &PhaseChanges::full)
      .def(tagged_pickle(&changes_state, &changes_from, 2));
  m.def("phase_changes", &run, py::arg("steel"), py::arg("kelvin"), py::arg("options"),
        py::arg("search"), py::arg("progress"));
}

}  // namespace gibbsteel::python
