#include "minimizer/kink_starts.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "internal/polynomial_kernel.hpp"
#include "lanes/phase_energy.hpp"
#include "minimizer/phase_minimum.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kClose = 0.1;     ///< largest difference of site fractions
constexpr double kNoticed = 1e-4;  ///< [J/mol of formula units]
constexpr double kBeyond = 1.5;    ///< of the way to the kink, to first order

using Row = std::array<double, kMaxConstituents>;

/// Curie temperature or moment as its polynomial has it, before the sign is looked at.
struct Raw {
  double value = 0.0;
  Row gradient;

  Raw(const Polynomial& polynomial, const std::vector<double>& coefficients,
      std::span<const double> y) {
    std::fill_n(gradient.begin(), y.size(), 0.0);
    add_polynomial(polynomial, coefficients.data(), y.data(),
                   {&value, gradient.data(), nullptr, y.size()});
  }
};

/// The step that takes a polynomial to zero, times kBeyond: steepest in the metric of
/// ideal mixing, so that dilute constituents stay dilute.
Row step_across(const CompiledPhase& phase, const Raw& raw, std::span<const double> y) {
  double slope = 0.0;
  Row step;
  for (std::size_t s = 0; s < phase.sublattice_count(); ++s) {
    double mean = 0.0;  // the fractions of a sublattice sum to 1
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i)
      mean += y[i] * raw.gradient[i];
    for (std::size_t i = phase.first[s]; i < phase.first[s + 1]; ++i) {
      step[i] = y[i] * (raw.gradient[i] - mean);
      slope += raw.gradient[i] * step[i];
    }
  }
  for (std::size_t i = 0; i < y.size(); ++i) step[i] *= -kBeyond * raw.value / slope;
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

bool is_noticed(const CompiledPhase& phase, double kelvin, double curie,
                double moment) {
  return std::abs(one::magnetic_energy(kelvin, curie, moment, phase.structure_factor)
                      .value) > kNoticed;
}

}  // namespace

std::vector<std::vector<double>> kink_starts(const CompiledPhase& phase, double kelvin,
                                             std::span<const double> y) {
  std::vector<std::vector<double>> starts;
  if (phase.structure_factor <= 0.0) return starts;
  const Raw curie(phase.curie, phase.curie_coefficients, y);
  const Raw moment(phase.moment, phase.moment_coefficients, y);
  const auto effective = [&](const Raw& raw) {
    return one::effective(raw.value, phase.negative_value_divisor).value;
  };
  for (const Raw* raw : {&curie, &moment}) {
    const Row step = step_across(phase, *raw, y);
    if (!is_close(step, y.size())) continue;
    Row across;
    update_fractions(phase, y.data(), step.data(), 1.0, across.data());
    if (is_noticed(phase, kelvin, effective(curie), effective(moment)) ||
        is_noticed(phase, kelvin, effective_curie(phase, across.data()),
                   effective_moment(phase, across.data())))
      starts.emplace_back(across.data(), across.data() + y.size());
  }
  return starts;
}

}  // namespace gibbsteel::internal
