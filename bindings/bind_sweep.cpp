/// Sweep: many soaks of one steel.

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/sweep.hpp"

namespace gibbsteel::python {
namespace {

const State& item(const Sweep& sweep, py::ssize_t i) {
  const auto size = static_cast<py::ssize_t>(sweep.states.size());
  const py::ssize_t k = i < 0 ? i + size : i;
  if (k < 0 || k >= size) throw py::index_error("sweep index out of range");
  return sweep.states[static_cast<std::size_t>(k)];
}

}  // namespace

void bind_sweep(py::module_& m) {
  py::class_<Sweep>(m, "Sweep", "Many soaks of one steel, in the order asked for.")
      .def_readonly("steel", &Sweep::steel)
      .def_readonly("states", &Sweep::states)
      .def_readonly("cancelled", &Sweep::cancelled,
                    "True: stopped early; `states` is the part that is done.")
      .def_property_readonly("carbide_kinds", &Sweep::carbide_kinds,
                             "Kinds of carbide that occur anywhere in the sweep.")
      .def_property_readonly("warnings", &Sweep::warnings,
                             "The distinct warnings of all states.")
      .def_property_readonly("failures", &Sweep::failures,
                             "Number of states that are not usable.")
      .def("__len__", [](const Sweep& s) { return s.states.size(); })
      .def("__getitem__", &item)
      .def(
          "__iter__",
          [](const Sweep& s) {
            return py::make_iterator(s.states.begin(), s.states.end());
          },
          py::keep_alive<0, 1>())
      .def(
          "to_frame",
          [](const py::object& self, bool wide) {
            return py::module_::import("gibbsteel.frames")
                .attr("sweep_to_frame")(self, py::arg("wide") = wide);
          },
          py::kw_only(), py::arg("wide") = false,
          "Table of the sweep (pandas); see gibbsteel.frames.sweep_to_frame.")
      .def("__repr__", [](const Sweep& s) { return "<" + s.brief() + ">"; })
      .def("__str__", &Sweep::full)
      .def(py::pickle(
          [](const Sweep& s) { return py::make_tuple(s.steel, s.states, s.cancelled); },
          [](const py::tuple& t) {
            return Sweep{t[0].cast<std::string>(), t[1].cast<std::vector<State>>(),
                         t[2].cast<bool>()};
          }));
}

}  // namespace gibbsteel::python
