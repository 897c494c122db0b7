#include <algorithm>
#include <cmath>
#include <string>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "message_text.hpp"
#include "number_text.hpp"
#include "read_expression.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// Largest contribution of one power of T [J/mol]; real ones stay below 1e9.
constexpr double kLargestContribution = 1e12;

double contribution(const TemperatureTerm& term, double kelvin) {
  const double log_factor = term.power.times_log ? std::log(kelvin) : 1.0;
  return std::abs(term.coefficient * std::pow(kelvin, term.power.exponent) *
                  log_factor);
}

}  // namespace

void check_source(const Check& check, const Provenance& provenance,
                  const std::string& place) {
  if (check.problems.full() || provenance.source.empty()) return;
  if (!check.draft.sources_sound) return;
  if (check.set.find_source(provenance.source) != nullptr) return;
  const auto keys = names_of(check.set.sources, &Source::key);
  check.problems.add(codes::kUnknownSource, place + "/source",
                     "the source " + in_quotes(provenance.source) + " is not defined",
                     did_you_mean(provenance.source, keys, "define it under /sources"));
}

void check_expression(const Check& check, const Expression& expression,
                      const std::string& place) {
  for (const CurveShare& share : expression.curves) {
    if (!check.draft.curves_sound || check.problems.full()) break;
    if (check.set.find_curve(share.curve) != nullptr) continue;
    const auto names = names_of(check.set.curves, &Curve::name);
    check.problems.add(codes::kUnknownCurve,
                       place + "/curves/" + pointer_step(share.curve),
                       "the curve " + in_quotes(share.curve) + " is not defined",
                       did_you_mean(share.curve, names, "define it under /curves"));
  }
  if (check.set.lowest_temperature <= 0.0) return;  // reported where it stands
  for (const TemperatureTerm& term : expression.terms) {
    const double most = std::max(contribution(term, check.set.lowest_temperature),
                                 contribution(term, check.set.highest_temperature));
    if (most <= kLargestContribution) continue;
    check.problems.add(
        codes::kOutOfRange, place + "/terms/" + pointer_step(power_text(term.power)),
        "is " + number_text(term.coefficient) +
            ", which contributes more than 1e12 within the validity range",
        "give a coefficient in J, mol and K");
  }
}

void check_sources(const Check& check) {
  for (const DraftCurve& curve : check.draft.curves) {
    check_source(check, curve.curve.provenance, curve.place);
  }
  for (const DraftPhase& phase : check.draft.phases) {
    for (const auto* list :
         {&phase.energy, &phase.curie_temperature, &phase.magnetic_moment}) {
      for (const auto& [term, place, sound] : *list) {
        check_source(check, term.provenance, place);
      }
    }
    for (const auto* block : {&phase.room_volume, &phase.hot_volume}) {
      if (!block->has_value()) continue;
      for (const auto& [term, place, sound] : (*block)->terms) {
        check_source(check, term.provenance, place);
      }
    }
  }
}

}  // namespace gibbsteel::parameter_file
