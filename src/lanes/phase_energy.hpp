#pragma once
/// Gibbs energy of a compiled phase, Eq. (G1), in any number type: value, gradient and
/// upper triangle of the Hessian on caller-owned memory.

#include "internal/compiled_phase.hpp"
#include "lanes/magnetic_energy.hpp"
#include "lanes/polynomial.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// Room for the derivatives of Curie temperature and moment.
template <class Real>
struct MagneticRoom {
  Real *curie = nullptr, *moment = nullptr;                  ///< length n each
  Real *curie_hessian = nullptr, *moment_hessian = nullptr;  ///< n x n each
};

/// A negative Curie temperature or moment counts as its magnitude over a divisor; the
/// slope is that of this effective value in the raw one.
template <class Real>
struct Effective {
  Real value{}, slope{};
};

template <class Real>
Effective<Real> effective(const Real& raw, double divisor) noexcept {
  const Real slope = raw >= 0.0 ? Real{} + 1.0 : Real{} - 1.0 / divisor;
  return {raw * slope, slope};
}

template <class Real>
Real magnetic_value(const CompiledPhase& phase, double t, const Real* y) noexcept {
  const auto at = [&](const Polynomial& polynomial, const std::vector<double>& c) {
    return effective(polynomial_value(polynomial, c.data(), y),
                     phase.negative_value_divisor)
        .value;
  };
  const Real curie = at(phase.curie, phase.curie_coefficients);
  const Real moment = at(phase.moment, phase.moment_coefficients);
  return magnetic_energy(t, curie, moment, phase.structure_factor).value;
}

/// Adds the magnetic part to gradient and the upper triangle of the Hessian (unless
/// null). @return its value
template <class Real>
Real add_magnetic(const CompiledPhase& phase, double t, const Real* y,
                  const SlopesOf<Real>& out, const MagneticRoom<Real>& room) noexcept {
  const std::size_t n = phase.size();
  const auto at = [&](const Polynomial& polynomial, const std::vector<double>& c,
                      Real* gradient, Real* hessian) {
    set_zero(gradient, n);
    if (out.hessian) set_zero(hessian, n * n);
    return effective(add_polynomial(polynomial, c.data(), y,
                                    {gradient, out.hessian ? hessian : nullptr, n}),
                     phase.negative_value_divisor);
  };
  const Real *dc = room.curie, *db = room.moment;
  const Real *hc = room.curie_hessian, *hb = room.moment_hessian;
  const auto c =
      at(phase.curie, phase.curie_coefficients, room.curie, room.curie_hessian);
  const auto b =
      at(phase.moment, phase.moment_coefficients, room.moment, room.moment_hessian);
  const auto e = magnetic_energy(t, c.value, b.value, phase.structure_factor);
  const Real ec = e.c * c.slope, eb = e.b * b.slope;
  const Real ecc = e.cc * c.slope * c.slope, ebb = e.bb * b.slope * b.slope;
  const Real ecb = e.cb * c.slope * b.slope;
  for (std::size_t i = 0; i < n; ++i) {
    out.gradient[i] += ec * dc[i] + eb * db[i];
    if (!out.hessian) continue;
    const Real by_c = ecc * dc[i] + ecb * db[i], by_b = ebb * db[i] + ecb * dc[i];
    for (std::size_t j = i; j < n; ++j)
      out.hessian[i * n + j] +=
          ec * hc[i * n + j] + eb * hb[i * n + j] + by_c * dc[j] + by_b * db[j];
  }
  return e.value;
}

/// sum a_i y_i ln y_i
template <class Real>
Real mixing_sum(const CompiledPhase& phase, const Real* y) noexcept {
  const std::size_t n = phase.size();
  Real sum{};
  if (all_normal(y, n)) {
    for (std::size_t i = 0; i < n; ++i)
      sum += phase.sites[i] * (y[i] * logarithm_of_normal(y[i]));
    return sum;
  }
  const Real zero{};
  for (std::size_t i = 0; i < n; ++i) {
    const Real term = y[i] * logarithm(y[i]);
    sum += phase.sites[i] * (y[i] > 0.0 ? term : zero);
  }
  return sum;
}

/// The same, with R T times its derivatives added to `out`.
template <class Real>
Real add_mixing(const CompiledPhase& phase, double rt, const Real* y,
                const SlopesOf<Real>& out) noexcept {
  const Real zero{};
  const bool normal = all_normal(y, phase.size());
  Real sum{};
  for (std::size_t i = 0; i < phase.size(); ++i) {
    const Real log = normal ? logarithm_of_normal(y[i]) : logarithm(y[i]);
    const Real term = y[i] * log;
    const double scale = rt * phase.sites[i];
    sum += phase.sites[i] * (y[i] > 0.0 ? term : zero);
    out.gradient[i] += scale * (log + 1.0);
    if (out.hessian) out.hessian[i * out.n + i] += scale / y[i];
  }
  return sum;
}

/// G(y) [J/mol of formula units].
template <class Real>
Real energy_value(const CompiledPhase& phase, const PhaseCoefficients& at, double rt,
                  const Real* y) noexcept {
  Real value = rt * mixing_sum(phase, y);
  value += polynomial_value(phase.energy.polynomial, at.value.data(), y);
  if (phase.structure_factor > 0.0) value += magnetic_value(phase, at.kelvin, y);
  return value;
}

/// G(y), its gradient (length n) and the upper triangle of the Hessian (n x n, unless
/// null) in `out`.
template <class Real>
Real energy_with_slopes(const CompiledPhase& phase, const PhaseCoefficients& at,
                        double rt, const Real* y, const SlopesOf<Real>& out,
                        const MagneticRoom<Real>& room) noexcept {
  const std::size_t n = phase.size();
  set_zero(out.gradient, n);
  if (out.hessian) set_zero(out.hessian, n * n);
  const Real polynomial =
      add_polynomial(phase.energy.polynomial, at.value.data(), y, out);
  Real value = rt * add_mixing(phase, rt, y, out) + polynomial;
  if (phase.structure_factor > 0.0)
    value += add_magnetic(phase, at.kelvin, y, out, room);
  return value;
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
