#pragma once
/// Descents of one phase to a local minimum of D, each from where the one before ended
/// and with other potentials: energy, gradient and factored Hessian do not depend on
/// the potentials, and what is known where one descent ends serves the next.
///
/// The results are those of descend() of minimizer/phase_minimum.hpp, to the bit. At a
/// point close to the one whose Hessian is known, that Hessian stands for the one there
/// to see that nothing is left to gain; only when it leaves a doubt the Hessian there
/// is evaluated.

#include "lanes/run_descents.hpp"
#include "lanes/tangent_factor.hpp"
#include "minimizer/conditions.hpp"

namespace gibbsteel::internal {

class ResumedDescent {
 public:
  /// Memory grows to the largest phase it is used for, and stays.
  ResumedDescent() = default;
  ResumedDescent(const ResumedDescent&) = delete;  // factor_ points into memory_
  ResumedDescent& operator=(const ResumedDescent&) = delete;

  /// Another start, of which nothing is known.
  /// @param y  start (each > 0); kept, and moved by each descent
  void begin(Conditions& conditions, const Candidate& candidate, double* y);
  /// @param limits  steps and tolerance; the other limits are not looked at
  DescentResult to_minimum(std::span<const double> mu, const DescentLimits& limits);

 private:
  void place(std::size_t n, std::size_t sublattices);
  bool has_arrived(double tolerance);
  double evaluate(const double* y, bool with_hessian);
  void factor();
  void look_downhill();
  bool move();
  DescentResult result(bool converged) const;

  std::vector<double> memory_;
  Conditions* conditions_ = nullptr;
  const Candidate* candidate_ = nullptr;
  std::size_t n_ = 0;
  double* y_ = nullptr;
  one::TangentFactor<double> factor_;
  double *hessian_ = nullptr, *gradient_ = nullptr;  ///< gradient of G
  double* room_ = nullptr;                           ///< of the magnetic part
  double *w_ = nullptr, *slope_ = nullptr;           ///< slope: gradient of D
  double *direction_ = nullptr, *trial_ = nullptr;
  double energy_ = 0.0, d_ = 0.0, decrease_ = 0.0;
  bool evaluated_ = false;  ///< energy and gradient are those at y
  bool factored_ = false;   ///< the factor is that at y, not at a point close to it
};

}  // namespace gibbsteel::internal
