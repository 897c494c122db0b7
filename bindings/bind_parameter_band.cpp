/// ParameterBand and the call that makes it.

#include "gibbsteel/parameter_band.hpp"

#include "band_members.hpp"
#include "common.hpp"
#include "pickling.hpp"
#include "progress.hpp"

namespace gibbsteel::python {
namespace {

ParameterBand run(const Steel& steel, double kelvin,
                  const std::vector<Quantity>& quantities, const SoakOptions& soak,
                  std::size_t samples, std::uint64_t seed,
                  const std::vector<double>& percentiles, std::size_t threads,
                  const py::object& callback) {
  ParameterBandOptions options;
  options.soak = soak;
  options.samples = samples;
  options.seed = seed;
  options.percentiles = percentiles;
  options.threads = threads;
  options.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return parameter_band(steel, Temperature::kelvin(kelvin), quantities, options);
}

py::tuple get_state(const ParameterBand& b) {
  return py::make_tuple(b.nominal, b.inputs, b.percentiles, b.quantities, b.phases,
                        b.samples_asked, b.samples, b.cancelled, b.unusable,
                        b.sample_inputs, b.sample_values, b.warnings);
}

ParameterBand set_state(const py::tuple& t) {
  ParameterBand b;
  b.nominal = t[0].cast<State>();
  b.inputs = t[1].cast<std::vector<TolerancedInput>>();
  b.percentiles = t[2].cast<std::vector<double>>();
  b.quantities = t[3].cast<std::vector<QuantityBand>>();
  b.phases = t[4].cast<std::vector<PhaseShare>>();
  b.samples_asked = t[5].cast<std::size_t>();
  b.samples = t[6].cast<std::size_t>();
  b.cancelled = t[7].cast<bool>();
  b.unusable = t[8].cast<std::vector<UnusableSample>>();
  b.sample_inputs = t[9].cast<std::vector<double>>();
  b.sample_values = t[10].cast<std::vector<double>>();
  b.warnings = t[11].cast<std::vector<Warning>>();
  return b;
}

}  // namespace

void bind_parameter_band(py::module_& m) {
  py::class_<ParameterBand> band(
      m, "ParameterBand",
      "What the stated uncertainty of the parameter file does to a state.");
  bind_band_members(band);
  band.def("__repr__", [](const ParameterBand& b) { return "<" + b.brief() + ">"; })
      .def("__str__", &ParameterBand::full)
      .def(tagged_pickle(&get_state, &set_state));
  m.def("parameter_band", &run, py::arg("steel"), py::arg("kelvin"),
        py::arg("quantities"), py::arg("soak"), py::arg("samples"), py::arg("seed"),
        py::arg("percentiles"), py::arg("threads"), py::arg("progress"));
}

}  // namespace gibbsteel::python
