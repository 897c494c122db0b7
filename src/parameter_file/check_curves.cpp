#include <algorithm>
#include <cmath>
#include <string>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "curve_graph.hpp"
#include "message_text.hpp"
#include "number_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// The largest jump of the shipped file is 0.90 J/mol (close-packed hexagonal iron at
/// 1811 K, above the validity range), the next 0.13 J/mol (chromium at 2180 K).
constexpr double kLargestJump = 1.0;  // [J/mol]

/// What the factors of curves may make of such jumps: a hundred of the largest. Formula
/// units of carbides have some thirty atoms.
constexpr double kLargestInheritedJump = 100.0;  // [J/mol]

void report_circle(const Check& check, const DraftCurve& draft,
                   const CurveGraph::Node& node) {
  if (node.circle.empty()) return;
  std::string names;
  const std::size_t shown = std::min<std::size_t>(node.circle.size(), 8);
  for (std::size_t i = 0; i < shown; ++i) names += in_quotes(node.circle[i]) + " -> ";
  if (shown < node.circle.size()) names += "... -> ";
  names += in_quotes(node.circle.front());
  check.problems.add(codes::kCurveCycle, draft.place,
                     "this curve is made of itself: " + names,
                     "break the circle; spell out one of the curves in powers of T");
}

void check_coverage(const Check& check, const Curve& curve, const std::string& place) {
  const double low = check.set.lowest_temperature;
  const double high = check.set.highest_temperature;
  if (curve.pieces.empty() || low <= 0.0) return;
  if (curve.from <= low && curve.pieces.back().up_to >= high) return;
  check.problems.add(codes::kCurveTooShort, place,
                     "the curve " + in_quotes(curve.name) + " holds from " +
                         number_text(curve.from) + " to " +
                         number_text(curve.pieces.back().up_to) + " K",
                     "it must cover the validity range, " + number_text(low) + " to " +
                         number_text(high) + " K");
}

void check_jumps(const Check& check, const DraftCurve& draft, const CurveGraph& graph) {
  for (std::size_t i = 0; i + 1 < draft.curve.pieces.size(); ++i) {
    const double kelvin = draft.curve.pieces[i].up_to;
    const double jump = graph.value(draft.curve, kelvin, Side::above) -
                        graph.value(draft.curve, kelvin, Side::below);
    if (std::abs(jump) <= kLargestJump) continue;
    const double rounded = std::round(jump * 100.0) / 100.0;
    check.problems.add(
        codes::kCurveJumps, draft.piece_places[i] + "/up_to_K",
        "the value jumps by " +
            (std::isfinite(jump) ? number_text(rounded)
                                 : std::string("more than can be said")) +
            " J/mol at " + number_text(kelvin) + " K",
        "the pieces must meet within 1 J/mol");
  }
}

void check_inherited_jump(const Check& check, const Expression& expression,
                          const std::string& place, CurveGraph& graph) {
  for (const CurveShare& share : expression.curves) {
    const CurveGraph::Node* node = graph.find(share.curve);
    if (node == nullptr || !node->usable) return;  // reported where it stands
  }
  const double bound = graph.jump_bound(expression);
  if (bound <= kLargestInheritedJump) return;
  check.problems.add(codes::kCurveJumps, place + "/curves",
                     "jumps of these curves add up to " +
                         (std::isfinite(bound) ? number_text(std::round(bound))
                                               : std::string("more than can be said")) +
                         " J/mol with these factors",
                     "give factors with which they stay within 100 J/mol");
}

/// Small jumps are made large by the factors of the curves.
void check_inherited_jumps(const Check& check, CurveGraph& graph) {
  for (const DraftCurve& draft : check.draft.curves)
    for (std::size_t i = 0; i < draft.curve.pieces.size(); ++i)
      check_inherited_jump(check, draft.curve.pieces[i].value, draft.piece_places[i],
                           graph);
  for (const DraftPhase& phase : check.draft.phases)
    for (const auto& [term, place, sound] : phase.energy)
      if (sound) check_inherited_jump(check, term.value, place, graph);
}

bool check_size(const Check& check, const CurveGraph& graph) {
  if (check.set.curves.size() > check.limits.curves) {
    check.problems.add(
        codes::kBeyondLimit, "/curves",
        "together with the files below there are " +
            std::to_string(check.set.curves.size()) + " curves",
        "at most " + std::to_string(check.limits.curves) + " can be used");
  }
  const auto most = static_cast<double>(check.limits.curve_steps);
  if (graph.total_steps(check.set) <= most) return true;
  check.problems.add(codes::kBeyondLimit, "/curves",
                     "the curves are made of one another so often that spelling them "
                     "out takes more than " +
                         std::to_string(check.limits.curve_steps) + " terms",
                     "spell out in powers of T what is used most");
  return false;
}

}  // namespace

void check_curves(const Check& check) {
  for (const DraftCurve& draft : check.draft.curves) {
    for (std::size_t i = 0; i < draft.curve.pieces.size(); ++i) {
      check_expression(check, draft.curve.pieces[i].value, draft.piece_places[i]);
    }
  }
  CurveGraph graph(check.set);
  const bool small = check_size(check, graph);
  bool all_sound = check.draft.curves_sound;
  for (const DraftCurve& draft : check.draft.curves) {
    const CurveGraph::Node* node = graph.find(draft.curve.name);
    if (node == nullptr) continue;
    report_circle(check, draft, *node);
    if (node->nesting > check.limits.curve_nesting) {
      check.problems.add(
          codes::kBeyondLimit, draft.place,
          "curves are made of curves " + std::to_string(node->nesting) + " deep here",
          "at most " + std::to_string(check.limits.curve_nesting) +
              " levels can be used");
    }
    all_sound = all_sound && draft.sound;
    if (draft.sound) check_coverage(check, draft.curve, draft.place);
  }
  if (check.draft.temperatures) {
    for (const Curve& curve : check.set.curves) {
      const bool added = std::any_of(
          check.draft.curves.begin(), check.draft.curves.end(),
          [&](const DraftCurve& draft) { return draft.curve.name == curve.name; });
      if (!added) check_coverage(check, curve, "/validity/temperature_K");
    }
  }
  if (!small || !all_sound) return;
  for (const DraftCurve& draft : check.draft.curves) {
    const CurveGraph::Node* node = graph.find(draft.curve.name);
    if (node != nullptr && node->usable) check_jumps(check, draft, graph);
  }
  check_inherited_jumps(check, graph);
}

}  // namespace gibbsteel::parameter_file
