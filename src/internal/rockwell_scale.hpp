#pragma once
/// Constants of Eq. (H21), the curve between Vickers and Rockwell C.

namespace gibbsteel::internal {

/// HRC = kRockwellTop - kRockwellSpan / (HV + kRockwellShift): least squares on the
/// whole numbers from 20 to 68 HRC of table 1 of ASTM E140 (from memory; the table
/// stands in tests/unit/hardness_scale_test.cpp), constants rounded.
inline constexpr double kRockwellTop = 99.8;
inline constexpr double kRockwellSpan = 36700.0;
inline constexpr double kRockwellShift = 223.5;
inline constexpr double kRockwellToHv = 940.0;  ///< 68 HRC in the table
inline constexpr double kRockwellFrom = 20.0;   ///< [HRC], 238 HV in the table
inline constexpr double kRockwellTo = 68.3;     ///< [HRC], of 940 HV on the curve

/// Eq. (H21), wherever it is asked for.
inline constexpr double rockwell_of(double hv) {
  return kRockwellTop - kRockwellSpan / (hv + kRockwellShift);
}
/// The same, solved for HV.
inline constexpr double vickers_of(double hrc) {
  return kRockwellSpan / (kRockwellTop - hrc) - kRockwellShift;
}

/// d(HRC) / d(HV).
inline constexpr double rockwell_slope(double hv) {
  return kRockwellSpan / ((hv + kRockwellShift) * (hv + kRockwellShift));
}

}  // namespace gibbsteel::internal
