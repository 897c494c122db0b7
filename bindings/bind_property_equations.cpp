/// PropertyInput, PropertySlope, PropertyEquation and PropertyEquations.

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/property_equations.hpp"
#include "pickling.hpp"
#include "shared_object.hpp"

namespace gibbsteel::python {
namespace {

constexpr PropertyKind kKinds[]{
    PropertyKind::martensite_start, PropertyKind::retained_austenite,
    PropertyKind::martensite_hardness, PropertyKind::grain_pinning};

PropertyKind kind_of(const std::string& name) {
  std::string known;
  for (const PropertyKind kind : kKinds) {
    if (property_kind_name(kind) == name) return kind;
    known +=
        (known.empty() ? "'" : ", '") + std::string(property_kind_name(kind)) + "'";
  }
  throw InputError({{"gibbsteel.input.246", "kind", "there is no kind '" + name + "'",
                     "choose one of " + known}});
}

/// A Python function as an equation.
class PythonValue {
 public:
  explicit PythonValue(py::object function) : function_(std::move(function)) {}

  double operator()(const PropertyInput& input) const {
    const py::gil_scoped_acquire hold;
    const py::object result = (*function_)(input);
    const double number = PyFloat_AsDouble(result.ptr());
    if (PyErr_Occurred()) throw py::error_already_set();
    return number;
  }
  const py::object& function() const { return *function_; }

 private:
  SharedObject function_;
};

using Ranges = std::map<std::string, std::pair<double, double>>;

Ranges ranges_of(const PropertyEquation& equation) {
  Ranges ranges;
  for (const EquationRange& range : equation.ranges)
    ranges[range.element] = {range.low, range.high};
  return ranges;
}

PropertyEquations with_equation(const PropertyEquations& equations,
                                const std::string& kind, const std::string& key,
                                const py::object& value, const std::string& formula,
                                const std::string& source, const Ranges& ranges,
                                const std::vector<std::string>& elements, double error,
                                const std::string& note) {
  PropertyEquation own;
  own.kind = kind_of(kind);
  own.key = key;
  own.formula = formula;
  own.source = source;
  for (const auto& [element, range] : ranges)
    own.ranges.push_back({element, range.first, range.second});
  own.elements = elements;
  own.error = error;
  own.note = note;
  if (!value.is_none()) own.value = PythonValue(value);
  return equations.with_equation(std::move(own));
}

/// The user's own equations; the built-in ones need not travel.
py::tuple get_state(const PropertyEquations& equations) {
  py::list own;
  const auto& all = equations.all();
  for (std::size_t i = PropertyEquations::built_in(); i < all.size(); ++i) {
    const PropertyEquation& e = all[i];
    const auto* held = e.value.target<PythonValue>();
    own.append(py::make_tuple(std::string(property_kind_name(e.kind)), e.key,
                              held ? held->function() : py::none(), e.formula, e.source,
                              ranges_of(e), e.elements, e.error, e.note));
  }
  return py::make_tuple(own);
}

PropertyEquations set_state(const py::tuple& state) {
  PropertyEquations equations;
  for (const py::handle each : state[0]) {
    const auto t = each.cast<py::tuple>();
    equations =
        with_equation(equations, t[0].cast<std::string>(), t[1].cast<std::string>(),
                      t[2], t[3].cast<std::string>(), t[4].cast<std::string>(),
                      t[5].cast<Ranges>(), t[6].cast<std::vector<std::string>>(),
                      t[7].cast<double>(), t[8].cast<std::string>());
  }
  return equations;
}

PropertyInput property_input(const NamedValues& weight_percent, double martensite_start,
                             double coldest_celsius, double cooling_rate,
                             double particle_diameter, double carbide_fraction) {
  return {weight_percent, martensite_start,  coldest_celsius,
          cooling_rate,   particle_diameter, carbide_fraction};
}

void bind_input(py::module_& m) {
  const PropertyInput usual;
  py::class_<PropertyInput>(m, "PropertyInput", "What an equation may read.")
      .def(py::init(&property_input), py::arg("weight_percent"), py::kw_only(),
           py::arg("martensite_start") = usual.martensite_start,
           py::arg("coldest_celsius") = usual.coldest_celsius,
           py::arg("cooling_rate") = usual.cooling_rate,
           py::arg("particle_diameter") = usual.particle_diameter,
           py::arg("carbide_fraction") = usual.carbide_fraction)
      .def_readonly("weight_percent", &PropertyInput::weight_percent,
                    "Of the austenite.")
      .def_readonly("martensite_start", &PropertyInput::martensite_start, "[C]")
      .def_readonly("coldest_celsius", &PropertyInput::coldest_celsius, "[C]")
      .def_readonly("cooling_rate", &PropertyInput::cooling_rate, "At 700 C [C/h].")
      .def_readonly("particle_diameter", &PropertyInput::particle_diameter, "[um]")
      .def_readonly("carbide_fraction", &PropertyInput::carbide_fraction,
                    "Of the volume, 0 to 1, for grain pinning.")
      .def("__repr__", [](const PropertyInput& in) {
        return py::str("<PropertyInput: {:.3f} wt% C>").format(in.weight_percent["C"]);
      });
  py::class_<PropertySlope>(m, "PropertySlope", "Derivatives of an equation.")
      .def_readonly("weight_percent", &PropertySlope::weight_percent, "Per wt%.")
      .def_readonly("martensite_start", &PropertySlope::martensite_start, "Per C.")
      .def_readonly("carbide_fraction", &PropertySlope::carbide_fraction,
                    "Per unit of the fraction.")
      .def("__repr__", [](const PropertySlope&) { return "<PropertySlope>"; });
}

void bind_equation(py::module_& m) {
  py::class_<PropertyEquation>(m, "PropertyEquation", "One equation of the trade.")
      .def_property_readonly(
          "kind",
          [](const PropertyEquation& e) {
            return std::string(property_kind_name(e.kind));
          },
          "Such as 'martensite start'.")
      .def_property_readonly(
          "unit",
          [](const PropertyEquation& e) { return std::string(property_unit(e.kind)); },
          "Of what it gives: C, HV, um, or empty for a fraction.")
      .def_readonly("key", &PropertyEquation::key, "By which it is chosen.")
      .def_readonly("label", &PropertyEquation::label,
                    "``\"H7\"``; empty for your own.")
      .def_readonly("formula", &PropertyEquation::formula,
                    "As text, weight percents of the austenite.")
      .def_readonly("source", &PropertyEquation::source, "Citation.")
      .def_property_readonly(
          "ranges", &ranges_of,
          "Element -> (low, high) [wt%] within which the source says it holds.")
      .def_readonly("elements", &PropertyEquation::elements,
                    "That it has a term for; empty when not known.")
      .def_readonly("error", &PropertyEquation::error,
                    "Typical, one standard deviation, in the unit.")
      .def_readonly("note", &PropertyEquation::note, "What to know when using it.")
      .def(
          "value",
          [](const PropertyEquation& e, const PropertyInput& in) {
            return e.value(in);
          },
          py::arg("input"), "What it gives, in its unit.")
      .def("slope_at", &PropertyEquation::slope_at, py::arg("input"),
           "Its derivatives.")
      .def("__repr__", [](const PropertyEquation& e) { return "<" + e.brief() + ">"; });
}

}  // namespace

void bind_property_equations(py::module_& m) {
  bind_input(m);
  bind_equation(m);
  py::class_<PropertyEquations>(m, "PropertyEquations", "The equations to choose from.")
      .def(py::init<>())
      .def_property_readonly("all", &PropertyEquations::all,
                             "The built-in ones, then your own.")
      .def(
          "keys",
          [](const PropertyEquations& e, const std::string& kind) {
            return e.keys(kind_of(kind));
          },
          py::arg("kind"), "Keys of one kind.")
      .def(
          "at",
          [](const PropertyEquations& e, const std::string& kind,
             const std::string& key) { return e.at(kind_of(kind), key); },
          py::arg("kind"), py::arg("key"), "By kind and key.")
      .def("with_equation", &with_equation, py::arg("kind"), py::arg("key"),
           py::arg("value"), py::kw_only(), py::arg("formula") = "",
           py::arg("source") = "", py::arg("ranges") = Ranges{},
           py::arg("elements") = std::vector<std::string>{}, py::arg("error") = 0.0,
           py::arg("note") = "", "These and one more; `value` gets a PropertyInput.")
      .def("__len__", [](const PropertyEquations& e) { return e.all().size(); })
      .def("__repr__",
           [](const PropertyEquations& e) {
             const std::size_t own = e.all().size() - PropertyEquations::built_in();
             return "<PropertyEquations: " +
                    std::to_string(PropertyEquations::built_in()) + " built in, " +
                    std::to_string(own) + " of your own>";
           })
      .def(tagged_pickle(&get_state, &set_state));
}

}  // namespace gibbsteel::python
