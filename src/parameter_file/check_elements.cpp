#include <algorithm>
#include <cmath>
#include <string>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "gibbsteel/elements.hpp"
#include "message_text.hpp"
#include "number_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr double kMolarMassTolerance = 0.005;  // relative

bool check_symbol(const Check& check, std::string_view symbol,
                  const std::string& place) {
  if (find_element(symbol)) return true;
  const std::string_view meant = suggest_element(symbol);
  check.problems.add(codes::kNoElement, place,
                     in_quotes(symbol) + " is not the symbol of an element",
                     meant.empty() ? "give a symbol such as \"Cr\""
                                   : "did you mean " + in_quotes(meant) + "?");
  return false;
}

void check_molar_mass(const Check& check, const Element& element,
                      const std::string& place) {
  const double known = find_element(element.symbol)->molar_mass;
  if (known == 0.0 || element.molar_mass == 0.0) return;
  if (std::abs(element.molar_mass - known) <= kMolarMassTolerance * known) return;
  check.problems.add(
      codes::kWrongMolarMass, place + "/molar_mass_g_per_mol",
      "is " + number_text(element.molar_mass),
      "the standard atomic weight is " + number_text(known) + "; give it within 0.5 %");
}

bool occurs_in_a_phase(const ParameterSet& set, const std::string& symbol) {
  for (const Phase& phase : set.phases) {
    for (const Sublattice& sublattice : phase.sublattices) {
      const auto& names = sublattice.constituents;
      if (std::find(names.begin(), names.end(), symbol) != names.end()) return true;
    }
  }
  return false;
}

bool all_phases_sound(const Draft& draft) {
  return draft.phases_sound &&
         std::all_of(draft.phases.begin(), draft.phases.end(),
                     [](const DraftPhase& phase) { return phase.sound; });
}

void check_ranges(const Check& check) {
  for (const auto& [range, place, sound] : check.draft.ranges) {
    if (!check_symbol(check, range.symbol, place)) continue;
    if (!check.draft.elements_sound || check.set.find_element(range.symbol)) continue;
    check.problems.add(codes::kUndefinedElement, place,
                       "a range for an element that is not defined",
                       "define " + in_quotes(range.symbol) +
                           " under /elements, or leave the range out");
  }
}

}  // namespace

void check_elements(const Check& check) {
  const ParameterSet& set = check.set;
  if (set.elements.size() > check.limits.elements) {
    check.problems.add(
        codes::kBeyondLimit, "/elements",
        "together with the files below there are " +
            std::to_string(set.elements.size()) + " elements",
        "at most " + std::to_string(check.limits.elements) + " can be used");
  }
  check_ranges(check);
  const bool phases_known = all_phases_sound(check.draft);
  const auto curves = names_of(set.curves, &Curve::name);
  for (const auto& [element, place, sound] : check.draft.elements) {
    if (!check_symbol(check, element.symbol, place)) continue;
    check_molar_mass(check, element, place);
    if (check.draft.curves_sound && !element.reference_curve.empty() &&
        set.find_curve(element.reference_curve) == nullptr) {
      check.problems.add(
          codes::kUnknownCurve, place + "/reference_curve",
          "the curve " + in_quotes(element.reference_curve) + " is not defined",
          did_you_mean(element.reference_curve, curves, "define it under /curves"));
    }
    if (phases_known && !occurs_in_a_phase(set, element.symbol)) {
      check.problems.add(codes::kUnusedElement, place,
                         "this element occurs in no phase",
                         "add it to a sublattice of a phase, or leave it out");
    }
  }
}

void check_solidus_bounds(const Check& check) {
  for (const auto& [bound, place, sound] : check.draft.bounds) {
    for (const auto& [symbol, percent] : bound.weight_percent) {
      check_symbol(check, symbol, place + "/weight_percent/" + pointer_step(symbol));
    }
    check_source(check, bound.provenance, place);
  }
}

}  // namespace gibbsteel::parameter_file
