#pragma once
/// Posing B, "logits": variables are the amount N of every set and numbers u with
/// y = softmax(u) on each sublattice, so that y > 0 wherever a solver looks.
///
///   minimize   sum N G(y(u)) / RT   subject to the element balance (not linear), N >=
///   0

#include "posing.hpp"

namespace gibbsteel::contest {

class LogitsPosing : public Posing {
 public:
  using Posing::Posing;

  std::vector<double> start() const;
  double value(const double* x, double* gradient) const;
  /// Element balance: sum N M(y) - b, length elements.
  /// @param gradient  elements x variables, row by row; may be null
  void balance(const double* x, double* out, double* gradient) const;

  /// Sets whose amount is above `least`.
  Sets sets(const double* x, double least = 1e-9) const;

 private:
  std::vector<double> fractions(const Slot& slot, const double* x) const;
};

}  // namespace gibbsteel::contest
