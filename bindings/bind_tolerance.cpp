/// ToleranceBand and the call that makes it.

#include "gibbsteel/tolerance.hpp"

#include "band_members.hpp"
#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

using Limits = std::vector<std::tuple<std::string, double, double>>;

HeatTolerances tolerances_of(const Limits& ranges, const NamedValues& deviations,
                             double furnace_error, double segregation_percent) {
  HeatTolerances tolerances;
  for (const auto& [symbol, low, high] : ranges)
    tolerances.ranges.push_back({symbol, low, high});
  tolerances.standard_deviations = deviations;
  tolerances.furnace_error = furnace_error;
  tolerances.segregation_percent = segregation_percent;
  return tolerances;
}

SegregatedCarbon carbon_of(const std::string& text) {
  for (const SegregatedCarbon carbon :
       {SegregatedCarbon::equal_activity, SegregatedCarbon::scaled,
        SegregatedCarbon::unchanged})
    if (text == to_string(carbon)) return carbon;
  throw InputError({{"gibbsteel.input.276", "segregated_carbon", "is '" + text + "'",
                     "give 'equal activity', 'scaled' or 'unchanged'"}});
}

ToleranceOptions options_of(const SoakOptions& soak, std::size_t samples,
                            std::uint64_t seed, const std::vector<double>& percentiles,
                            bool corners, const std::string& segregated_carbon,
                            std::size_t threads) {
  ToleranceOptions options;
  options.soak = soak;
  options.samples = samples;
  options.seed = seed;
  options.percentiles = percentiles;
  options.corners = corners;
  options.segregated_carbon = carbon_of(segregated_carbon);
  options.threads = threads;
  return options;
}

ToleranceBand run(const Steel& steel, double kelvin, const HeatTolerances& tolerances,
                  const std::vector<Quantity>& quantities, ToleranceOptions options,
                  const py::object& callback) {
  options.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return tolerance_band(steel, Temperature::kelvin(kelvin), tolerances, quantities,
                        options);
}

py::tuple get_state(const ToleranceBand& b) {
  return py::make_tuple(b.nominal, b.inputs, static_cast<int>(b.segregated_carbon),
                        b.percentiles, b.quantities, b.phases, b.samples_asked,
                        b.samples, b.corners, b.cancelled, b.unusable,
                        b.unusable_corners, b.sample_inputs, b.sample_values,
                        b.warnings, static_cast<int>(b.temperature_unit));
}

ToleranceBand set_state(const py::tuple& t) {
  ToleranceBand b;
  b.nominal = t[0].cast<State>();
  b.inputs = t[1].cast<std::vector<TolerancedInput>>();
  b.segregated_carbon = enumerator(t[2], SegregatedCarbon::unchanged);
  b.percentiles = t[3].cast<std::vector<double>>();
  b.quantities = t[4].cast<std::vector<QuantityBand>>();
  b.phases = t[5].cast<std::vector<PhaseShare>>();
  b.samples_asked = t[6].cast<std::size_t>();
  b.samples = t[7].cast<std::size_t>();
  b.corners = t[8].cast<std::size_t>();
  b.cancelled = t[9].cast<bool>();
  b.unusable = t[10].cast<std::vector<UnusableSample>>();
  b.unusable_corners = t[11].cast<std::vector<UnusableSample>>();
  b.sample_inputs = t[12].cast<std::vector<double>>();
  b.sample_values = t[13].cast<std::vector<double>>();
  b.warnings = t[14].cast<std::vector<Warning>>();
  b.temperature_unit = unit_at(t, 15);
  return b;
}

}  // namespace

void bind_tolerance(py::module_& m) {
  py::class_<HeatTolerances>(m, "HeatTolerances")
      .def(py::init(&tolerances_of), py::kw_only(), py::arg("ranges"),
           py::arg("standard_deviations"), py::arg("furnace_error"),
           py::arg("segregation_percent"));
  py::class_<ToleranceOptions>(m, "ToleranceOptions")
      .def(py::init(&options_of), py::arg("soak"), py::arg("samples"), py::arg("seed"),
           py::arg("percentiles"), py::arg("corners"), py::arg("segregated_carbon"),
           py::arg("threads"));
  py::class_<ToleranceBand> band(
      m, "ToleranceBand", "What scatter of heat, furnace and place does to a state.");
  bind_band_members(band);
  band.def_property_readonly(
          "segregated_carbon",
          [](const ToleranceBand& b) { return to_string(b.segregated_carbon); },
          "How carbon follows the segregation.")
      .def_readonly("corners", &ToleranceBand::corners, "Distinct corners soaked.")
      .def_readonly("unusable_corners", &ToleranceBand::unusable_corners,
                    "Corners that gave no usable result.")
      .def("__repr__", [](const ToleranceBand& b) { return "<" + b.brief() + ">"; })
      .def("__str__", &ToleranceBand::full)
      .def(tagged_pickle(&get_state, &set_state, 2));
  m.def("tolerance_band", &run, py::arg("steel"), py::arg("kelvin"),
        py::arg("tolerances"), py::arg("quantities"), py::arg("options"),
        py::arg("progress"));
  m.def("default_quantities", &default_quantities, py::arg("state"));
}

}  // namespace gibbsteel::python
