#pragma once
/// Posing A, "amounts": variables are the amount N of every set and x_i = N y_i.
///
///   minimize   sum N G(x/N) / RT
///   subject to the element balance and sum_{i in s} x_i = N for each sublattice,
///
/// all of them linear, with N >= 0 and x >= 0. The Hessian has one block per set:
/// H/N, -H y/N and y'H y/N for pairs of (x, x), (x, N) and (N, N), H the Hessian of the
/// phase at y.

#include "posing.hpp"

namespace gibbsteel::contest {

struct Entry {
  std::size_t row, column;
  double value;
};

class AmountsPosing : public Posing {
 public:
  AmountsPosing(const Task& task, const Sets& start);

  std::vector<double> start() const;
  double value(const double* x) const;
  void gradient(const double* x, double* out) const;

  /// Rows of the linear constraints and their right-hand sides.
  const std::vector<Entry>& constraints() const noexcept { return constraints_; }
  const std::vector<double>& right_hand_sides() const noexcept { return right_; }

  /// Lower triangle of the Hessian of the energy: places (values are 0), then values.
  std::vector<Entry> hessian_places() const;
  void hessian(const double* x, double* values) const;

  /// Sets whose amount is above `least`.
  Sets sets(const double* x, double least = 1e-9) const;

 private:
  std::vector<double> fractions(const Slot& slot, const double* x) const;

  std::vector<Entry> constraints_;
  std::vector<double> right_;
};

}  // namespace gibbsteel::contest
