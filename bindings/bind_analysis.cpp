/// MillAnalysis and BoundCompound.

#include "common.hpp"
#include "gibbsteel/mill_analysis.hpp"
#include "named.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

void bind_compound(py::module_& m) {
  py::class_<BoundCompound>(m, "BoundCompound",
                            "A compound that takes elements out of the calculation.")
      .def_readonly("name", &BoundCompound::name, "For instance 'MnS'.")
      .def_readonly("weight_percent", &BoundCompound::weight_percent,
                    "Weight percent of the steel.")
      .def("__repr__",
           [](const BoundCompound& b) {
             return "<BoundCompound " + b.name + " " +
                    py::str("{:.4g}").format(b.weight_percent).cast<std::string>() +
                    " wt%>";
           })
      .def(
          "__eq__",
          [](const BoundCompound& a, const BoundCompound& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const BoundCompound& b) {
            return py::make_tuple(b.name, b.weight_percent);
          },
          [](const py::tuple& t) {
            return BoundCompound{t[0].cast<std::string>(), t[1].cast<double>()};
          }));
}

}  // namespace

void bind_analysis(py::module_& m) {
  bind_compound(m);
  py::class_<MillAnalysis> analysis(m, "MillAnalysis",
                                    "The mill certificate, sorted into modelled and "
                                    "not modelled. All numbers are weight percent.");
  def_by_element(analysis, "given", &MillAnalysis::given, "As entered.");
  def_by_element(analysis, "modelled", &MillAnalysis::modelled,
                 "What enters the calculation, Fe (balance) first.");
  def_by_element(analysis, "not_modelled", &MillAnalysis::not_modelled,
                 "Known elements that the parameter file does not model.");
  analysis
      .def_readonly("bound", &MillAnalysis::bound,
                    "Compounds of tramp elements; empty unless asked for.")
      .def("brief", &MillAnalysis::brief,
           "As given, weight percent: '0.55C 4.5Cr, balance Fe'.")
      .def("__repr__",
           [](const MillAnalysis& a) {
             return "<MillAnalysis: " + std::to_string(a.modelled.size()) +
                    " elements modelled, " + std::to_string(a.not_modelled.size()) +
                    " not modelled>";
           })
      .def(
          "__eq__", [](const MillAnalysis& a, const MillAnalysis& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const MillAnalysis& a) {
            return py::make_tuple(a.given, a.modelled, a.not_modelled, a.bound);
          },
          [](const py::tuple& t) {
            return MillAnalysis{t[0].cast<NamedValues>(), t[1].cast<NamedValues>(),
                                t[2].cast<NamedValues>(),
                                t[3].cast<std::vector<BoundCompound>>()};
          }));
}

}  // namespace gibbsteel::python
