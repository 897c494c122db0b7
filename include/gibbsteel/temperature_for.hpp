#pragma once
/// At which temperatures a number of the state has a given value, and how surely.
///
/// Where the parameter file states standard deviations of its numbers
/// (parameter_band.hpp), they move a temperature at which a quantity q has its value,
/// to first order, by
///   sd(T) = sd(q - target) / |dq/dT|                                         Eq. (B8)
/// the standard deviation above by Eq. (U5). A target that is the value of another soak
/// moves with the same numbers (matching_temperature.hpp); one that was typed does not.
/// Numbers without a standard deviation count as exact: it is at least that much. No
/// more than kFarthestUncertainty is told: slopes do not hold far away.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/phase_changes.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel {

/// [K], own choice
inline constexpr double kFarthestUncertainty = 50.0;

/// Only ever appended.
enum class TargetStatus {
  found,           ///< see `crossings` (and `equal`)
  never_reached,   ///< the whole range is known, and the value does not occur
  always_equal,    ///< the quantity has the value everywhere in the range
  not_computable,  ///< the quantity has no value anywhere in the range
  not_known,       ///< none found, but a part of the range is not known
  jumps_over,      ///< the value does not occur: every crossing is a jump across it
};
std::string_view to_string(TargetStatus) noexcept;

/// Only ever appended.
enum class CrossingKind {
  crossing,  ///< the quantity has the value at this temperature
  /// It jumps across the value, where phases react: the ends of the closed bracket
  /// still differ, see `below`, `above`.
  jump,
};
std::string_view to_string(CrossingKind) noexcept;

struct Crossing {
  Temperature temperature = Temperature::kelvin(0.0);
  double bracket_width = 0.0;  ///< [K]
  CrossingKind kind = CrossingKind::crossing;
  bool rising = true;               ///< the quantity grows with temperature
  double value = 0.0;               ///< of `state`
  double below = 0.0, above = 0.0;  ///< of the quantity at the ends of the bracket
  State state;  ///< the soak at this temperature; for a jump that below it
  /// One standard deviation of the temperature by Eq. (B8) [K]: it is at least that
  /// unsure. NaN for a jump, where a phase comes or goes within 0.1 K, where the file
  /// states nothing that the quantity depends on, and for a quantity that may rest on
  /// more than the soak (Quantity::may_rest_on_more()).
  double uncertainty_at_least = Occurrence::kUnknown;
  /// Of the quantity [unit/K]; NaN for a jump, and where it is not known.
  double slope = Occurrence::kUnknown;
  Quantity::Ends band;  ///< Quantity::band() of `state`: what a measurement may be
};

/// A value, and the temperature of its soak.
struct ValueAt {
  double value = Occurrence::kUnknown;
  Temperature temperature = Temperature::kelvin(0.0);
  bool operator==(const ValueAt&) const = default;
};

struct TemperatureSearch {
  std::string steel;
  std::string quantity;  ///< name of the quantity
  std::string unit;
  double target = 0.0;
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  TargetStatus status = TargetStatus::not_known;
  std::vector<Crossing> crossings;      ///< upwards
  std::vector<TemperatureRange> equal;  ///< where it has the value throughout, upwards
  ValueAt lowest, highest;              ///< of all soaks of the search
  std::vector<PhaseGap> gaps;           ///< upwards: nothing is known there
  std::size_t soaks = 0;
  std::string stopped;  ///< why the range is not searched to its end; else empty
  std::string text;     ///< one sentence: the answer, or why there is none
  MillAnalysis analysis;
  std::string parameters;
  State low, high;                   ///< at the ends of what was searched
  bool by_family = false;            ///< as Quantity::by_family()
  std::vector<Warning> of_quantity;  ///< Quantity::warnings() of those states
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
  /// Upwards: where soaks are known and the quantity has no value, and why ("no
  /// austenite"). Between two soaks without a value none is looked for.
  std::vector<PhaseGap> no_value;
  /// Where the value is never reached, of the soak that comes nearest: between which a
  /// measurement should lie there (Quantity::band()). Else NaN.
  Quantity::Ends band_of_nearest;

  /// True when nothing in the range is unknown.
  bool complete() const noexcept { return gaps.empty() && stopped.empty(); }
  /// The distinct warnings of the crossings and of the quantity there; where there are
  /// none, of `low` and `high`. With by_family also that the steel is near a border of
  /// its family (gibbsteel.warning.335).
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table, warnings and cautions
};

/// All temperatures in the range at which the quantity has the value, located to a
/// hundredth of `search.tolerance`. The range is first searched for phase changes (see
/// phase_changes.hpp). Between two of them the quantity is smooth, and soaks are added
/// until its values and slopes leave no room for a crossing that was not found: only a
/// pair of crossings closer together than the tolerance, or a value that is touched and
/// not crossed, can be missed. A jump in there is located to a third of it.
/// @throws InputError gibbsteel.input.252 (value not finite), .340 (value that no state
///         can have), .205, .206 (see Quantity::problems()), and as phase_changes()
TemperatureSearch temperature_for(const Steel& steel, const Quantity& quantity,
                                  double value, const TemperatureRange& range,
                                  const SoakOptions& soak = {},
                                  const SearchOptions& search = {});

}  // namespace gibbsteel
