#pragma once
/// Constants of Eq. (H21), the curve between Vickers and Rockwell C.

namespace gibbsteel::internal {

/// HRC = kRockwellTop - kRockwellSpan / (HV + kRockwellShift): least squares on the
/// whole numbers from 20 to 68 HRC of table 1 of ASTM E140 (from memory; the table
/// stands in tests/unit/hardness_scale_test.cpp), constants rounded.
inline constexpr double kRockwellTop = 99.8;
inline constexpr double kRockwellSpan = 36700.0;
inline constexpr double kRockwellShift = 223.5;
inline constexpr double kRockwellFromHv = 238.0;  ///< 20 HRC
inline constexpr double kRockwellToHv = 940.0;    ///< 68 HRC

/// d(HRC) / d(HV).
inline constexpr double rockwell_slope(double hv) {
  return kRockwellSpan / ((hv + kRockwellShift) * (hv + kRockwellShift));
}

}  // namespace gibbsteel::internal
