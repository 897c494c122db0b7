#pragma once
/// Between which temperatures a steel melts: solidus and liquidus.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/phase_changes.hpp"

namespace gibbsteel {

/// How far computed solidus and liquidus were from published ones [K], rounded up; own
/// judgement, from the records of tests/reference/liquid_layer: high-speed steels melt
/// 20 to 30 K lower than computed, Fe-C 15 K. Nothing published is at hand of
/// matrix-type, hot-work and cold-work steels.
inline constexpr double kSolidusError = 30.0;
inline constexpr double kLiquidusError = 15.0;

/// Only ever appended.
enum class MeltingStatus {
  found,          ///< solidus and liquidus
  solidus_only,   ///< partly solid still at the high end of the range
  liquidus_only,  ///< partly molten already at the low end of the range
  partly_molten,  ///< at both ends of the range
  solid,          ///< no liquid anywhere in the range
  molten,         ///< nothing solid anywhere in the range
  no_liquid,      ///< the parameter set has no liquid, or it was not allowed to form
  not_known,      ///< a gap, or the search was stopped; what is sure is there
};
std::string_view to_string(MeltingStatus) noexcept;

/// Long-hold limit of the mean composition. A cast or segregated steel begins to melt
/// lower (incipient melting), and so does one with P, S or B, which are not modelled:
/// with much of them the text begins with that (gibbsteel.warning.318).
struct MeltingRange {
  std::string steel;
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  MeltingStatus status = MeltingStatus::not_known;
  std::optional<Temperature> solidus;   ///< the first liquid forms on heating
  std::optional<Temperature> liquidus;  ///< the last solid is gone
  /// Kinds just below the solidus; empty without one.
  std::vector<std::string> solids_at_solidus;
  /// Kinds that melt last, the first to form on cooling; empty without a liquidus.
  std::vector<std::string> primary_solids;
  State at_solidus;                ///< just above: it holds the first liquid
  State at_liquidus;               ///< just below: it holds the last solid
  std::vector<PhaseField> fields;  ///< of the whole range, upwards
  /// The distinct warnings of both states, or of the end of the range that stands for
  /// one that is not found; but for those that tell of liquid and of the matrix:
  /// `fields` have both.
  std::vector<Warning> noted;
  std::string text;  ///< one sentence: the answer, or why there is none
  MillAnalysis analysis;
  std::string parameters;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  const std::vector<Warning>& warnings() const noexcept { return noted; }
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table, warnings and cautions
};

/// Of phase changes that were found before.
MeltingRange melting_range(const PhaseChanges& changes);

/// By phase_changes(): what is said there of what it cannot see holds here.
/// @throws InputError as phase_changes()
MeltingRange melting_range(const Steel& steel, const TemperatureRange& range,
                           const SoakOptions& soak = {},
                           const SearchOptions& search = {});

}  // namespace gibbsteel
