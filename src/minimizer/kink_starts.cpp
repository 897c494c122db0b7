#include "minimizer/kink_starts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "internal/polynomial_kernel.hpp"
#include "lanes/magnetic_energy.hpp"
#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kClose = 0.1;     ///< largest difference of site fractions
constexpr double kNoticed = 1e-4;  ///< [J/mol of formula units]
constexpr double kBeyond = 1.5;    ///< of the way to the kink, to first order

using Row = std::array<double, kMaxConstituents>;

/// The step that takes a polynomial to zero, times kBeyond: steepest in the metric of
/// ideal mixing, so that dilute constituents stay dilute.
Row step_across(const CompiledPhase& phase, const Polynomial& polynomial,
                const std::vector<double>& coefficients, std::span<const double> y) {
  double value = 0.0, slope = 0.0;
  Row gradient{}, step{};
  add_polynomial(polynomial, coefficients.data(), y.data(),
                 {&value, gradient.data(), nullptr, y.size()});
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double mean = 0.0;  // the fractions of a sublattice sum to 1
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      mean += y[i] * gradient[i];
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      step[i] = y[i] * (gradient[i] - mean);
      slope += gradient[i] * step[i];
    }
  }
  for (double& dy : step) dy *= -kBeyond * value / slope;
  return step;
}

bool is_close(const Row& step, std::size_t n) noexcept {
  double largest = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    if (!std::isfinite(step[i])) return false;
    largest = std::max(largest, std::abs(step[i]));
  }
  return largest > 0.0 && largest < kClose;
}

double magnetic_part(const CompiledPhase& phase, double kelvin, const double* y) {
  return std::abs(one::magnetic_energy(kelvin, effective_curie(phase, y),
                                       effective_moment(phase, y),
                                       phase.structure_factor)
                      .value);
}

}  // namespace

std::vector<std::vector<double>> kink_starts(const CompiledPhase& phase, double kelvin,
                                             std::span<const double> y) {
  std::vector<std::vector<double>> starts;
  if (phase.structure_factor <= 0.0) return starts;
  const auto add = [&](const Polynomial& polynomial, const std::vector<double>& c) {
    const Row step = step_across(phase, polynomial, c, y);
    if (!is_close(step, y.size())) return;
    Row across;
    update_fractions(phase, y.data(), step.data(), 1.0, across.data());
    if (magnetic_part(phase, kelvin, y.data()) > kNoticed ||
        magnetic_part(phase, kelvin, across.data()) > kNoticed)
      starts.emplace_back(across.data(), across.data() + y.size());
  };
  add(phase.curie, phase.curie_coefficients);
  add(phase.moment, phase.moment_coefficients);
  return starts;
}

}  // namespace gibbsteel::internal
