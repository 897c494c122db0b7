#pragma once
/// Enclosures of the energy of a phase without its ideal mixing, over a box.

#include "minimizer/conditions.hpp"
#include "proof/box.hpp"
#include "proof/interval_polynomial.hpp"

namespace gibbsteel::internal {

/// E(y) = G(y) - R T sum a_i y_i ln y_i, the polynomial and the magnetic part.
struct Enclosure {
  Interval value;
  std::vector<Interval> gradient;  ///< length n
  std::vector<Interval> hessian;   ///< n x n, upper triangle
  /// The moment changes sign in the box: the magnetic part has a kink there and is left
  /// out of the Hessian; `kink_value` and `kink_gradient` hold its ranges instead.
  bool kink = false;
  Interval kink_value;
  std::vector<Interval> kink_gradient;
};

class EnergyEnclosure {
 public:
  explicit EnergyEnclosure(const Candidate& candidate);

  const CompiledPhase& phase() const noexcept { return *candidate_.phase; }
  double rt() const noexcept { return rt_; }
  /// Value and gradient at a thin box, magnetism included unless `without_magnetism`.
  void at(const Box& point, bool without_magnetism, Enclosure& out);
  /// Hessian over a box, or its kink.
  void over(const Box& box, Enclosure& out);

 private:
  void magnetic_polynomials(const Box& box, bool curvature);
  void add_magnetic_hessian(Enclosure& out);
  void fill_kink(Enclosure& out);

  const Candidate& candidate_;
  double rt_;
  Interval raw_curie_, raw_moment_;  ///< of the last box
  std::vector<Interval> dc_, db_, hc_, hb_;
};

/// Enclosure of D(y) = E(y) + R T sum a_i y_i ln y_i - w . y at a thin box, given E.
Interval plane_distance(const CompiledPhase& phase, double rt, const Box& point,
                        const Interval& energy, std::span<const Interval> weights);

}  // namespace gibbsteel::internal
