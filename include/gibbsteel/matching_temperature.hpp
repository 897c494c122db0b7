#pragma once
/// The temperature at which another steel has the same matrix carbon, or the same value
/// of any quantity, as a given soak: where the two can be compared fairly.

#include "gibbsteel/temperature_for.hpp"

namespace gibbsteel {

struct MatchingTemperature {
  State reference;
  double value = 0.0;        ///< of the quantity in `reference`
  TemperatureSearch search;  ///< of the other steel, see there for the status
  /// The distinct warnings of the reference, then those of the search; also that the
  /// two steels are of different families, when the quantity rests on them
  /// (gibbsteel.warning.357).
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< both steels, warnings and cautions
};

/// All temperatures in the range at which `other` has the reference's value.
/// Matrix carbon is quantities::matrix("C"), carbide volume is
/// quantities::carbide_volume_percent(), ...
///
/// Crossing::uncertainty_at_least: the numbers of the file move both steels. NaN when
/// the reference is a short soak, was made with another file, or with other options
/// than `soak` (then its value does not come out again).
/// @throws InputError gibbsteel.input.253 (the reference is not usable or has no such
///         value), and as temperature_for()
MatchingTemperature matching_temperature(const State& reference, const Steel& other,
                                         const Quantity& quantity,
                                         const TemperatureRange& range,
                                         const SoakOptions& soak = {},
                                         const SearchOptions& search = {});

}  // namespace gibbsteel
