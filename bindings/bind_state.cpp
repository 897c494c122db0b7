/// State, Matrix and SoakWarning.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/state.hpp"
#include "named.hpp"
#include "pickling.hpp"
#include "soak_time_fields.hpp"

namespace gibbsteel::python {
namespace {

py::object by_name(const py::object& state, const std::vector<Occurrence>& occurrences,
                   const char* role) {
  py::dict found;
  for (const auto& occurrence : occurrences)
    found[py::str(occurrence.name)] = py::cast(occurrence);
  return named("by_name", state, found, role);
}

/// Why a dict by element does not hold the name.
Problem element_problem(const std::string& place, const std::string& name,
                        const std::vector<std::string>& present,
                        const std::string& way_out) {
  if (!find_element(name)) {
    const std::string meant(suggest_element(name));
    return {
        "gibbsteel.input.201", place, "'" + name + "' is not the symbol of an element",
        meant.empty() ? "give a symbol such as Cr" : "did you mean '" + meant + "'?"};
  }
  std::string list;
  for (const std::string& symbol : present) list += (list.empty() ? "" : ", ") + symbol;
  return {"gibbsteel.input.288", place, "holds no " + name,
          way_out + "; present: " + (list.empty() ? "none" : list)};
}

bool contains(const State& state, const py::object& object) {
  if (!py::isinstance<py::str>(object)) return false;
  const auto name = object.cast<std::string>();
  for (const auto& occurrence : state.occurrences)
    if (occurrence.name == name) return true;
  return false;
}

py::tuple get_state(const State& s) {
  return py::make_tuple(
      s.steel, s.analysis, s.temperature.in_kelvin(), static_cast<int>(s.basis),
      s.occurrences, s.matrix, s.carbide_volume_percent, s.carbide_mass_percent,
      s.carbon_activity, s.gibbs_energy, s.density, s.chemical_potential,
      s.driving_force, s.warnings, s.solve_report, s.parameters, s.parameters_hash,
      s.kinds, s.suppressed, time_fields(s.soak_time));
}

State set_state(const py::tuple& t, int format) {
  if (t.size() != (format > 1 ? 20 : 19)) throw py::value_error("number of fields");
  State s;
  s.steel = t[0].cast<std::string>();
  s.analysis = t[1].cast<MillAnalysis>();
  s.temperature = Temperature::kelvin(t[2].cast<double>());
  s.basis = enumerator(t[3], VolumeBasis::soak);
  s.occurrences = t[4].cast<std::vector<Occurrence>>();
  s.matrix = t[5].cast<Matrix>();
  s.carbide_volume_percent = t[6].cast<double>();
  s.carbide_mass_percent = t[7].cast<double>();
  s.carbon_activity = t[8].cast<double>();
  s.gibbs_energy = t[9].cast<double>();
  s.density = t[10].cast<double>();
  s.chemical_potential = t[11].cast<NamedValues>();
  s.driving_force = t[12].cast<NamedValues>();
  s.warnings = t[13].cast<std::vector<Warning>>();
  s.solve_report = t[14].cast<SolveReport>();
  s.parameters = t[15].cast<std::string>();
  s.parameters_hash = t[16].cast<std::string>();
  s.kinds = t[17].cast<std::vector<std::string>>();
  s.suppressed = t[18].cast<std::vector<std::string>>();
  if (format > 1) s.soak_time = time_from(t[19]);
  check_time(s);
  return s;
}

void bind_warning(py::module_& m) {
  py::class_<Warning>(m, "SoakWarning", "What to know about a result; no error.")
      .def_readonly("code", &Warning::code, "Stable code.")
      .def_readonly("text", &Warning::text, "One or two sentences.")
      .def("__str__", [](const Warning& w) { return "[" + w.code + "] " + w.text; })
      .def("__repr__",
           [](const Warning& w) {
             return "<SoakWarning " + w.code + ": " + w.text + ">";
           })
      .def(
          "__eq__", [](const Warning& a, const Warning& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Warning& w) { return py::make_tuple(w.code, w.text); },
          [](const py::tuple& t) {
            return Warning{t[0].cast<std::string>(), t[1].cast<std::string>()};
          }));
}

void bind_matrix(py::module_& m) {
  py::class_<Matrix> matrix(m, "Matrix", "All matrix phases of a state together.");
  def_by_element(matrix, "weight_percent", &Matrix::weight_percent,
                 "Mass-weighted composition: dict of weight percents.");
  def_by_element(matrix, "atom_fraction", &Matrix::atom_fraction,
                 "dict of atom fractions, sum 1.");
  matrix.def_readonly("mass_percent", &Matrix::mass_percent, "Percent of the mass.")
      .def_readonly("volume_percent", &Matrix::volume_percent, "Percent of the volume.")
      .def("__repr__",
           [](const Matrix& x) {
             return py::str("<Matrix: {:.2f} % of the mass, {:.3f} wt% C>")
                 .format(x.mass_percent, x.weight_percent["C"]);
           })
      .def(
          "__eq__", [](const Matrix& a, const Matrix& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Matrix& x) {
            return py::make_tuple(x.mass_percent, x.volume_percent, x.weight_percent,
                                  x.atom_fraction);
          },
          [](const py::tuple& t) {
            return Matrix{t[0].cast<double>(), t[1].cast<double>(),
                          t[2].cast<NamedValues>(), t[3].cast<NamedValues>()};
          }));
}

using StateClass = py::class_<State>;

void bind_conditions(StateClass& state) {
  state.def_readonly("steel", &State::steel, "Name of the steel; may be empty.")
      .def_readonly("analysis", &State::analysis,
                    "The mill certificate, sorted into modelled and not modelled.")
      .def_property_readonly(
          "kelvin", [](const State& s) { return s.temperature.in_kelvin(); },
          "Temperature [K].")
      .def_property_readonly(
          "celsius", [](const State& s) { return celsius_of(s.temperature); },
          "Temperature [C].")
      .def_property_readonly(
          "fahrenheit", [](const State& s) { return fahrenheit_of(s.temperature); },
          "Temperature [F].")
      .def_property_readonly(
          "at_soak_temperature",
          [](const State& s) { return s.basis == VolumeBasis::soak; },
          "False: volumes at room temperature, as metallography measures.")
      .def_readonly("kinds", &State::kinds,
                    "Names of all kinds of phase that the parameter file knows.")
      .def_property_readonly(
          "soak_minutes",
          [](const State& s) -> std::optional<double> {
            if (!is_timed(s)) return std::nullopt;
            return s.soak_time->minutes;
          },
          "Minutes at temperature of a timed soak, else None.")
      .def_property_readonly(
          "particle_micrometres",
          [](const State& s) -> std::optional<double> {
            if (!is_timed(s)) return std::nullopt;
            return s.soak_time->particle_micrometres;
          },
          "Diameter of the annealed cementite of a timed soak, else None.")
      .def_readonly("suppressed", &State::suppressed,
                    "Phase models of the file that were not allowed to form.")
      .def_property_readonly("usable", &State::usable,
                             "True when the calculation converged and was checked. It "
                             "does not say that the parameter file is right here: read "
                             "`warnings`.");
}

void bind_results(StateClass& state) {
  state.def_readonly("occurrences", &State::occurrences, "All, largest volume first.")
      .def_property_readonly(
          "carbides",
          [](const py::object& s) {
            return by_name(s, s.cast<const State&>().carbides(), "carbide");
          },
          "dict: name -> Occurrence, largest volume first.")
      .def_property_readonly(
          "matrix_phases",
          [](const py::object& s) {
            return by_name(s, s.cast<const State&>().matrix_phases(), "matrix phase");
          },
          "dict: name -> Occurrence.")
      .def_readonly("matrix", &State::matrix, "All matrix phases together.")
      .def_readonly("carbide_volume_percent", &State::carbide_volume_percent,
                    "Percent of the volume, all carbides together.")
      .def_readonly("carbide_mass_percent", &State::carbide_mass_percent,
                    "Percent of the mass, all carbides together.")
      .def_readonly("carbon_activity", &State::carbon_activity,
                    "Relative to graphite; NaN without carbon.")
      .def_readonly("gibbs_energy", &State::gibbs_energy, "[J/mol of atoms]")
      .def_readonly("density", &State::density, "[g/cm3]")
      .def_property_readonly(
          "driving_force",
          [](const py::object& s) {
            return named("by_kind", s, s.cast<const State&>().driving_force);
          },
          "dict: kind -> [J/mol of atoms]; 0 present, negative absent.")
      .def_readonly("warnings", &State::warnings, "list of SoakWarning.")
      .def_readonly("solve_report", &State::solve_report, "How the minimization went.")
      .def_readonly("parameters", &State::parameters, "Title and edition of the file.")
      .def_readonly("parameters_hash", &State::parameters_hash,
                    "ParameterSet.content_hash of the file.");
  def_by_element(state, "chemical_potential", &State::chemical_potential,
                 "dict: element -> [J/mol]; see ParameterSet.reference_state.");
}

}  // namespace

void bind_state(py::module_& m) {
  m.def("element_problem", &element_problem, py::arg("place"), py::arg("name"),
        py::arg("present"), py::arg("way_out"));
  bind_warning(m);
  bind_matrix(m);
  StateClass state(
      m, "State",
      "Long-hold limit (true equilibrium) of one steel at one temperature. "
      "When `usable` is False every number is NaN or missing.");
  bind_conditions(state);
  bind_results(state);
  state
      .def("volume_percent_of", &State::volume_percent_of, py::arg("kind"),
           "Volume percent of all occurrences of a kind; 0 when absent. Raises "
           "InputError "
           "for a kind that the parameter file does not know.")
      .def("element_shares", &State::element_shares, py::arg("element"),
           "Where the atoms of an element are: dict of percents of that element, "
           "'matrix' first, then every other kind present. Empty when not usable; "
           "raises InputError when the state holds none of it.")
      .def("__getitem__",
           [](const State& s, const std::string& name) { return s.at(name); })
      .def("__contains__", &contains)
      .def("__repr__", [](const State& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &State::full)
      .def(tagged_pickle(&get_state, &set_state, 3));
}

}  // namespace gibbsteel::python
