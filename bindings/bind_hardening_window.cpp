/// HardeningWindow, RuleSpans and WindowSpan.

#include "gibbsteel/hardening_window.hpp"
#include "pickling.hpp"
#include "progress.hpp"
#include "temperatures.hpp"

namespace gibbsteel::python {
namespace {

std::string name_of(WindowRule rule) { return std::string(to_string(rule)); }

WindowRules rules_of(bool no_ferrite, const std::optional<Quantity>& hardness,
                     std::optional<double> least_hardness,
                     const std::string& pinning_kind,
                     std::optional<double> least_pinning, double solidus_margin) {
  return {no_ferrite,   hardness,      least_hardness,
          pinning_kind, least_pinning, solidus_margin};
}

HardeningWindow run(const Steel& steel, const WindowRules& rules, Pair kelvin,
                    const SoakOptions& options, SearchOptions search,
                    const py::object& callback) {
  search.progress = progress_of(callback);
  const py::gil_scoped_release release;
  return hardening_window(steel, rules, range_of(kelvin), options, search);
}

void bind_rules(py::module_& m) {
  py::class_<WindowRules>(m, "WindowRules")
      .def(py::init(&rules_of), py::kw_only(), py::arg("no_ferrite"),
           py::arg("hardness"), py::arg("least_hardness"), py::arg("pinning_kind"),
           py::arg("least_pinning_volume_percent"),
           py::arg("solidus_margin") = WindowRules{}.solidus_margin);
}

void bind_span(py::module_& m) {
  py::class_<WindowSpan> span(m, "WindowSpan",
                              "Where one rule holds, or all of them; (low, high).");
  def_temperature(span, [](const WindowSpan& s) { return s.range; });
  def_equality(span);
  span.def_property_readonly(
          "floor_rule", [](const WindowSpan& s) { return name_of(s.floor); },
          "What sets the low end.")
      .def_property_readonly(
          "ceiling_rule", [](const WindowSpan& s) { return name_of(s.ceiling); },
          "What sets the high end.")
      .def("__repr__",
           [](const WindowSpan& s) {
             return py::str("<WindowSpan {:.0f} to {:.0f} C ({}, {})>")
                 .format(s.range.low.in_celsius(), s.range.high.in_celsius(),
                         name_of(s.floor), name_of(s.ceiling));
           })
      .def(tagged_pickle(
          [](const WindowSpan& s) {
            return py::make_tuple(kelvins(s.range), static_cast<int>(s.floor),
                                  static_cast<int>(s.ceiling));
          },
          [](const py::tuple& t) {
            return WindowSpan{range_of(t[0].cast<Pair>()),
                              enumerator(t[1], WindowRule::left_out),
                              enumerator(t[2], WindowRule::left_out)};
          }));
}

void bind_rule_spans(py::module_& m) {
  py::class_<RuleSpans> rule(m, "RuleSpans", "One rule, and where it holds.");
  def_equality(rule);
  rule.def_property_readonly(
          "rule", [](const RuleSpans& r) { return name_of(r.rule); },
          "Name of the rule.")
      .def_readonly("text", &RuleSpans::text, "The rule in words.")
      .def_readonly("spans", &RuleSpans::spans, "list of WindowSpan, upwards.")
      .def("__repr__", [](const RuleSpans& r) { return "<RuleSpans: " + r.text + ">"; })
      .def(tagged_pickle(
          [](const RuleSpans& r) {
            return py::make_tuple(static_cast<int>(r.rule), r.text, r.spans);
          },
          [](const py::tuple& t) {
            return RuleSpans{enumerator(t[0], WindowRule::left_out),
                             t[1].cast<std::string>(),
                             t[2].cast<std::vector<WindowSpan>>()};
          }));
}

py::tuple window_state(const HardeningWindow& w) {
  return py::make_tuple(
      w.steel, kelvins(w.range), static_cast<int>(w.status), kelvins(w.floor),
      kelvins(w.ceiling), static_cast<int>(w.floor_rule),
      static_cast<int>(w.ceiling_rule), w.spans, w.rules, w.at_floor, w.at_ceiling,
      w.remarks, w.text, w.analysis, w.parameters, w.gaps,
      static_cast<int>(w.temperature_unit), w.by_family, w.of_hardness);
}

HardeningWindow window_from(const py::tuple& t) {
  HardeningWindow w;
  w.steel = t[0].cast<std::string>();
  w.range = range_of(t[1].cast<Pair>());
  w.status = enumerator(t[2], WindowStatus::not_known);
  w.floor = temperature_of(t[3].cast<std::optional<double>>());
  w.ceiling = temperature_of(t[4].cast<std::optional<double>>());
  w.floor_rule = enumerator(t[5], WindowRule::left_out);
  w.ceiling_rule = enumerator(t[6], WindowRule::left_out);
  w.spans = t[7].cast<std::vector<WindowSpan>>();
  w.rules = t[8].cast<std::vector<RuleSpans>>();
  w.at_floor = t[9].cast<State>();
  w.at_ceiling = t[10].cast<State>();
  w.remarks = t[11].cast<std::vector<std::string>>();
  w.text = t[12].cast<std::string>();
  w.analysis = t[13].cast<MillAnalysis>();
  w.parameters = t[14].cast<std::string>();
  if (t.size() > 15) w.gaps = t[15].cast<std::vector<PhaseGap>>();
  w.temperature_unit = unit_at(t, 16);
  if (t.size() > 17) w.by_family = t[17].cast<bool>();
  if (t.size() > 18) w.of_hardness = t[18].cast<std::vector<Warning>>();
  return w;
}

using WindowClass = py::class_<HardeningWindow>;

/// `celsius` and the like.
void def_ends(WindowClass& window) {
  using Ends = std::pair<std::optional<double>, std::optional<double>>;
  for_each_unit([&](const char* name, Unit unit) {
    window.def_property_readonly(
        name,
        [unit](const HardeningWindow& w) {
          return w.status == WindowStatus::found
                     ? std::optional(
                           Ends{in_unit(w.floor, unit), in_unit(w.ceiling, unit)})
                     : std::nullopt;
        },
        "(floor, ceiling) of the lowest window, with None for an end that no rule "
        "sets; None when there is no window.");
  });
}

void bind_answer(WindowClass& window) {
  window
      .def_readonly("steel", &HardeningWindow::steel,
                    "Name of the steel; may be empty.")
      .def_property_readonly(
          "status",
          [](const HardeningWindow& w) { return std::string(to_string(w.status)); },
          "'found', 'no window' or 'not known'.")
      .def_property_readonly(
          "floor_rule", [](const HardeningWindow& w) { return name_of(w.floor_rule); },
          "'range', 'ferrite', 'hardness', 'pinning', 'solidus', 'melting' or "
          "'unknown'.")
      .def_property_readonly(
          "ceiling_rule",
          [](const HardeningWindow& w) { return name_of(w.ceiling_rule); },
          "'range', 'ferrite', 'hardness', 'pinning', 'solidus', 'melting' or "
          "'unknown'.")
      .def_readonly("spans", &HardeningWindow::spans, "All windows, upwards.")
      .def_readonly("rules", &HardeningWindow::rules, "list of RuleSpans.")
      .def_readonly("at_floor", &HardeningWindow::at_floor,
                    "The soak there, or at the low end of the search.")
      .def_readonly("at_ceiling", &HardeningWindow::at_ceiling,
                    "The soak there, or at the high end of the search.")
      .def_readonly("gaps", &HardeningWindow::gaps,
                    "list of PhaseGap: not known and left out.")
      .def_readonly("remarks", &HardeningWindow::remarks,
                    "What is left out, and what no rule looks at.")
      .def_readonly("text", &HardeningWindow::text, "The answer, or why there is none.")
      .def_readonly("analysis", &HardeningWindow::analysis, "The mill certificate.")
      .def_readonly("parameters", &HardeningWindow::parameters,
                    "Title and edition of the file.")
      .def_property_readonly("warnings", &HardeningWindow::warnings,
                             "Of the soaks at both ends, and of the hardness there.");
}

}  // namespace

void bind_hardening_window(py::module_& m) {
  bind_rules(m);
  bind_span(m);
  bind_rule_spans(m);
  WindowClass window(m, "HardeningWindow",
                     "Between which temperatures a steel can be hardened.");
  def_ends(window);
  def_searched(window, [](const HardeningWindow& w) { return w.range; });
  bind_answer(window);
  window
      .def(
          "to_frame",
          [](const py::object& self) {
            return py::module_::import("gibbsteel.target_frames")
                .attr("hardening_window_to_frame")(self);
          },
          "Table (pandas): one row per rule and stretch.")
      .def("__repr__", [](const HardeningWindow& w) { return "<" + w.brief() + ">"; })
      .def("__str__", &HardeningWindow::full)
      .def(tagged_pickle(&window_state, &window_from, 3));
  m.def("hardening_window", &run, py::arg("steel"), py::arg("rules"), py::arg("kelvin"),
        py::arg("options"), py::arg("search"), py::arg("progress"));
}

}  // namespace gibbsteel::python
