#include "proof/temperature_concavity.hpp"

#include <algorithm>

#include "proof/interval.hpp"

namespace gibbsteel::internal {
namespace {

/// Second derivatives in T of the expressions of a set between two temperatures.
class Curvature {
 public:
  Curvature(const ParameterSet& set, const Interval& kelvin)
      : set_(set), kelvin_(kelvin) {}

  Interval of(const Expression& e) {
    Interval sum;
    for (const auto& term : e.terms)
      if (const Interval d2 = of(term.power); d2.lo != 0.0 || d2.hi != 0.0)
        sum += term.coefficient * d2;
    for (const auto& share : e.curves) {
      const Curve* curve = set_.find_curve(share.curve);
      auto piece = curve->pieces.begin();
      while (piece + 1 != curve->pieces.end() && kelvin_.lo >= piece->up_to) ++piece;
      if (piece + 1 != curve->pieces.end() && kelvin_.hi >= piece->up_to)
        broken_ = true;
      sum += share.factor * of(piece->value);
    }
    return sum;
  }
  bool broken() const noexcept { return broken_; }

 private:
  Interval of(TemperaturePower power) const {
    if (power.times_log) return reciprocal(kelvin_);
    const int n = power.exponent;
    const double factor = n * (n - 1);
    if (factor == 0.0) return {};
    const int rest = n - 2;
    const Interval p = internal::power(kelvin_, std::abs(rest));
    return factor * (rest < 0 ? reciprocal(p) : p);
  }

  const ParameterSet& set_;
  Interval kelvin_;
  bool broken_ = false;
};

bool is_active(const Term& term, const std::vector<std::string>& elements) {
  for (const auto& names : term.on)
    for (const auto& name : names)
      if (name != kVacancy &&
          std::find(elements.begin(), elements.end(), name) == elements.end())
        return false;
  return true;
}

/// End members of a phase with these elements.
std::size_t combinations(const Phase& phase, const std::vector<std::string>& elements) {
  std::size_t count = 1;
  for (const Sublattice& sublattice : phase.sublattices)
    count *= static_cast<std::size_t>(std::count_if(
        sublattice.constituents.begin(), sublattice.constituents.end(),
        [&](const std::string& name) {
          return name == kVacancy ||
                 std::find(elements.begin(), elements.end(), name) != elements.end();
        }));
  return count;
}

bool mixes(const Term& term) {
  return std::any_of(term.on.begin(), term.on.end(),
                     [](const auto& names) { return names.size() > 1; });
}

bool is_concave(const Phase& phase, const std::vector<std::string>& elements,
                Curvature& curvature) {
  double highest = -std::numeric_limits<double>::infinity(), interactions = 0.0;
  std::size_t members = 0;
  for (const Term& term : phase.energy) {
    if (!is_active(term, elements)) continue;
    const Interval d2 = curvature.of(term.value);
    if (mixes(term))  // two site fractions of one sublattice: at most 1/4
      interactions = rounding::up(interactions + 0.25 * d2.magnitude());
    else
      highest = std::max(highest, d2.hi), ++members;
  }
  // An end member that is not there counts as zero: the mean of all may be that high.
  if (members < combinations(phase, elements)) highest = std::max(highest, 0.0);
  return !curvature.broken() && rounding::up(highest + interactions) <= 0.0;
}

}  // namespace

bool concave_in_temperature(const PhaseSystem& system, double from, double to) {
  Curvature curvature(system.parameters(), {std::min(from, to), std::max(from, to)});
  for (std::size_t f = 0; f < system.phases().size(); ++f)
    if (!is_concave(system.definition(f), system.elements(), curvature)) return false;
  return true;
}

}  // namespace gibbsteel::internal
