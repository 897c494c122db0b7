#include "internal/phase_kernel.hpp"

#include <algorithm>
#include <array>

#include "lanes/phase_energy.hpp"

namespace gibbsteel::internal {
namespace {

using Row = std::array<double, kMaxConstituents>;
using Square = std::array<double, kMaxConstituents * kMaxConstituents>;

one::Effective<double> effective(const Polynomial& polynomial,
                                 const std::vector<double>& c, double divisor,
                                 const double* y, double* gradient) noexcept {
  double raw = 0.0;
  add_polynomial(polynomial, c.data(), y, {&raw, gradient, nullptr, 0});
  return one::effective(raw, divisor);
}

void mirror(double* square, std::size_t n) noexcept {
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j) square[j * n + i] = square[i * n + j];
}

}  // namespace

double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y) noexcept {
  return one::energy_value(phase, at, kGasConstant * at.kelvin, y);
}

double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y, double* gradient, double* hessian) noexcept {
  const std::size_t n = phase.size();
  Row dc, db;
  Square hc, hb;
  const double value = one::energy_with_slopes(
      phase, at, kGasConstant * at.kelvin, y, {gradient, hessian, n},
      {dc.data(), db.data(), hc.data(), hb.data()});
  if (hessian) mirror(hessian, n);
  return value;
}

TemperatureSlopes temperature_slopes(const CompiledPhase& phase,
                                     const PhaseCoefficients& at, const double* y,
                                     double* dydt) noexcept {
  const std::size_t n = phase.size();
  TemperatureSlopes slopes{kGasConstant * one::mixing_sum(phase, y), 0.0};
  if (dydt) {
    for (std::size_t i = 0; i < n; ++i)
      dydt[i] = kGasConstant * phase.sites[i] * (one::logarithm(y[i]) + 1.0);
  }
  add_polynomial(phase.energy.polynomial, at.dt.data(), y,
                 {&slopes.dt, dydt, nullptr, n});
  add_polynomial(phase.energy.polynomial, at.dt2.data(), y,
                 {&slopes.dt2, nullptr, nullptr, n});
  if (phase.structure_factor <= 0.0) return slopes;
  Row dc, db;
  std::fill_n(dc.begin(), n, 0.0);
  std::fill_n(db.begin(), n, 0.0);
  const double divisor = phase.negative_value_divisor;
  const auto c =
      effective(phase.curie, phase.curie_coefficients, divisor, y, dc.data());
  const auto b =
      effective(phase.moment, phase.moment_coefficients, divisor, y, db.data());
  const auto e =
      one::magnetic_energy(at.kelvin, c.value, b.value, phase.structure_factor);
  slopes.dt += e.t;
  slopes.dt2 += e.tt;
  for (std::size_t i = 0; dydt && i < n; ++i)
    dydt[i] += e.tc * c.slope * dc[i] + e.tb * b.slope * db[i];
  return slopes;
}

double magnetic_parameter_slope(const CompiledPhase& phase, double kelvin,
                                const double* y, MagneticPart part, double polynomial,
                                const double* gradient, double* dydp) noexcept {
  const std::size_t n = phase.size();
  std::fill_n(dydp, n, 0.0);
  if (phase.structure_factor <= 0.0) return 0.0;
  Row dc, db;
  std::fill_n(dc.begin(), n, 0.0);
  std::fill_n(db.begin(), n, 0.0);
  const double divisor = phase.negative_value_divisor;
  const auto c =
      effective(phase.curie, phase.curie_coefficients, divisor, y, dc.data());
  const auto b =
      effective(phase.moment, phase.moment_coefficients, divisor, y, db.data());
  const auto e = one::magnetic_energy(kelvin, c.value, b.value, phase.structure_factor);
  const bool of_curie = part == MagneticPart::curie;
  const double slope = of_curie ? e.c * c.slope : e.b * b.slope;
  const double in_c = (of_curie ? e.cc * c.slope : e.cb * b.slope) * c.slope;
  const double in_b = (of_curie ? e.cb * c.slope : e.bb * b.slope) * b.slope;
  for (std::size_t i = 0; i < n; ++i)
    dydp[i] = slope * gradient[i] + polynomial * (in_c * dc[i] + in_b * db[i]);
  return slope * polynomial;
}

double effective_curie(const CompiledPhase& phase, const double* y) noexcept {
  if (phase.structure_factor <= 0.0) return 0.0;
  return effective(phase.curie, phase.curie_coefficients, phase.negative_value_divisor,
                   y, nullptr)
      .value;
}

double effective_moment(const CompiledPhase& phase, const double* y) noexcept {
  if (phase.structure_factor <= 0.0) return 0.0;
  return effective(phase.moment, phase.moment_coefficients,
                   phase.negative_value_divisor, y, nullptr)
      .value;
}

}  // namespace gibbsteel::internal
