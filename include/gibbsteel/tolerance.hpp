#pragma once
/// How sure a result is, given what a heat, a furnace and segregation do.
///
/// Every input scatters by itself. An element varies at the cost of Fe, the balance.
///
/// First order, from the exact derivatives s_i = dq/dx_i at the nominal heat x0
/// (law of propagation, JCGM 100:2008 section 5.1, from memory):
///   mean = q0 + sum_i s_i (m_i - x0_i),   variance = sum_i s_i^2 sd_i^2      Eq. (U1)
/// with mean m_i and standard deviation sd_i of the input; linear extremes take the end
/// of each range that the sign of s_i asks for.
///
/// A standard deviation given by the user is that of a normal distribution around the
/// nominal value, cut at 0 and at six standard deviations, and drawn from u in (0, 1):
///   x = m + sd F^-1(F(a) + u (F(b) - F(a)))                                  Eq. (U2)
/// F normal distribution function, a and b the cuts in standard deviations. A range is
/// uniform. For corners, the box of a standard deviation ends at two of them.
///
/// Samples are points of a Sobol sequence (Sobol, USSR Comput. Math. Math. Phys. 7
/// (1967) 86, from memory) with a seeded digital shift, so that each point is uniform.
/// Percentiles of n sorted values interpolate linearly (type 7 of Hyndman & Fan, Am.
/// Stat. 50 (1996) 361, from memory):
///   r = p/100 (n - 1), k = floor(r), q = v[k] + (r - k) (v[k+1] - v[k])      Eq. (U3)
///
/// Segregation: at one place of the ingot or bar all substitutional alloying elements
/// are s percent richer (or poorer) together. Carbon is mobile and evens out its
/// activity between such places in any soak, so the truth is to choose the carbon of
/// the place such that
///   a_C(place) = a_C(heat)   at the soak temperature                         Eq. (U4)
/// (Darken, Trans. AIME 180 (1949) 430, from memory). It draws carbon towards carbide
/// formers and away from Si, Ni and Co. Two approximations can be chosen instead. N, B,
/// O and H are left as they are.

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"
#include "gibbsteel/tolerance_band.hpp"

namespace gibbsteel {

/// Range of one element [weight percent].
struct ElementLimits {
  std::string symbol;
  double low = 0.0, high = 0.0;
  bool operator==(const ElementLimits&) const = default;
};

/// What scatters. An element stands in one of the two lists only.
struct HeatTolerances {
  /// Limits of a grade or of a purchase, uniform within; must hold the nominal value.
  std::vector<ElementLimits> ranges;
  /// Scatter of a mill certificate, by symbol [weight percent], > 0.
  NamedValues standard_deviations;
  /// Furnace error, plus or minus [C or K], uniform; 0 to 200.
  double furnace_error = 0.0;
  /// Local segregation, plus or minus [percent of each alloy content], uniform; 0 to
  /// 90.
  double segregation_percent = 0.0;
};

struct ToleranceOptions {
  SoakOptions soak;
  std::size_t samples = 256;  ///< 0 to 1000000; powers of two fill the box most evenly
  std::uint64_t seed = 1;     ///< of the digital shift; the same seed, the same samples
  std::vector<double> percentiles{5.0, 50.0, 95.0};  ///< ascending, each in (0, 100)
  bool corners = true;                               ///< search the worst corners
  SegregatedCarbon segregated_carbon = SegregatedCarbon::equal_activity;
  /// Soaks at the same time; 0: as many as the machine has cores. The result does not
  /// depend on it, to the last bit.
  std::size_t threads = 0;
  /// Called now and then by the calling thread with the number of samples done; return
  /// false to stop: the band then holds the part that is done and says so.
  std::function<bool(std::size_t)> progress;
};

/// Carbon in the matrix, all carbide, each kind of carbide, graphite and liquid that it
/// holds [vol%; mass% without volume data], and each alloying element in the matrix.
std::vector<Quantity> default_quantities(const State& state);

/// The band of every quantity.
/// @param quantities  default_quantities() of the nominal state when empty. They are
///                    evaluated by the calling thread.
/// @throws InputError with every problem of the arguments: gibbsteel.input.201, .270
///         (a range), .271 (an element twice), .272 (nominal value outside), .273 (Fe),
///         .274 (a standard deviation), .275 (furnace, segregation), .276 (options),
///         .277 (nothing scatters), .278 (high ends above 100 wt% together), .210
///         (temperature with its error), .205, .206 (see Quantity::problems())
ToleranceBand tolerance_band(const Steel& steel, Temperature t,
                             const HeatTolerances& tolerances,
                             const std::vector<Quantity>& quantities = {},
                             const ToleranceOptions& options = {});

}  // namespace gibbsteel
