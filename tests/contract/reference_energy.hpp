#pragma once
/// The energy of Eq. (G1) to (G7) written down once more, straight from the parameter
/// set and in any number type: the oracle of the contract suite. With 50 digits,
/// central differences give derivatives that are exact for every purpose here.

#include <algorithm>
#include <boost/multiprecision/cpp_bin_float.hpp>
#include <span>
#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/phase_model.hpp"

namespace gibbsteel::oracle {

using Real = boost::multiprecision::cpp_bin_float_50;

/// Site fractions by sublattice and name; 0 for a constituent that is not there.
class Fractions {
 public:
  Fractions(const PhaseModel& model, std::span<const Real> y) : model_(model), y_(y) {}
  Real at(std::size_t sublattice, const std::string& name) const {
    const auto& all = model_.constituents();
    for (std::size_t i = 0; i < all.size(); ++i)
      if (all[i].sublattice == sublattice && all[i].name == name) return y_[i];
    return 0;
  }

 private:
  const PhaseModel& model_;
  std::span<const Real> y_;
};

inline Real expression(const ParameterSet& set, const Expression& e, const Real& t) {
  Real sum = 0;
  for (const auto& term : e.terms) {
    const Real power =
        term.power.times_log ? Real(t * log(t)) : Real(pow(t, term.power.exponent));
    sum += term.coefficient * power;
  }
  for (const auto& share : e.curves) {
    const Curve& curve = *set.find_curve(share.curve);
    auto piece = curve.pieces.begin();
    while (piece + 1 != curve.pieces.end() && t >= piece->up_to) ++piece;
    sum += share.factor * expression(set, piece->value, t);
  }
  return sum;
}

inline Real term_product(const Term& term, const Fractions& y) {
  Real product = 1;
  int mixing = 0;
  for (const auto& names : term.on) mixing += names.size() > 1 ? 1 : 0;
  for (std::size_t s = 0; s < term.on.size(); ++s) {
    const auto& names = term.on[s];
    for (const auto& name : names) product *= y.at(s, name);
    if (names.size() == 1 || mixing > 1) continue;
    if (names.size() == 2) {
      product *= pow(Real(y.at(s, names[0]) - y.at(s, names[1])), *term.order);
    } else {
      const Real rest =
          (1 - y.at(s, names[0]) - y.at(s, names[1]) - y.at(s, names[2])) / 3;
      product *= y.at(s, names[static_cast<std::size_t>(*term.order)]) + rest;
    }
  }
  return product;
}

inline Real sum_of(const ParameterSet& set, const std::vector<Term>& terms,
                   const Fractions& y, const Real& t) {
  Real sum = 0;
  for (const Term& term : terms)
    sum += expression(set, term.value, t) * term_product(term, y);
  return sum;
}

/// Eq. (G5) to (G7) from effective values, curie > 0.
inline Real magnetic_energy(const Real& t, const Real& curie, const Real& moment,
                            const Real& structure_factor) {
  const Real tau = t / curie, k = 1 / structure_factor - 1;
  const Real a = Real(518) / 1125 + Real(11692) / 15975 * k;
  Real g;
  if (tau < 1)
    g = 1 - (79 / (140 * structure_factor * tau) +
             Real(474) / 497 * k *
                 (pow(tau, 3) / 6 + pow(tau, 9) / 135 + pow(tau, 15) / 600)) /
                a;
  else
    g = -(pow(tau, -5) / 10 + pow(tau, -15) / 315 + pow(tau, -25) / 1500) / a;
  return kGasConstant * t * log(moment + 1) * g;
}

inline Real magnetic(const ParameterSet& set, const Phase& phase, const Fractions& y,
                     const Real& t) {
  if (!phase.magnetism) return 0;
  const auto effective = [&](const std::vector<Term>& terms) {
    const Real raw = sum_of(set, terms, y, t);
    return raw >= 0 ? raw : Real(-raw / phase.magnetism->negative_value_divisor);
  };
  const Real curie = effective(phase.curie_temperature);
  const Real moment = effective(phase.magnetic_moment);
  if (curie == 0) return 0;
  return magnetic_energy(t, curie, moment, Real(phase.magnetism->structure_factor));
}

/// G(y, T) [J/mol of formula units].
inline Real energy(const ParameterSet& set, const Phase& phase, const PhaseModel& model,
                   std::span<const Real> y, const Real& t) {
  const Fractions fractions(model, y);
  Real sum = sum_of(set, phase.energy, fractions, t);
  for (std::size_t i = 0; i < y.size(); ++i)
    if (y[i] > 0) sum += kGasConstant * t * model.sites(i) * y[i] * log(y[i]);
  return sum + magnetic(set, phase, fractions, t);
}

}  // namespace gibbsteel::oracle
