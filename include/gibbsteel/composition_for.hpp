#pragma once
/// How much of one element, balance Fe, gives a number of the state a wanted value.

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "gibbsteel/temperature_for.hpp"

namespace gibbsteel {

/// Of one element [wt%].
struct WeightPercentRange {
  double low = 0.0, high = 0.0;  ///< 0 <= low < high <= 100
  bool operator==(const WeightPercentRange&) const = default;
};

struct CompositionSearchOptions {
  /// The search starts from this many equal steps of the range, in [4, 10000]. Between
  /// them amounts and driving forces are followed by their slopes, and soaks are added
  /// wherever a phase may appear or vanish.
  std::size_t steps = 40;
  double tolerance = 1e-4;  ///< of the result [wt%], in [1e-8, 1]
  /// The search stops there and says so, >= 10.
  std::size_t most_soaks = 20000;
  /// Called after each soak with the number done; return false to stop.
  std::function<bool(std::size_t)> progress;
};

/// A composition at which the quantity has the value, or jumps across it.
struct CompositionCrossing {
  double weight_percent = 0.0;
  double bracket_width = 0.0;  ///< [wt%]
  CrossingKind kind = CrossingKind::crossing;
  bool rising = true;               ///< the quantity grows with the element
  double value = 0.0;               ///< of `state`
  double below = 0.0, above = 0.0;  ///< of the quantity at the ends of the bracket
  State state;  ///< the soak at this composition; for a jump that with less
  double slope = Occurrence::kUnknown;  ///< as Crossing::slope [unit/wt%]
  Quantity::Ends band;                  ///< as Crossing::band
};

/// A value, and the weight percent it belongs to.
struct ValueAtPercent {
  double value = Occurrence::kUnknown;
  double weight_percent = Occurrence::kUnknown;
  bool operator==(const ValueAtPercent&) const = default;
};

/// Weight percents of which nothing is known, or where there is no value.
struct PercentGap {
  double low = 0.0, high = 0.0;
  std::string reason;
  bool operator==(const PercentGap&) const = default;
};

struct CompositionSearch {
  std::string steel;
  std::string element;
  std::string quantity;  ///< name of the quantity
  std::string unit;
  double target = 0.0;
  Temperature temperature = Temperature::kelvin(0.0);
  WeightPercentRange range;
  TargetStatus status = TargetStatus::not_known;
  std::vector<CompositionCrossing> crossings;  ///< upwards
  std::vector<WeightPercentRange>
      equal;                       ///< where it has the value throughout, upwards
  ValueAtPercent lowest, highest;  ///< of all soaks of the search
  std::vector<PercentGap> gaps;    ///< upwards: nothing is known there
  std::size_t soaks = 0;
  std::string stopped;    ///< why the range is not searched to its end; else empty
  std::string text;       ///< one sentence: the answer, or why there is none
  MillAnalysis analysis;  ///< of the steel that was started from
  std::string parameters;
  State low, high;                   ///< at the ends of what was searched
  bool by_family = false;            ///< as Quantity::by_family()
  std::vector<Warning> of_quantity;  ///< Quantity::warnings() of those states
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
  std::vector<PercentGap> no_value;  ///< as TemperatureSearch::no_value
  Quantity::Ends band_of_nearest;    ///< as of a TemperatureSearch

  /// True when nothing in the range is unknown.
  bool complete() const noexcept { return gaps.empty() && stopped.empty(); }
  /// The distinct warnings of the crossings and of the quantity there; where there are
  /// none, of `low` and `high`. With by_family also where the family of the steel
  /// changes in the range (gibbsteel.warning.357), and each state near such a border
  /// (.335).
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table, warnings and cautions
};

/// All weight percents of the element in the range at which the quantity has the value,
/// at this temperature; the other elements keep their weight percents, Fe is the
/// balance. Phase changes along the way are found as in phase_changes.hpp, crossings
/// between them as in temperature_for.hpp, with the same limits.
/// @throws InputError with every problem: gibbsteel.input.268 (element, range, options,
///         or an element that is tied up by tramp elements in a part of the range),
///         .252 (value not finite), .340 (value that no state can have), .210
///         (temperature), .205, .206 (see Quantity::problems()); and as Steel::soak()
CompositionSearch composition_for(const Steel& steel, const std::string& element,
                                  const Quantity& quantity, double value,
                                  const WeightPercentRange& range, Temperature t,
                                  const SoakOptions& soak = {},
                                  const CompositionSearchOptions& search = {});

}  // namespace gibbsteel
