/// Sweep: many soaks of one steel.

#include <pybind11/numpy.h>

#include <type_traits>

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/sweep.hpp"
#include "pickling.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

const State& item(const Sweep& sweep, py::ssize_t i) {
  const auto size = static_cast<py::ssize_t>(sweep.states.size());
  const py::ssize_t k = i < 0 ? i + size : i;
  if (k < 0 || k >= size) throw py::index_error("sweep index out of range");
  return sweep.states[static_cast<std::size_t>(k)];
}

/// The sweep of a part of the temperatures, in any order.
Sweep part(const Sweep& sweep, const py::slice& which) {
  std::size_t start = 0, stop = 0, step = 0, count = 0;
  if (!which.compute(sweep.states.size(), &start, &stop, &step, &count))
    throw py::error_already_set();
  Sweep some{sweep.steel, {}, sweep.cancelled};
  // A negative step wraps, and comes back when it is added.
  for (std::size_t i = 0; i < count; ++i, start += step)
    some.states.push_back(sweep.states[start]);
  return some;
}

py::object item_or_part(const Sweep& sweep, const py::object& which) {
  if (py::isinstance<py::slice>(which)) return py::cast(part(sweep, which));
  const py::ssize_t i = PyNumber_AsSsize_t(which.ptr(), PyExc_IndexError);
  if (i == -1 && PyErr_Occurred()) throw py::error_already_set();
  return py::cast(item(sweep, i));
}

/// Address of a number of a state by its name; nullptr for another name.
const double* member_of(const State& state, const std::string& name) {
  static_assert(std::is_standard_layout_v<Temperature> &&
                sizeof(Temperature) == sizeof(double));
  if (name == "kelvin") return reinterpret_cast<const double*>(&state.temperature);
  if (name == "carbide_volume_percent") return &state.carbide_volume_percent;
  if (name == "carbide_mass_percent") return &state.carbide_mass_percent;
  if (name == "carbon_activity") return &state.carbon_activity;
  if (name == "gibbs_energy") return &state.gibbs_energy;
  return name == "density" ? &state.density : nullptr;
}

/// The same number of every state without a copy: the states stand in one block, at one
/// distance from each other, and the array keeps the sweep alive. None for a name that
/// has no such view.
py::object view(const py::object& self, const std::string& member) {
  const auto& states = self.cast<const Sweep&>().states;
  static const State blank;
  const double* first = member_of(states.empty() ? blank : states.front(), member);
  if (!first) return py::none();
  const auto count = static_cast<py::ssize_t>(states.size());
  const auto stride = static_cast<py::ssize_t>(sizeof(State));
  py::array_t<double> array({count}, {stride}, first, self);
  array.attr("flags").attr("writeable") = false;
  return array;
}

}  // namespace

void bind_sweep(py::module_& m) {
  py::class_<Sweep>(m, "Sweep", "Many soaks of one steel, in the order asked for.")
      .def_readonly("steel", &Sweep::steel, "Name of the steel; may be empty.")
      .def_readonly("states", &Sweep::states, "list of State, one per temperature.")
      .def_readonly("cancelled", &Sweep::cancelled,
                    "True: stopped early; `states` is the part that is done.")
      .def_property_readonly("carbide_kinds", &Sweep::carbide_kinds,
                             "Kinds of carbide that occur anywhere in the sweep.")
      .def_property_readonly("warnings", &Sweep::warnings,
                             "The distinct warnings of all states.")
      .def_property_readonly("failures", &Sweep::failures,
                             "Number of states that are not usable.")
      .def("__len__", [](const Sweep& s) { return s.states.size(); })
      .def("__getitem__", &item_or_part)
      .def(
          "__iter__",
          [](const Sweep& s) {
            return py::make_iterator(s.states.begin(), s.states.end());
          },
          py::keep_alive<0, 1>())
      .def("_view", &view, py::arg("member"))
      .def("__repr__", [](const Sweep& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &Sweep::full)
      .def(tagged_pickle(
          [](const Sweep& s) {
            return py::make_tuple(s.steel, s.states, s.cancelled,
                                  static_cast<int>(s.temperature_unit));
          },
          [](const py::tuple& t) {
            return Sweep{t[0].cast<std::string>(), t[1].cast<std::vector<State>>(),
                         t[2].cast<bool>(), unit_at(t, 3)};
          },
          2));
}

}  // namespace gibbsteel::python
