/// Steel: the compiled half of gibbsteel.Steel, and SoakOptions.

#include "common.hpp"
#include "gibbsteel/steel.hpp"
#include "progress.hpp"

namespace gibbsteel::python {
namespace {

using Holder = std::shared_ptr<ParameterSet>;

SoakOptions soak_options(bool graphite, std::optional<std::vector<std::string>> phases,
                         std::vector<std::string> suppressed, bool at_soak_temperature,
                         const SolveOptions& solve, int prove_every,
                         const std::string& unit) {
  SoakOptions options;
  options.graphite = graphite;
  options.phases = std::move(phases);
  options.suppressed = std::move(suppressed);
  options.basis = at_soak_temperature ? VolumeBasis::soak : VolumeBasis::room;
  options.solve = solve;
  options.prove_every = prove_every;
  options.temperature_unit = temperature_unit(unit);
  return options;
}

Sweep run_sweep(const Steel& steel, const std::vector<double>& kelvin,
                const SoakOptions& options, const py::object& callback) {
  std::vector<Temperature> temperatures;
  for (const double value : kelvin) temperatures.push_back(Temperature::kelvin(value));
  const auto progress = progress_of(callback);
  const py::gil_scoped_release release;
  return steel.sweep(temperatures, options, progress);
}

Steel with_parameters(const Steel& steel, const Holder& parameters) {
  return steel.with_parameters(parameters);
}

}  // namespace

void bind_steel(py::module_& m) {
  py::class_<SoakOptions>(m, "SoakOptions")
      .def(py::init(&soak_options), py::kw_only(), py::arg("graphite"),
           py::arg("phases"), py::arg("suppressed"), py::arg("at_soak_temperature"),
           py::arg("solve"), py::arg("prove_every"), py::arg("temperature_unit"));

  py::class_<Steel>(m, "CompiledSteel")
      .def(py::init([](const NamedValues& weight_percent, const std::string& name,
                       const Holder& parameters, bool bind_tramp_elements) {
             return Steel(weight_percent, {name, parameters, bind_tramp_elements});
           }),
           py::arg("weight_percent"), py::arg("name"), py::arg("parameters"),
           py::arg("bind_tramp_elements"))
      .def_property_readonly("name", &Steel::name, "Name of the steel; may be empty.")
      .def_property_readonly("binds_tramp_elements", &Steel::binds_tramp_elements)
      .def_property_readonly(
          "analysis", &Steel::analysis,
          "The mill certificate, sorted into modelled and not modelled.")
      .def_property_readonly(
          "parameters",
          [](const Steel& s) {
            return std::const_pointer_cast<ParameterSet>(s.parameters());
          })
      .def("changed", &Steel::changed, py::arg("weight_percent"), py::arg("name"))
      .def("with_parameters", &with_parameters, py::arg("parameters").none(false))
      .def(
          "soak",
          [](const Steel& s, double kelvin, const SoakOptions& options) {
            return s.soak(Temperature::kelvin(kelvin), options);
          },
          py::arg("kelvin"), py::arg("options"),
          py::call_guard<py::gil_scoped_release>())
      .def("sweep", &run_sweep, py::arg("kelvin"), py::arg("options"),
           py::arg("progress"))
      .def("brief", &Steel::brief);
}

}  // namespace gibbsteel::python
