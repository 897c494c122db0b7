#pragma once
/// Where on the way up in temperature phases appear and disappear.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/search_options.hpp"
#include "gibbsteel/steel.hpp"
#include "gibbsteel/temperature_range.hpp"

namespace gibbsteel {

/// One or several phases appear or disappear. All words are those of heating.
struct PhaseChange {
  Temperature temperature = Temperature::kelvin(0.0);  ///< middle of the bracket
  double bracket_width = 0.0;  ///< [K]: `below` and `above` are that far apart
  std::vector<std::string> appears, disappears;  ///< kinds
  /// Several phases change at one temperature, and amounts jump: a reaction.
  bool invariant = false;
  std::string text;  ///< "727 C on heating: ferrite + M3C -> austenite (invariant)"
  State below, above;
  /// One standard deviation of the temperature [K], Eq. (B8) of temperature_for.hpp of
  /// the driving force of the phase on the side where it is absent: it is at least that
  /// unsure. No more than the fields beside it reach, beyond which slopes are others.
  /// NaN where several phases change, and where the file states nothing that it depends
  /// on.
  double uncertainty_at_least = Occurrence::kUnknown;
};

/// What ends a field or the presence of a kind.
enum class Edge {
  change,  ///< a phase change: the temperature is located
  range,   ///< the end of the range that was searched (or where the search stopped)
  gap,     ///< temperatures at which nothing is known
};

std::string_view to_string(Edge) noexcept;

/// A stretch of temperatures with one set of phases.
struct PhaseField {
  Temperature low = Temperature::kelvin(0.0), high = Temperature::kelvin(0.0);
  Edge low_edge = Edge::range, high_edge = Edge::range;
  /// Kinds; two occurrences of a kind are listed twice. Order of the parameter file.
  std::vector<std::string> phases;
  bool operator==(const PhaseField&) const = default;
};

/// Temperatures at which the calculation gave no usable result.
struct PhaseGap {
  Temperature low = Temperature::kelvin(0.0), high = Temperature::kelvin(0.0);
  std::string reason;
  bool operator==(const PhaseGap&) const = default;
};

/// A temperature that exists, or the reason why not.
struct TransformationLimit {
  std::optional<Temperature> temperature;
  std::string text;
  bool operator==(const TransformationLimit&) const = default;
};

/// Only ever appended.
enum class DissolutionStatus {
  found,          ///< gone above `temperature`, up to the high end of the range
  never_present,  ///< nowhere in the range
  still_present,  ///< at the high end of the range
  not_known,      ///< a gap, or the search was stopped
};
std::string_view to_string(DissolutionStatus) noexcept;

/// The temperature above which a kind of phase is gone.
struct Dissolution {
  std::string kind;
  DissolutionStatus status = DissolutionStatus::not_known;
  std::optional<Temperature> temperature;  ///< when found
  std::vector<PhaseField> intervals;       ///< where the kind is present, lowest first
  std::string text;                        ///< one sentence: the answer, or why none
  std::string steel;
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  MillAnalysis analysis;
  std::string parameters;
  /// The distinct ones on both sides of the answer; where there is none, of the ends of
  /// what was searched.
  std::vector<Warning> warnings;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
  /// Of `temperature`, as PhaseChange::uncertainty_at_least.
  double uncertainty_at_least = Occurrence::kUnknown;

  std::string brief() const;  ///< one line
  std::string full() const;   ///< the answer, warnings and cautions
};

struct PhaseChanges {
  std::string steel;
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  double tolerance = 0.0;            ///< [K]
  std::vector<PhaseChange> changes;  ///< upwards
  std::vector<PhaseField> fields;    ///< upwards
  std::vector<PhaseGap> gaps;        ///< upwards
  /// Austenite first forms on heating, and the last ferrite is gone: start and finish
  /// of the range of transformation. Acm: cementite (M3C) is gone, above Ae3.
  TransformationLimit ae1, ae3, acm;
  State low, high;        ///< at the ends of what was searched
  std::size_t soaks = 0;  ///< that the search took
  std::string stopped;    ///< why it does not reach the end of the range; else empty
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  /// True when nothing in the range is unknown.
  bool complete() const noexcept { return gaps.empty() && stopped.empty(); }
  /// Kinds that are present anywhere, in the order of the parameter file.
  std::vector<std::string> kinds() const;
  /// Where a kind is present. @throws InputError gibbsteel.input.205
  std::vector<PhaseField> intervals(std::string_view kind) const;
  /// @throws InputError gibbsteel.input.205
  Dissolution dissolution(std::string_view kind) const;
  /// The distinct warnings of all states here.
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table, warnings and cautions
};

/// Finds all phase changes in the range: soaks at every `search.node_spacing`, more
/// wherever values and slopes of amounts and driving forces leave room for a phase that
/// comes and goes in between. What it cannot see: a pair of changes closer together
/// than the tolerance, and a phase of which no trace (no local minimum of its energy
/// above the tangent plane) exists at the soaks on either side.
///
/// Long-hold limit; a shop heating cycle lags behind it by tens of degrees.
/// @throws InputError gibbsteel.input.210, .250 (range), .251 (options), and as
///         Steel::soak()
PhaseChanges phase_changes(const Steel& steel, const TemperatureRange& range,
                           const SoakOptions& soak = {},
                           const SearchOptions& search = {});

/// phase_changes().dissolution(): the kind is checked first.
Dissolution dissolution_temperature(const Steel& steel, const std::string& kind,
                                    const TemperatureRange& range,
                                    const SoakOptions& soak = {},
                                    const SearchOptions& search = {});

}  // namespace gibbsteel
