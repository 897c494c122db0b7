#pragma once
/// How sure a result is, given what the parameter file says of its own numbers.
///
/// A file may state a standard deviation for a coefficient or a volume, and how two
/// coefficients vary together (thermo_data/README.md). With the exact derivatives
/// s_i = dq/dp_i of a quantity (sensitivities.hpp)
///   variance = sum_i sum_j s_i sd_i r_ij sd_j s_j                            Eq. (U5)
/// r_ij correlation, 1 for i = j, 0 where the file says nothing (law of propagation for
/// correlated inputs, JCGM 100:2008 section 5.2, from memory). Numbers without a
/// standard deviation count as exact, so a band is what the stated part of the
/// uncertainty does, not all of it. The file that ships states the standard deviations
/// of the numbers that were calibrated (31, of W, Mo, Cr and V in M6C, M23C6, MC and
/// matrix); warning.356 names the phases of a steel that none of them is about.
///
/// Samples draw all uncertain numbers from normal distributions with these
/// correlations: p = p0 + sd S z, S the symmetric square root of r, z independent
/// normal numbers from the points of tolerance.hpp.

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "gibbsteel/band.hpp"
#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// Inputs are the places of the uncertain numbers in the file. Contribution::share is
/// that number's part of Eq. (U5) and may be negative where correlations cancel. There
/// are no corners.
struct ParameterBand : Band {
  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables with units, warnings and cautions
};

struct ParameterBandOptions {
  SoakOptions soak;
  std::size_t samples = 0;  ///< 0 to 1000000: each makes a parameter set of its own
  std::uint64_t seed = 1;
  std::vector<double> percentiles{5.0, 50.0, 95.0};  ///< ascending, each in (0, 100)
  std::size_t threads = 0;                           ///< as ToleranceOptions::threads
  std::function<bool(std::size_t)> progress;         ///< as ToleranceOptions::progress
};

/// @param quantities  default_quantities() of the nominal state when empty
/// @throws InputError gibbsteel.input.276 (options), .279 (the set states no standard
///         deviation, or more than samples can be drawn for), .210 (temperature),
///         .205, .206 (see Quantity::problems())
ParameterBand parameter_band(const Steel& steel, Temperature t,
                             const std::vector<Quantity>& quantities = {},
                             const ParameterBandOptions& options = {});

}  // namespace gibbsteel
