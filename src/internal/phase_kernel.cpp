#include "internal/phase_kernel.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "internal/magnetic_kernel.hpp"

namespace gibbsteel::internal {
namespace {

using Row = std::array<double, kMaxConstituents>;
using Square = std::array<double, kMaxConstituents * kMaxConstituents>;

double x_log_x(double x) noexcept { return x > 0.0 ? x * std::log(x) : 0.0; }

/// sum a_i y_i ln y_i
double mixing_sum(const CompiledPhase& phase, const double* y) noexcept {
  double sum = 0.0;
  for (std::size_t i = 0; i < phase.size(); ++i) sum += phase.sites[i] * x_log_x(y[i]);
  return sum;
}

/// A raw polynomial and the slope that turns it into its effective value.
struct Effective {
  double value = 0.0;
  double slope = 1.0;
};

Effective effective(const Polynomial& polynomial, const std::vector<double>& c,
                    double divisor, const double* y, double* gradient, double* hessian,
                    std::size_t n) noexcept {
  double raw = 0.0;
  add_polynomial(polynomial, c.data(), y, {&raw, gradient, hessian, n});
  const double slope = effective_slope(raw, divisor);
  return {raw * slope, slope};
}

/// Adds the magnetic part to value, gradient and the upper triangle of the Hessian.
double add_magnetic(const CompiledPhase& phase, double t, const double* y,
                    double* gradient, double* hessian) noexcept {
  const std::size_t n = phase.size();
  Row dc, db;
  Square hc, hb;
  const bool slopes = gradient != nullptr, curvature = hessian != nullptr;
  if (slopes) std::fill_n(dc.begin(), n, 0.0), std::fill_n(db.begin(), n, 0.0);
  if (curvature) {
    std::fill_n(hc.begin(), n * n, 0.0);
    std::fill_n(hb.begin(), n * n, 0.0);
  }
  const double divisor = phase.negative_value_divisor;
  const auto c =
      effective(phase.curie, phase.curie_coefficients, divisor, y,
                slopes ? dc.data() : nullptr, curvature ? hc.data() : nullptr, n);
  const auto b =
      effective(phase.moment, phase.moment_coefficients, divisor, y,
                slopes ? db.data() : nullptr, curvature ? hb.data() : nullptr, n);
  const auto e = magnetic_energy(t, c.value, b.value, phase.structure_factor);
  const double ec = e.c * c.slope, eb = e.b * b.slope;
  const double ecc = e.cc * c.slope * c.slope, ebb = e.bb * b.slope * b.slope;
  const double ecb = e.cb * c.slope * b.slope;
  for (std::size_t i = 0; slopes && i < n; ++i) {
    gradient[i] += ec * dc[i] + eb * db[i];
    if (!curvature) continue;
    for (std::size_t j = i; j < n; ++j)
      hessian[i * n + j] += ec * hc[i * n + j] + eb * hb[i * n + j] +
                            ecc * dc[i] * dc[j] + ebb * db[i] * db[j] +
                            ecb * (dc[i] * db[j] + db[i] * dc[j]);
  }
  return e.value;
}

void add_ideal_slopes(const CompiledPhase& phase, double rt, const double* y,
                      double* gradient, double* hessian) noexcept {
  const std::size_t n = phase.size();
  for (std::size_t i = 0; i < n; ++i) {
    const double scale = rt * phase.sites[i];
    gradient[i] += scale * (std::log(y[i]) + 1.0);
    if (hessian) hessian[i * n + i] += scale / y[i];
  }
}

void mirror(double* square, std::size_t n) noexcept {
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j) square[j * n + i] = square[i * n + j];
}

}  // namespace

double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y) noexcept {
  double value = kGasConstant * at.kelvin * mixing_sum(phase, y);
  add_polynomial(phase.energy.polynomial, at.value.data(), y,
                 {&value, nullptr, nullptr, phase.size()});
  if (phase.structure_factor > 0.0)
    value += add_magnetic(phase, at.kelvin, y, nullptr, nullptr);
  return value;
}

double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y, double* gradient, double* hessian) noexcept {
  const std::size_t n = phase.size();
  std::fill_n(gradient, n, 0.0);
  if (hessian) std::fill_n(hessian, n * n, 0.0);
  const double rt = kGasConstant * at.kelvin;
  double value = rt * mixing_sum(phase, y);
  add_polynomial(phase.energy.polynomial, at.value.data(), y,
                 {&value, gradient, hessian, n});
  add_ideal_slopes(phase, rt, y, gradient, hessian);
  if (phase.structure_factor > 0.0)
    value += add_magnetic(phase, at.kelvin, y, gradient, hessian);
  if (hessian) mirror(hessian, n);
  return value;
}

TemperatureSlopes temperature_slopes(const CompiledPhase& phase,
                                     const PhaseCoefficients& at, const double* y,
                                     double* dydt) noexcept {
  const std::size_t n = phase.size();
  TemperatureSlopes slopes{kGasConstant * mixing_sum(phase, y), 0.0};
  if (dydt) {
    for (std::size_t i = 0; i < n; ++i)
      dydt[i] = kGasConstant * phase.sites[i] * (std::log(y[i]) + 1.0);
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
  const auto c = effective(phase.curie, phase.curie_coefficients, divisor, y, dc.data(),
                           nullptr, n);
  const auto b = effective(phase.moment, phase.moment_coefficients, divisor, y,
                           db.data(), nullptr, n);
  const auto e = magnetic_energy(at.kelvin, c.value, b.value, phase.structure_factor);
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
  const auto c = effective(phase.curie, phase.curie_coefficients, divisor, y, dc.data(),
                           nullptr, n);
  const auto b = effective(phase.moment, phase.moment_coefficients, divisor, y,
                           db.data(), nullptr, n);
  const auto e = magnetic_energy(kelvin, c.value, b.value, phase.structure_factor);
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
                   y, nullptr, nullptr, phase.size())
      .value;
}

double effective_moment(const CompiledPhase& phase, const double* y) noexcept {
  if (phase.structure_factor <= 0.0) return 0.0;
  return effective(phase.moment, phase.moment_coefficients,
                   phase.negative_value_divisor, y, nullptr, nullptr, phase.size())
      .value;
}

}  // namespace gibbsteel::internal
