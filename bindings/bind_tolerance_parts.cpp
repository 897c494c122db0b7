/// The parts of a ToleranceBand: what scatters, and what it does to one quantity.

#include <pybind11/operators.h>
#include "common.hpp"

#include "gibbsteel/band.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

py::tuple input_state(const TolerancedInput& p) {
  return py::make_tuple(p.name, p.unit, p.nominal, p.low, p.high, p.given_deviation,
                        p.mean, p.standard_deviation, p.text);
}

TolerancedInput input_from(const py::tuple& t, int format) {
  return {t[0].cast<std::string>(),
          t[1].cast<std::string>(),
          t[2].cast<double>(),
          t[3].cast<double>(),
          t[4].cast<double>(),
          t[5].cast<double>(),
          t[6].cast<double>(),
          t[7].cast<double>(),
          format > 1 ? t[8].cast<std::string>() : ""};
}

void bind_input(py::module_& m) {
  using Part = TolerancedInput;
  py::class_<Part>(m, "TolerancedInput",
                   "One thing that scatters: an element, the furnace or segregation.")
      .def_readonly("name", &Part::name,
                    "An element, \"temperature\", \"segregation\" or a place in the "
                    "parameter file.")
      .def_readonly("unit", &Part::unit, "Unit of the numbers.")
      .def_readonly("nominal", &Part::nominal, "Of the steel, or as asked for.")
      .def_readonly("low", &Part::low, "End of the box: limit or two deviations.")
      .def_readonly("high", &Part::high, "End of the box: limit or two deviations.")
      .def_readonly("given_deviation", &Part::given_deviation,
                    "Of the normal distribution given; 0 for a range.")
      .def_readonly("mean", &Part::mean, "Of the distribution.")
      .def_readonly("standard_deviation", &Part::standard_deviation,
                    "Of the distribution.")
      .def_readonly("text", &Part::text,
                    "What a number of the parameter file is, in words; else empty.")
      .def("__repr__",
           [](const Part& p) {
             return "<TolerancedInput " + p.name + " [" + p.unit + "]>";
           })
      .def(py::self == py::self)
      .def(tagged_pickle(&input_state, &input_from, 2));
}

void bind_contribution(py::module_& m) {
  using Part = Contribution;
  py::class_<Part>(m, "Contribution", "How much one input matters for one quantity.")
      .def_readonly("input", &Part::input, "Name of the input.")
      .def_readonly("slope", &Part::slope, "Derivative; NaN when unknown.")
      .def_readonly("scatter", &Part::scatter, "Scatter that the input causes alone.")
      .def_readonly("share", &Part::share, "Of the first-order variance, 0 to 1.")
      .def_readonly("sampled_share", &Part::sampled_share,
                    "Squared correlation over the samples, 0 to 1.")
      .def("__repr__",
           [](const Part& p) { return "<Contribution of " + p.input + ">"; })
      .def(tagged_pickle(
          [](const Part& p) {
            return py::make_tuple(p.input, p.slope, p.scatter, p.share,
                                  p.sampled_share);
          },
          [](const py::tuple& t) {
            return Part{t[0].cast<std::string>(), t[1].cast<double>(),
                        t[2].cast<double>(), t[3].cast<double>(), t[4].cast<double>()};
          }));
}

void bind_first_order(py::module_& m) {
  using Part = FirstOrderBand;
  py::class_<Part>(m, "FirstOrderBand", "From the derivatives. NaN where unknown.")
      .def_readonly("mean", &Part::mean, "Of the quantity, in its unit.")
      .def_readonly("standard_deviation", &Part::standard_deviation,
                    "Of the quantity, in its unit.")
      .def_readonly("lowest", &Part::lowest, "Over the box, if all were linear.")
      .def_readonly("highest", &Part::highest, "Over the box, if all were linear.")
      .def_readonly("one_sided", &Part::one_sided, "True: a phase change is close by.")
      .def_readonly("remark", &Part::remark, "Why one-sided or unknown; else empty.")
      .def("__repr__", [](const Part&) { return "<FirstOrderBand>"; })
      .def(tagged_pickle(
          [](const Part& p) {
            return py::make_tuple(p.mean, p.standard_deviation, p.lowest, p.highest,
                                  p.one_sided, p.remark);
          },
          [](const py::tuple& t) {
            return Part{t[0].cast<double>(), t[1].cast<double>(),
                        t[2].cast<double>(), t[3].cast<double>(),
                        t[4].cast<bool>(),   t[5].cast<std::string>()};
          }));
}

void bind_sampled(py::module_& m) {
  using Part = SampledBand;
  py::class_<Part>(m, "SampledBand", "From the samples. NaN without any.")
      .def_readonly("count", &Part::count, "Samples that have this number.")
      .def_readonly("mean", &Part::mean, "Of the quantity, in its unit.")
      .def_readonly("standard_deviation", &Part::standard_deviation,
                    "Of the quantity, in its unit.")
      .def_readonly("lowest", &Part::lowest, "Of the samples, not a bound.")
      .def_readonly("highest", &Part::highest, "Of the samples, not a bound.")
      .def_readonly("percentiles", &Part::percentiles, "As ToleranceBand.percentiles.")
      .def("__repr__",
           [](const Part& p) {
             return "<SampledBand of " + std::to_string(p.count) + " samples>";
           })
      .def(tagged_pickle(
          [](const Part& p) {
            return py::make_tuple(p.count, p.mean, p.standard_deviation, p.lowest,
                                  p.highest, p.percentiles);
          },
          [](const py::tuple& t) {
            return Part{t[0].cast<std::size_t>(), t[1].cast<double>(),
                        t[2].cast<double>(),      t[3].cast<double>(),
                        t[4].cast<double>(),      t[5].cast<std::vector<double>>()};
          }));
}

void bind_corner(py::module_& m) {
  using Part = WorstCorner;
  py::class_<Part>(m, "WorstCorner",
                   "Worst corner of the box that was found: a search, not a proof.")
      .def_readonly("value", &Part::value, "NaN when not searched.")
      .def_readonly("inputs", &Part::inputs, "As ToleranceBand.inputs.")
      .def(
          "__repr__",
          [](const Part& p) { return py::str("<WorstCorner {:.6g}>").format(p.value); })
      .def(tagged_pickle(
          [](const Part& p) { return py::make_tuple(p.value, p.inputs); },
          [](const py::tuple& t) {
            return Part{t[0].cast<double>(), t[1].cast<std::vector<double>>()};
          }));
}

void bind_quantity_band(py::module_& m) {
  using Part = QuantityBand;
  py::class_<Part>(m, "QuantityBand", "The band of one quantity.")
      .def_readonly("name", &Part::name, "For tables.")
      .def_readonly("unit", &Part::unit, "Unit; empty for a pure number.")
      .def_property_readonly("label", &Part::label, "Name with the unit.")
      .def_readonly("nominal", &Part::nominal, "Of the nominal state.")
      .def_readonly("first_order", &Part::first_order, "From the slopes.")
      .def_readonly("sampled", &Part::sampled, "From the samples.")
      .def_readonly("lowest_corner", &Part::lowest_corner,
                    "Corner of the tolerances with the lowest value.")
      .def_readonly("highest_corner", &Part::highest_corner,
                    "Corner of the tolerances with the highest value.")
      .def_readonly("contributions", &Part::contributions, "As ToleranceBand.inputs.")
      .def("__repr__",
           [](const Part& p) { return "<QuantityBand of " + p.label() + ">"; })
      .def(tagged_pickle(
          [](const Part& p) {
            return py::make_tuple(p.name, p.unit, p.nominal, p.first_order, p.sampled,
                                  p.lowest_corner, p.highest_corner, p.contributions);
          },
          [](const py::tuple& t) {
            return Part{
                t[0].cast<std::string>(), t[1].cast<std::string>(),
                t[2].cast<double>(),      t[3].cast<FirstOrderBand>(),
                t[4].cast<SampledBand>(), t[5].cast<WorstCorner>(),
                t[6].cast<WorstCorner>(), t[7].cast<std::vector<Contribution>>()};
          }));
}

void bind_phase_share(py::module_& m) {
  using Part = PhaseShare;
  py::class_<Part>(m, "PhaseShare", "How often a kind of phase is there.")
      .def_readonly("kind", &Part::kind, "Kind of phase.")
      .def_readonly("nominal", &Part::nominal, "Present in the nominal state.")
      .def_readonly("share", &Part::share, "Of the usable samples, 0 to 1.")
      .def("__repr__",
           [](const Part& p) {
             return py::str("<PhaseShare {} {:.3f}>").format(p.kind, p.share);
           })
      .def(py::self == py::self)
      .def(tagged_pickle(
          [](const Part& p) { return py::make_tuple(p.kind, p.nominal, p.share); },
          [](const py::tuple& t) {
            return Part{t[0].cast<std::string>(), t[1].cast<bool>(),
                        t[2].cast<double>()};
          }));
}

void bind_unusable(py::module_& m) {
  using Part = UnusableSample;
  py::class_<Part>(m, "UnusableSample", "A sample or corner that gave no result.")
      .def_readonly("inputs", &Part::inputs, "As ToleranceBand.inputs.")
      .def_readonly("reason", &Part::reason, "One sentence.")
      .def("__repr__",
           [](const Part& p) { return "<UnusableSample: " + p.reason + ">"; })
      .def(py::self == py::self)
      .def(tagged_pickle(
          [](const Part& p) { return py::make_tuple(p.inputs, p.reason); },
          [](const py::tuple& t) {
            return Part{t[0].cast<std::vector<double>>(), t[1].cast<std::string>()};
          }));
}

}  // namespace

void bind_tolerance_parts(py::module_& m) {
  bind_input(m);
  bind_contribution(m);
  bind_first_order(m);
  bind_sampled(m);
  bind_corner(m);
  bind_quantity_band(m);
  bind_phase_share(m);
  bind_unusable(m);
}

}  // namespace gibbsteel::python
