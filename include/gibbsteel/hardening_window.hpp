#pragma once
/// Between which temperatures a steel can be hardened, by rules that the user chooses.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/phase_changes.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel {

/// Every rule must hold all over the window.
struct WindowRules {
  /// The matrix is without ferrite.
  bool no_ferrite = true;
  /// What shall have a least value; quantities::hardness_hrc() when only the value is
  /// given. Not a rule without the value, and refused then.
  std::optional<Quantity> hardness;
  std::optional<double> least_hardness;  ///< in the unit of the quantity: else HRC
  /// The carbide that keeps austenite grains small; empty: all carbides together.
  /// Refused without the volume.
  std::string pinning_kind;
  /// Its least volume percent, above 0; not a rule when not given.
  std::optional<double> least_pinning_volume_percent;
  /// Distance from the start of melting [K], >= 0: from what a similar steel was seen
  /// to melt at (the lower end of its error bar), and from the computed solidus where
  /// the parameter set has a liquid (the lower end of its error bar, kSolidusError,
  /// where nothing is known of a similar steel). Both are rules; the stricter one wins.
  /// What a similar steel is known to be free of melt at needs no distance: the window
  /// ends at the low end of its error bar, 150 K sooner for each weight percent of
  /// carbon that this steel holds more.
  double solidus_margin = 30.0;
};

/// What sets an end of the window. Only ever appended.
enum class WindowRule {
  range,     ///< no rule: the end of the range that was searched
  ferrite,   ///< ferrite goes (or comes back)
  hardness,  ///< the quantity passes its least value
  pinning,   ///< the pinning carbide passes its least volume
  solidus,   ///< what is known of the melting of a similar steel
  unknown,   ///< temperatures beyond are not known
  melting,   ///< the computed solidus, less the margin
  left_out,  ///< melt that an element may bring that is not modelled
};
std::string_view to_string(WindowRule) noexcept;

/// Only ever appended.
enum class WindowStatus {
  found,
  no_window,  ///< no temperature in the range keeps all rules
  not_known,  ///< none found, but a part of the range is not known
};
std::string_view to_string(WindowStatus) noexcept;

/// Where one rule holds, or all of them.
struct WindowSpan {
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  WindowRule floor = WindowRule::range, ceiling = WindowRule::range;
  bool operator==(const WindowSpan&) const = default;
};

/// One rule, and where it holds.
struct RuleSpans {
  WindowRule rule = WindowRule::range;
  std::string text;               ///< "no ferrite", "M6C at least 2 vol%"
  std::vector<WindowSpan> spans;  ///< upwards
  bool operator==(const RuleSpans&) const = default;
};

struct HardeningWindow {
  std::string steel;
  TemperatureRange range{Temperature::kelvin(0.0), Temperature::kelvin(0.0)};
  WindowStatus status = WindowStatus::not_known;
  /// Of the lowest window; `spans` holds all of them. None for an end that no rule
  /// sets: the rules hold up to the end of `range` there.
  std::optional<Temperature> floor, ceiling;
  WindowRule floor_rule = WindowRule::unknown, ceiling_rule = WindowRule::unknown;
  std::vector<WindowSpan> spans;
  std::vector<RuleSpans> rules;
  /// Soaks there, or at the end of `range`; not run when there is no window,
  /// but with what they would have stood on.
  State at_floor, at_ceiling;
  std::vector<PhaseGap> gaps;  ///< what is not known and left out, upwards
  /// What is left out, and what no rule looks at: grain growth above all.
  std::vector<std::string> remarks;
  std::string text;  ///< one sentence: the answer, or why there is none
  MillAnalysis analysis;
  std::string parameters;
  bool by_family = false;            ///< the hardness is, as Quantity::by_family()
  std::vector<Warning> of_hardness;  ///< its Quantity::warnings() at both ends
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  /// The distinct ones of both soaks and of the hardness there; with by_family also
  /// that the steel is near a border of its family (gibbsteel.warning.335); and that it
  /// holds much of what is not modelled (.318), window or none.
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< rules, soaks at both ends, warnings and cautions
};

/// The floor is where the last ferrite is gone, or where the hardness is reached; the
/// ceiling is where the pinning carbide is too little, or the known start of melting of
/// a similar steel less a margin (bounds of the parameter set; common practice, no
/// source), or where such a steel is known to be free of melt, or the computed solidus
/// less that margin, looked for beyond the range too. Temperatures of long-hold
/// equilibrium: a shop soak of minutes dissolves less. Grain growth is looked at by the
/// least volume of carbide only, hardness by its least value only: without them the
/// remarks say so. Where there is no austenite a steel does not harden, and a least
/// value of a hardening estimate is not kept.
/// @throws InputError gibbsteel.input.254 (rules), .285 (half a rule), .205 (pinning
///         kind), .205, .206 of the hardness (see Quantity::problems()), and as
///         phase_changes()
HardeningWindow hardening_window(const Steel& steel, const WindowRules& rules,
                                 const TemperatureRange& range,
                                 const SoakOptions& soak = {},
                                 const SearchOptions& search = {});

}  // namespace gibbsteel
