/// The run of a screen.

#include <pybind11/numpy.h>

#include <stdexcept>

#include "common.hpp"
#include "gibbsteel/screen.hpp"
#include "progress.hpp"

namespace gibbsteel::python {
namespace {

using Numbers = py::array_t<double, py::array::c_style>;

/// "ValueError: no such row"; what() goes on with the files that it came through.
std::string without_traceback(const py::error_already_set& error) {
  return py::str(error.type().attr("__name__")).cast<std::string>() + ": " +
         py::str(error.value()).cast<std::string>();
}

/// An interrupt from the keyboard that reaches a Python function of a quantity stops
/// the screen; what else it raises flags the row.
Quantity interruptible(const Quantity& quantity) {
  const auto value = [quantity](const State& state) {
    try {
      return quantity.value(state);
    } catch (py::error_already_set& error) {
      const py::gil_scoped_acquire hold;
      if (error.matches(PyExc_KeyboardInterrupt)) throw StopScreen{};
      throw std::runtime_error(without_traceback(error));
    }
  };
  const auto warnings = [quantity](const State& s) { return quantity.warnings(s); };
  const Quantity made =
      Quantity{{}, quantity.scope(), quantity.name(), quantity.unit(), value, {}}
          .with_warnings(warnings);
  return quantity.by_family() ? made.with_families() : made;
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

/// An input and the array that its compositions are in.
struct HeldInput {
  Numbers compositions;
  ScreenInput input;
};

HeldInput input_of(std::vector<std::string> elements, const Numbers& compositions,
                   const Numbers& kelvin, bool one_per_composition) {
  HeldInput held{compositions, {}};
  held.input.elements = std::move(elements);
  held.input.compositions = {compositions.data(),
                             static_cast<std::size_t>(compositions.size())};
  held.input.temperatures.reserve(static_cast<std::size_t>(kelvin.size()));
  for (py::ssize_t i = 0; i < kelvin.size(); ++i)
    held.input.temperatures.push_back(Temperature::kelvin(kelvin.data()[i]));
  held.input.one_per_composition = one_per_composition;
  return held;
}

/// The rows, and whether the caller stopped it: perhaps when all of them were done.
std::pair<ScreenTable, bool> run(const HeldInput& held, const ScreenOptions& settings,
                                 std::size_t first_row, std::size_t last_row,
                                 std::size_t threads, const py::object& callback) {
  ScreenOptions options = settings;
  options.first_row = first_row;
  options.last_row = last_row;
  options.threads = threads;
  bool stopped = false;
  const auto wants_more = progress_of(callback);
  const auto progress = [&](std::size_t done) {
    stopped = !wants_more(done);
    return !stopped;
  };
  const py::gil_scoped_release release;
  ScreenTable table = screen(held.input, options, progress);
  return {std::move(table), stopped};
}

}  // namespace

void bind_screen(py::module_& m) {
  py::class_<ScreenOptions>(m, "ScreenOptions")
      .def(py::init(&options_of), py::arg("soak"), py::arg("parameters"),
           py::arg("bind_tramp_elements"), py::arg("quantities"));
  py::class_<HeldInput>(m, "ScreenInput")
      .def(py::init(&input_of), py::arg("elements"), py::arg("compositions"),
           py::arg("kelvin"), py::arg("one_per_composition"));
  m.def("run_screen", &run, py::arg("input"), py::arg("options"), py::arg("first_row"),
        py::arg("last_row"), py::arg("threads"), py::arg("progress"),
        "Rows of a screen, and whether the caller stopped it.");
  m.attr("SCREEN_BLOCK_ROWS") = kScreenBlockRows;
}

}  // namespace gibbsteel::python
