#pragma once
/// Vickers and Rockwell C, and the hardness of a mixture.

#include <string_view>

namespace gibbsteel {

/// HRC = 99.8 - 36700 / (HV + 223.5), Eq. (H21): own fit to the table of ASTM E140
/// for non-austenitic steels (from memory), within 0.3 HRC of it for 238 to 940 HV,
/// which is 20 to 68 HRC. NaN where the result is not 20 to 68.3 HRC, the ends of the
/// table as the curve has them: below 236.4 and above 941.6 HV. HardeningEstimates go
/// on along the curve above 68.3 HRC; a value there, not a high end, says so.
double hrc_from_hv(double hv);
/// The same, solved for HV; NaN outside 20 to 68.3 HRC.
double hv_from_hrc(double hrc);

/// HV = (1 - f_c) [(1 - f_g) HV_M + f_g 250] + f_c HV_c, Eq. (H20): own estimate.
/// @param martensite  HV_M
/// @param austenite   f_g, retained austenite as a fraction of the matrix
/// @param carbide     f_c, fraction of the steel
/// @param carbide_hv  HV_c
/// @return            [HV]; NaN when a hardness is negative or not finite, or a
/// fraction
///                    is outside [0, 1]
double mixture_hardness(double martensite, double austenite, double carbide,
                        double carbide_hv);

/// Eq. (H20) as it is used for estimates: the mean of not counting the carbide and of
/// counting at most 12 % of it, because large carbides do not add to an indentation in
/// proportion (own estimate). @see mixture_hardness
double quenched_hardness(double martensite, double austenite, double carbide,
                         double carbide_hv);

/// Hardness of a kind of carbide [HV]: M3C 1100, MC 2600, all others 1500. Common
/// practice, no source.
/// @throws InputError gibbsteel.input.205: not a carbide of the shipped parameter file
double carbide_hardness(std::string_view kind);

inline constexpr double kAusteniteHardness = 250.0;  ///< [HV], 200 to 300 are seen
inline constexpr double kFerriteHardness = 200.0;    ///< [HV], own estimate

}  // namespace gibbsteel
