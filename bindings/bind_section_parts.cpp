/// The parts of a section map: axes, boundaries, fields, nodes, gaps.

#include "arrays.hpp"
#include "common.hpp"
#include "pickling.hpp"
#include "section_points.hpp"

namespace gibbsteel::python {
namespace {

void bind_axis(py::module_& m) {
  py::class_<SectionAxis>(m, "SectionAxis", "One axis of a section map.")
      .def_readonly("element", &SectionAxis::element,
                    "Symbol; empty for an axis of temperature.")
      .def_readonly("low", &SectionAxis::low, "[`unit`]")
      .def_readonly("high", &SectionAxis::high, "[`unit`]")
      .def_property_readonly("unit", &SectionAxis::unit, "'wt%' or 'C'.")
      .def_property_readonly("label", &SectionAxis::label,
                             "'C [wt%]', 'temperature [C]'.")
      .def("__repr__",
           [](const SectionAxis& a) { return "<SectionAxis " + a.label() + ">"; })
      .def(
          "__eq__", [](const SectionAxis& a, const SectionAxis& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const SectionAxis& a) { return py::make_tuple(a.element, a.low, a.high); },
          [](const py::tuple& t) {
            return SectionAxis{t[0].cast<std::string>(), t[1].cast<double>(),
                               t[2].cast<double>()};
          }));
}

using Kinds = std::vector<std::string>;

std::string brief(const SectionBoundary& b) {
  std::string text;
  for (const auto* side : {&b.left_only, &b.right_only})
    for (const std::string& kind : *side) text += (text.empty() ? "" : ", ") + kind;
  return "<SectionBoundary of " + (text.empty() ? "a gap" : text) + ", " +
         std::to_string(b.points.size()) + " points>";
}

void bind_boundary(py::module_& m) {
  using B = SectionBoundary;
  py::class_<B>(m, "SectionBoundary", "A line between two fields.")
      .def_readonly("left", &B::left, "Phases on the left, walking along the points.")
      .def_readonly("right", &B::right, "Phases on the right.")
      .def_readonly("left_only", &B::left_only, "Phases that vanish to the right.")
      .def_readonly("right_only", &B::right_only, "Phases that vanish to the left.")
      .def_readonly("invariant", &B::invariant, "True: a reaction at one temperature.")
      .def_readonly("closed", &B::closed, "True: the last point is the first.")
      .def_readonly("of_gap", &B::of_gap, "True: nothing is known on one side.")
      .def_property_readonly(
          "points", [](const B& b) { return array_of(b.points); },
          "Shape (n, 2), in the units of the axes.")
      .def("__repr__", [](const B& b) { return brief(b); })
      .def(
          "__eq__", [](const B& a, const B& b) { return a == b; }, py::is_operator())
      .def(tagged_pickle(
          [](const B& b) {
            return py::make_tuple(b.left, b.right, b.left_only, b.right_only,
                                  b.invariant, b.closed, b.of_gap, pairs_of(b.points));
          },
          [](const py::tuple& t) {
            return B{t[0].cast<Kinds>(), t[1].cast<Kinds>(),
                     t[2].cast<Kinds>(), t[3].cast<Kinds>(),
                     t[4].cast<bool>(),  t[5].cast<bool>(),
                     t[6].cast<bool>(),  points_of(t[7].cast<PointPairs>())};
          }));
}

py::tuple get_field(const SectionField& f) {
  std::vector<PointPairs> holes;
  for (const auto& hole : f.holes) holes.push_back(pairs_of(hole));
  return py::make_tuple(f.phases, f.label, f.label_point.x, f.label_point.y,
                        f.label_room, f.area_share, pairs_of(f.outline), holes);
}

SectionField set_field(const py::tuple& t) {
  SectionField f;
  f.phases = t[0].cast<Kinds>();
  f.label = t[1].cast<std::string>();
  f.label_point = {t[2].cast<double>(), t[3].cast<double>()};
  f.label_room = t[4].cast<double>();
  f.area_share = t[5].cast<double>();
  f.outline = points_of(t[6].cast<PointPairs>());
  for (const auto& hole : t[7].cast<std::vector<PointPairs>>())
    f.holes.push_back(points_of(hole));
  return f;
}

py::list holes_of(const SectionField& f) {
  py::list holes;
  for (const auto& hole : f.holes) holes.append(array_of(hole));
  return holes;
}

void bind_field(py::module_& m) {
  using F = SectionField;
  py::class_<F>(m, "SectionField", "A region with one set of phases.")
      .def_readonly("phases", &F::phases, "Kinds; two of a kind are listed twice.")
      .def_readonly("label", &F::label, "'austenite + M3C'.")
      .def_property_readonly(
          "label_point",
          [](const F& f) { return py::make_tuple(f.label_point.x, f.label_point.y); },
          "A point inside, as far from the outline as can be.")
      .def_readonly("label_room", &F::label_room,
                    "Its distance from the outline, as a share of the axes.")
      .def_readonly("area_share", &F::area_share, "Of the map, 0 to 1.")
      .def_property_readonly(
          "outline", [](const F& f) { return array_of(f.outline); },
          "Shape (n, 2); closed, the first point is not repeated.")
      .def_property_readonly("holes", &holes_of, "Outlines of the fields inside it.")
      .def("__repr__", [](const F& f) { return "<SectionField " + f.label + ">"; })
      .def(
          "__eq__", [](const F& a, const F& b) { return a == b; }, py::is_operator())
      .def(tagged_pickle(&get_field, &set_field));
}

void bind_node(py::module_& m) {
  using N = SectionNode;
  py::class_<N>(m, "SectionNode", "A point where boundaries meet.")
      .def_property_readonly(
          "at", [](const N& n) { return py::make_tuple(n.at.x, n.at.y); },
          "In the units of the axes.")
      .def_readonly("fields", &N::fields, "Labels of the fields around it.")
      .def("__repr__",
           [](const N& n) {
             return "<SectionNode of " + std::to_string(n.fields.size()) + " fields>";
           })
      .def(
          "__eq__", [](const N& a, const N& b) { return a == b; }, py::is_operator())
      .def(tagged_pickle(
          [](const N& n) { return py::make_tuple(n.at.x, n.at.y, n.fields); },
          [](const py::tuple& t) {
            return N{{t[0].cast<double>(), t[1].cast<double>()}, t[2].cast<Kinds>()};
          }));
}

void bind_gap(py::module_& m) {
  using G = SectionGap;
  py::class_<G>(m, "SectionGap", "A region of which nothing is known.")
      .def_property_readonly(
          "outline", [](const G& g) { return array_of(g.outline); },
          "Shape (n, 2); no phase boundary.")
      .def_readonly("reason", &G::reason, "Why nothing is known.")
      .def("__repr__", [](const G& g) { return "<SectionGap: " + g.reason + ">"; })
      .def(
          "__eq__", [](const G& a, const G& b) { return a == b; }, py::is_operator())
      .def(tagged_pickle(
          [](const G& g) { return py::make_tuple(pairs_of(g.outline), g.reason); },
          [](const py::tuple& t) {
            return G{points_of(t[0].cast<PointPairs>()), t[1].cast<std::string>()};
          }));
}

}  // namespace

void bind_section_parts(py::module_& m) {
  bind_axis(m);
  bind_boundary(m);
  bind_field(m);
  bind_node(m);
  bind_gap(m);
}

}  // namespace gibbsteel::python
