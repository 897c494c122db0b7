/// Designs over several elements: targets and results.

#include "common.hpp"
#include "degrees.hpp"
#include "gibbsteel/design.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"
#include "wrapped_steel.hpp"

namespace gibbsteel::python {
namespace {

TargetSense sense_of(const std::string& word) {
  for (const TargetSense sense :
       {TargetSense::equal, TargetSense::at_least, TargetSense::at_most})
    if (word == to_string(sense)) return sense;
  throw InputError({{"gibbsteel.input.269", "sense", "is '" + word + "'",
                     "choose 'equal', 'at least' or 'at most'"}});
}

/// " (2048 F)" or " (1393 K)"; empty where the unit is C.
py::str beside(Temperature t, TemperatureUnit unit) {
  if (unit == TemperatureUnit::celsius) return "";
  return py::str(unit == TemperatureUnit::kelvin ? " ({:.0f} K)" : " ({:.0f} F)")
      .format(in_unit(t, unit));
}

py::str text_of(const DesignTarget& t) {
  return py::str("<DesignTarget: {} {} {:.4g} at {:.0f} C{}>")
      .format(t.quantity.label(), std::string(to_string(t.sense)), t.wanted,
              t.temperature.in_celsius(), beside(t.temperature, t.temperature_unit));
}

DesignTarget target_of(const Quantity& quantity, double kelvin, const std::string& word,
                       double wanted, std::optional<double> tolerance,
                       const std::string& unit) {
  const TargetSense sense = sense_of(word);
  const double usual =
      sense == TargetSense::equal ? DesignTarget::usual_tolerance(wanted) : 0.0;
  return {quantity, Temperature::kelvin(kelvin), sense,
          wanted,   tolerance.value_or(usual),   temperature_unit(unit)};
}

void bind_target(py::module_& m) {
  py::class_<DesignTarget>(m, "DesignTarget",
                           "One number of a soak and what it shall be.\n\n"
                           "Made by gibbsteel.target() and gibbsteel.matrix_targets().")
      .def(py::init(&target_of), py::arg("quantity"), py::arg("kelvin"),
           py::arg("sense"), py::arg("wanted"), py::arg("tolerance") = py::none(),
           py::arg("unit") = "celsius")
      .def_readonly("quantity", &DesignTarget::quantity, "What the target is about.")
      .def_property_readonly(
          "kelvin", [](const DesignTarget& t) { return t.temperature.in_kelvin(); },
          "[K]")
      .def_property_readonly(
          "sense",
          [](const DesignTarget& t) { return std::string(to_string(t.sense)); },
          "'equal', 'at least' or 'at most'.")
      .def_readonly("wanted", &DesignTarget::wanted, "In the unit of the quantity.")
      .def_readonly("tolerance", &DesignTarget::tolerance,
                    "How far off still counts as met, in the unit of the quantity; 0 "
                    "for a limit that is to be kept.")
      .def("__repr__", &text_of)
      .def(tagged_pickle(
          [](const DesignTarget& t) {
            return py::make_tuple(t.quantity, t.temperature.in_kelvin(),
                                  std::string(to_string(t.sense)), t.wanted,
                                  t.tolerance, static_cast<int>(t.temperature_unit));
          },
          [](const py::tuple& t) {
            return DesignTarget{t[0].cast<Quantity>(),
                                Temperature::kelvin(t[1].cast<double>()),
                                sense_of(t[2].cast<std::string>()),
                                t[3].cast<double>(),
                                t[4].cast<double>(),
                                unit_at(t, 5)};
          },
          2));
}

py::tuple outcome_state(const TargetOutcome& o) {
  return py::make_tuple(o.name, o.unit, o.temperature.in_kelvin(),
                        static_cast<int>(o.sense), o.wanted, o.tolerance, o.value,
                        o.miss, o.met, static_cast<int>(o.temperature_unit));
}

TargetOutcome outcome_of(const py::tuple& t) {
  return {t[0].cast<std::string>(),
          t[1].cast<std::string>(),
          Temperature::kelvin(t[2].cast<double>()),
          enumerator(t[3], TargetSense::at_most),
          t[4].cast<double>(),
          t[5].cast<double>(),
          t[6].cast<double>(),
          t[7].cast<double>(),
          t[8].cast<bool>(),
          unit_at(t, 9)};
}

void bind_outcome(py::module_& m) {
  py::class_<TargetOutcome>(m, "TargetOutcome", "How a target came out.")
      .def_readonly("name", &TargetOutcome::name, "Of the quantity.")
      .def_readonly("unit", &TargetOutcome::unit, "Of the quantity.")
      .def_property_readonly(
          "celsius", [](const TargetOutcome& o) { return celsius_of(o.temperature); },
          "[C]")
      .def_property_readonly(
          "sense",
          [](const TargetOutcome& o) { return std::string(to_string(o.sense)); },
          "'equal', 'at least' or 'at most'.")
      .def_readonly("wanted", &TargetOutcome::wanted, "In the unit of the quantity.")
      .def_readonly("tolerance", &TargetOutcome::tolerance,
                    "How far off still counts as met; 0 for a limit that is kept.")
      .def_readonly("value", &TargetOutcome::value, "Of the final soak.")
      .def_readonly("miss", &TargetOutcome::miss,
                    "Value less wanted; 0 for a limit that is kept.")
      .def_readonly("met", &TargetOutcome::met,
                    "The miss is within the tolerance; a limit is kept.")
      .def("__repr__",
           [](const TargetOutcome& o) {
             return py::str("<TargetOutcome {}: {:.4g}, {}>")
                 .format(o.name, o.value, o.met ? "met" : "NOT MET");
           })
      .def(
          "__eq__",
          [](const TargetOutcome& a, const TargetOutcome& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(&outcome_state, &outcome_of, 2));
}

NamedValues percents_of(const Design& design) {
  NamedValues percents;
  for (const DesignedElement& e : design.elements)
    percents.set(e.symbol, e.weight_percent);
  return percents;
}

std::vector<std::string> at_bound(const Design& design) {
  std::vector<std::string> symbols;
  for (const DesignedElement& e : design.elements)
    if (e.at_bound) symbols.push_back(e.symbol);
  return symbols;
}

py::tuple get_state(const Design& d) {
  py::list elements;
  for (const DesignedElement& e : d.elements)
    elements.append(py::make_tuple(e.symbol, e.range.low, e.range.high,
                                   e.weight_percent, e.at_bound));
  return py::make_tuple(static_cast<int>(d.status), pickled(d.steel), elements,
                        d.targets, d.states, d.soaks, d.starts, d.text, d.by_family,
                        d.of_targets);
}

Design set_state(const py::tuple& t) {
  std::vector<DesignedElement> elements;
  for (const auto& item : t[2]) {
    const auto e = item.cast<py::tuple>();
    elements.push_back({e[0].cast<std::string>(),
                        {e[1].cast<double>(), e[2].cast<double>()},
                        e[3].cast<double>(),
                        e[4].cast<bool>()});
  }
  return {enumerator(t[0], DesignStatus::stopped),
          unpickled(t[1]),
          std::move(elements),
          t[3].cast<std::vector<TargetOutcome>>(),
          t[4].cast<std::vector<State>>(),
          t[5].cast<std::size_t>(),
          t[6].cast<int>(),
          t[7].cast<std::string>(),
          t.size() > 8 && t[8].cast<bool>(),
          t.size() > 9 ? t[9].cast<std::vector<Warning>>() : std::vector<Warning>{}};
}

void bind_result(py::module_& m) {
  py::class_<Design>(m, "Design", "A composition, and how it meets its targets.")
      .def_property_readonly(
          "status", [](const Design& d) { return std::string(to_string(d.status)); },
          "'met', 'compromise', 'infeasible', 'not converged' or 'stopped'.")
      .def_property_readonly(
          "steel", [](const Design& d) { return wrapped(d.steel); },
          "The designed Steel; the best found when the targets are not all met.")
      .def_property_readonly("weight_percent", &percents_of,
                             "Of the elements that were free: dict.")
      .def_property_readonly("at_bound", &at_bound, "Elements held back by a bound.")
      .def_readonly("targets", &Design::targets, "How each came out.")
      .def_readonly("states", &Design::states,
                    "Final soaks, one per temperature of the targets.")
      .def_readonly("soaks", &Design::soaks, "That the search took.")
      .def_readonly("starts", &Design::starts, "That were followed.")
      .def_readonly("text", &Design::text, "One sentence.")
      .def_property_readonly("warnings", &Design::warnings,
                             "The distinct warnings of the final soaks, and of "
                             "hardening estimates among the targets.")
      .def("__repr__", [](const Design& d) { return "<" + d.brief() + ">"; })
      .def("__str__", &Design::full)
      .def(tagged_pickle(&get_state, &set_state, 3));
}

Design run(const Steel& start,
           const std::vector<std::tuple<std::string, double, double>>& elements,
           const std::vector<DesignTarget>& targets, int starts, int candidates,
           int most_steps, const MakeableSteps& steps, const SoakOptions& soak,
           const py::object& callback) {
  std::vector<DesignElement> free;
  for (const auto& [symbol, low, high] : elements)
    free.push_back({symbol, {low, high}});
  DesignOptions options;
  options.starts = starts;
  options.candidates = candidates;
  options.most_steps = most_steps;
  options.makeable = steps;
  options.soak = soak;
  options.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return design(start, free, targets, options);
}

}  // namespace

void bind_design(py::module_& m) {
  bind_target(m);
  m.def("matrix_targets", &matrix_targets, py::arg("state"), py::arg("elements"));
  bind_outcome(m);
  bind_result(m);
  const DesignOptions usual;
  m.def("design", &run, py::arg("start"), py::arg("elements"), py::arg("targets"),
        py::arg("starts") = usual.starts, py::arg("candidates") = usual.candidates,
        py::arg("most_steps") = usual.most_steps, py::kw_only(), py::arg("steps"),
        py::arg("soak"), py::arg("progress") = py::none());
}

}  // namespace gibbsteel::python
