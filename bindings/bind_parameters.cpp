/// ParameterSet and the functions that read and write parameter files.

#include "common.hpp"
#include "gibbsteel/curve_value.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/phase_model.hpp"
#include "gibbsteel/sensitivities.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

using Holder =
    std::shared_ptr<ParameterSet>;  // pybind11 cannot hold a pointer to const

Holder hold(const SharedParameters& set) {
  return std::const_pointer_cast<ParameterSet>(set);
}

template <typename Items, typename Name>
py::list names(const Items& items, const Name& name) {
  py::list result;
  for (const auto& item : items) result.append(name(item));
  return result;
}

py::dict validity(const ParameterSet& set) {
  py::dict ranges;
  for (const auto& range : set.validity)
    ranges[py::str(range.symbol)] = py::make_tuple(range.low, range.high);
  return ranges;
}

py::dict sources(const ParameterSet& set) {
  py::dict result;
  for (const auto& source : set.sources) result[py::str(source.key)] = source.citation;
  return result;
}

std::string choice_of_phases(const ParameterSet& set) {
  std::string text;
  for (const auto& phase : set.phases)
    text += (text.empty() ? "choose from: " : ", ") + phase.name;
  return text;
}

PhaseModel phase_model(const ParameterSet& set, const std::string& name,
                       const std::vector<std::string>& elements) {
  std::vector<Problem> problems;
  const Phase* phase = set.find_phase(name);
  if (!phase)
    problems.push_back({"gibbsteel.input.205", "name",
                        "there is no phase model '" + name + "'",
                        choice_of_phases(set)});
  for (const auto& symbol : elements)
    if (!set.find_element(symbol))
      problems.push_back({"gibbsteel.input.206", "elements",
                          "the parameter set does not model '" + symbol + "'",
                          "leave it out or load a file that models it"});
  if (!problems.empty()) throw InputError(std::move(problems));
  return {set, *phase, elements};
}

using SetClass = py::class_<ParameterSet, Holder>;

void bind_contents(SetClass& set) {
  set.def_property_readonly("title", &ParameterSet::title, "Title and edition.")
      .def_property_readonly(
          "files",
          [](const ParameterSet& s) {
            return names(s.files, [](const auto& f) { return f.name; });
          },
          "Names of the files, lowest layer first.")
      .def_property_readonly(
          "elements",
          [](const ParameterSet& s) {
            return names(s.elements, [](const auto& e) { return e.symbol; });
          },
          "Symbols of the elements that are modelled.")
      .def_property_readonly(
          "phases",
          [](const ParameterSet& s) {
            return names(s.phases, [](const auto& p) { return p.name; });
          },
          "Names of the phase models.")
      .def_property_readonly(
          "curves",
          [](const ParameterSet& s) {
            return names(s.curves, [](const auto& c) { return c.name; });
          },
          "Names of the curves.")
      .def_property_readonly("sources", &sources, "dict: key -> citation.")
      .def_property_readonly("weight_percent_validity", &validity,
                             "dict: element -> (low, high) [weight percent].")
      .def_property_readonly(
          "kelvin_validity",
          [](const ParameterSet& s) {
            return py::make_tuple(s.lowest_temperature, s.highest_temperature);
          },
          "(low, high) [K].")
      .def_readonly("reference_state", &ParameterSet::reference_state,
                    "What the chemical potentials refer to.")
      .def_property_readonly("content_hash", &content_hash,
                             "16 hexadecimal digits that identify the content.");
}

void bind_functions(py::module_& m) {
  m.def(
      "load_parameters",
      [](const std::string& file, const Holder& below) {
        return hold(load_parameters(file, below));
      },
      py::arg("file"), py::arg("on_top_of") = nullptr);
  m.def(
      "parse_parameters",
      [](const std::string& text, const std::string& name, const Holder& below) {
        return hold(parse_parameters(text, name, below));
      },
      py::arg("text"), py::arg("file_name"), py::arg("on_top_of") = nullptr);
  m.def("write_parameters", &write_parameters, py::arg("parameters"));
  m.def("sources_page", &sources_page, py::arg("parameters"));
  m.def("default_parameters", [] { return hold(default_parameters()); });
}

}  // namespace

void bind_parameters(py::module_& m) {
  SetClass set(m, "ParameterSet",
               "Everything known about elements and phases, as read "
               "from parameter files. Immutable.");
  bind_contents(set);
  set.def("phase_model", &phase_model, py::arg("name"), py::arg("elements"),
          "One phase compiled for the given elements: energies to the last number.")
      .def(
          "curve_value",
          [](const ParameterSet& s, const std::string& name, double kelvin) {
            return curve_value(s, name, Temperature::kelvin(kelvin));
          },
          py::arg("name"), py::arg("kelvin"), "Value of a named curve [J/mol].")
      .def_property_readonly(
          "parameter_inputs", &parameter_inputs,
          "list of Input: the numbers that sensitivities can be taken to.")
      .def("__repr__", [](const ParameterSet& s) { return "<" + s.title() + ">"; })
      .def(
          "__eq__",
          [](const ParameterSet& a, const ParameterSet& b) {
            return write_parameters(a) == write_parameters(b);
          },
          py::is_operator())
      .def("__reduce__", [](const ParameterSet& s) {
        const auto restore =
            py::module_::import("gibbsteel.parameters").attr("restore");
        const std::string file = s.files.empty() ? "" : s.files.back().name;
        return py::make_tuple(restore, py::make_tuple(pickle_mark("ParameterSet", 1),
                                                      write_parameters(s), file));
      });
  bind_functions(m);
}

}  // namespace gibbsteel::python
