#pragma once
/// Gibbs energy of a compiled phase, Eq. (G1): value and derivatives on caller-owned
/// memory. Pure functions, no allocation, no throw.

#include "internal/compiled_phase.hpp"

namespace gibbsteel::internal {

/// G(y) [J/mol of formula units].
double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y) noexcept;

/// G(y), gradient (length n) and, unless null, the full symmetric Hessian (n x n).
double gibbs_energy(const CompiledPhase& phase, const PhaseCoefficients& at,
                    const double* y, double* gradient, double* hessian) noexcept;

/// dG/dT, d2G/dT2 and, unless null, d2G/dydT (length n) at constant y.
struct TemperatureSlopes {
  double dt = 0.0;
  double dt2 = 0.0;
};
TemperatureSlopes temperature_slopes(const CompiledPhase& phase,
                                     const PhaseCoefficients& at, const double* y,
                                     double* dydt) noexcept;

enum class MagneticPart { curie, moment };

/// dG/dp for a coefficient p of the Curie temperature or the moment.
/// @param polynomial  P(y), which p multiplies, and its gradient (length n)
/// @param dydp        d2G/dydp, length n
double magnetic_parameter_slope(const CompiledPhase& phase, double kelvin,
                                const double* y, MagneticPart part, double polynomial,
                                const double* gradient, double* dydp) noexcept;

/// Effective Curie temperature [K] and moment; 0 for a phase without magnetism.
double effective_curie(const CompiledPhase& phase, const double* y) noexcept;
double effective_moment(const CompiledPhase& phase, const double* y) noexcept;

}  // namespace gibbsteel::internal
