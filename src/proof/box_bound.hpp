#pragma once
/// What can be said of D over one box: narrower bounds of its stationary points, and a
/// lower bound of its values.

#include "proof/quadratic.hpp"

namespace gibbsteel::internal {

/// D(y) = E(y) + R T sum a_i y_i ln y_i - w . y of one phase.
class BoxBound {
 public:
  /// @param weights  w_i
  BoxBound(const Candidate& candidate, std::vector<Interval> weights);

  enum class Verdict {
    excluded,   ///< no stationary point of D lies in the box
    above,      ///< D >= 0 all over the box
    violated,   ///< D < 0 at `violation()`
    undecided,  ///< to be cut in two along split()
  };
  /// Narrows the box as far as that pays.
  Verdict examine(Box& box);
  std::size_t split() const noexcept { return split_; }
  const Box& violation() const noexcept { return centre_; }
  /// Upper bound of D at the violation [J/mol of formula units].
  double violation_energy() const noexcept { return centre_energy_.hi; }

 private:
  void look(const Box& box);
  bool narrow(Box& box);
  bool narrow_sublattice(std::size_t from, std::size_t to, Box& box);
  Interval slope_difference(std::size_t i, std::size_t k, const Box& box);
  double lower_bound(const Box& box);
  double tangent_bound(const Box& box);
  void choose_split(const Box& box);

  EnergyEnclosure energy_;
  std::vector<Interval> weights_;
  Box centre_;
  Box wide_;  ///< the box with its centre
  Interval centre_energy_;
  Enclosure enclosure_;
  QuadraticForm form_;
  std::vector<double> slope_;
  std::size_t split_ = 0;
};

}  // namespace gibbsteel::internal
