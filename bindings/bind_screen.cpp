/// The run of a screen.

#include <pybind11/numpy.h>

#include "common.hpp"
#include "gibbsteel/screen.hpp"
#include "progress.hpp"

namespace gibbsteel::python {
namespace {

using Numbers = py::array_t<double, py::array::c_style>;

/// An interrupt from the keyboard that reaches a Python function of a quantity stops
/// the screen; what else it raises flags the row.
Quantity interruptible(const Quantity& quantity) {
  const auto value = [quantity](const State& state) {
    try {
      return quantity.value(state);
    } catch (py::error_already_set& error) {
      const py::gil_scoped_acquire hold;
      if (!error.matches(PyExc_KeyboardInterrupt)) throw;
      throw StopScreen{};
    }
  };
  return {quantity.name(), quantity.unit(), value};
}

ScreenOptions options_of(const SoakOptions& soak,
                         std::shared_ptr<ParameterSet> parameters,
                         bool bind_tramp_elements,
                         const std::vector<Quantity>& quantities) {
  ScreenOptions options;
  options.soak = soak;
  options.parameters = std::move(parameters);
  options.bind_tramp_elements = bind_tramp_elements;
  for (const Quantity& quantity : quantities)
    options.quantities.push_back(interruptible(quantity));
  return options;
}

ScreenInput input_of(std::vector<std::string> elements, const Numbers& compositions,
                     const Numbers& kelvin, bool one_per_composition) {
  ScreenInput input;
  input.elements = std::move(elements);
  input.compositions = {compositions.data(),
                        static_cast<std::size_t>(compositions.size())};
  input.temperatures.reserve(static_cast<std::size_t>(kelvin.size()));
  for (py::ssize_t i = 0; i < kelvin.size(); ++i)
    input.temperatures.push_back(Temperature::kelvin(kelvin.data()[i]));
  input.one_per_composition = one_per_composition;
  return input;
}

ScreenTable run(std::vector<std::string> elements, const Numbers& compositions,
                const Numbers& kelvin, bool one_per_composition,
                const ScreenOptions& settings, std::size_t first_row,
                std::size_t last_row, std::size_t threads, const py::object& callback) {
  const ScreenInput input =
      input_of(std::move(elements), compositions, kelvin, one_per_composition);
  ScreenOptions options = settings;
  options.first_row = first_row;
  options.last_row = last_row;
  options.threads = threads;
  const auto progress = progress_of(callback);
  const py::gil_scoped_release release;
  return screen(input, options, progress);
}

}  // namespace

void bind_screen(py::module_& m) {
  py::class_<ScreenOptions>(m, "ScreenOptions")
      .def(py::init(&options_of), py::arg("soak"), py::arg("parameters"),
           py::arg("bind_tramp_elements"), py::arg("quantities"));
  m.def("run_screen", &run, py::arg("elements"), py::arg("compositions"),
        py::arg("kelvin"), py::arg("one_per_composition"), py::arg("options"),
        py::arg("first_row"), py::arg("last_row"), py::arg("threads"),
        py::arg("progress"), "Rows of a screen.");
  m.attr("SCREEN_BLOCK_ROWS") = kScreenBlockRows;
}

}  // namespace gibbsteel::python
