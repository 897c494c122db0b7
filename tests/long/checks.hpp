#pragma once
/// Judges of a result that share nothing with the certificate but the energies.

#include <random>
#include <span>
#include <vector>

#include "gibbsteel/minimizer.hpp"

namespace gibbsteel::long_run {

/// Energies that should obey an inequality may miss it by this much [J/mol of atoms]:
/// what the stability tolerance of the minimizer leaves.
inline constexpr double kTolerance = 1e-3;

/// Largest relative error of an element: amounts times formulas against `x`.
double balance_error(const PhaseSystem& system, const Equilibrium& result,
                     std::span<const double> x);

/// mu . x [J/mol of atoms]: the tangent plane of the result at a composition.
double plane(const Equilibrium& result, std::span<const double> x);

/// Energy of the same amounts and site fractions at another temperature [J/mol of
/// atoms]: a bound from above for the lowest energy there.
double energy_carried_over(const PhaseSystem& system, const Equilibrium& result,
                           Temperature t);

/// Lowest D [J/mol of atoms] found below the plane of the result from random starts in
/// every phase (gamma-distributed site fractions: well mixed to nearly pure), 0 when
/// none lies below.
double deep_search(const PhaseSystem& system, const Equilibrium& result,
                   std::span<const double> x, int starts_per_phase,
                   std::mt19937_64& random);

}  // namespace gibbsteel::long_run
