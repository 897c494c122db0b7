#include "gibbsteel/melting.hpp"

#include <algorithm>

#include "gibbsteel/parameter_file.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/error_codes.hpp"
#include "internal/layer_remedy.hpp"
#include "internal/left_out.hpp"
#include "internal/liquid_share.hpp"
#include "internal/melting_text.hpp"
#include "internal/soak_problem.hpp"
#include "internal/temperature_text.hpp"
#include "scan/temperature_scan.hpp"

namespace gibbsteel {
namespace {

using Fields = std::vector<PhaseField>;

bool is_liquid(const std::string& kind) { return kind == internal::kLiquid; }

bool holds_liquid(const PhaseField& field) {
  return std::any_of(field.phases.begin(), field.phases.end(), is_liquid);
}

bool holds_solid(const PhaseField& field) {
  return !std::all_of(field.phases.begin(), field.phases.end(), is_liquid);
}

/// Each kind once.
std::vector<std::string> solids_of(const PhaseField& field) {
  std::vector<std::string> solids;
  for (const std::string& kind : field.phases)
    if (!is_liquid(kind) &&
        std::find(solids.begin(), solids.end(), kind) == solids.end())
      solids.push_back(kind);
  return solids;
}

/// Nothing can be hidden in it: narrow, and alike on both sides.
bool is_harmless(const PhaseChanges& changes, const PhaseGap& gap,
                 bool (*wanted)(const PhaseField&)) {
  constexpr double kNarrow = 10.0;  // [K]
  if (gap.high.in_kelvin() - gap.low.in_kelvin() > kNarrow) return false;
  std::size_t sides = 0;
  for (const PhaseField& field : changes.fields)
    if (field.high == gap.low || field.low == gap.high) {
      if (!wanted(field)) return false;
      ++sides;
    }
  return sides == 2;
}

bool is_solid(const PhaseField& field) { return !holds_liquid(field); }
bool is_molten(const PhaseField& field) { return !holds_solid(field); }

/// The state on a side of the change at an edge of a field.
State state_at(const PhaseChanges& changes, Temperature t, State PhaseChange::*side) {
  for (const PhaseChange& change : changes.changes)
    if (change.temperature == t) return change.*side;
  return {};
}

/// One end of the melting range.
enum class End { located, open, unknown };

/// The lowest field with liquid: where the first of it forms.
End take_solidus(const PhaseChanges& changes, Fields::const_iterator first,
                 MeltingRange& found) {
  const bool sure_below =
      std::all_of(changes.gaps.begin(), changes.gaps.end(), [&](const PhaseGap& gap) {
        return first->low <= gap.low || is_harmless(changes, gap, &is_solid);
      });
  if (!sure_below || first->low_edge == Edge::gap) return End::unknown;
  if (first->low_edge == Edge::range) return End::open;
  found.solidus = first->low;
  found.solids_at_solidus = solids_of(*std::prev(first));
  found.at_solidus = state_at(changes, first->low, &PhaseChange::above);
  return End::located;
}

/// The highest field with something solid: where the last of it melts.
End take_liquidus(const PhaseChanges& changes, const PhaseField& last,
                  MeltingRange& found) {
  const bool sure_above =
      changes.stopped.empty() &&
      std::all_of(changes.gaps.begin(), changes.gaps.end(), [&](const PhaseGap& gap) {
        return gap.high <= last.high || is_harmless(changes, gap, &is_molten);
      });
  if (!sure_above || last.high_edge == Edge::gap) return End::unknown;
  if (last.high_edge == Edge::range) return End::open;
  found.liquidus = last.high;
  found.primary_solids = solids_of(last);
  found.at_liquidus = state_at(changes, last.high, &PhaseChange::below);
  return End::located;
}

MeltingStatus status_of(End solidus, End liquidus) {
  if (solidus == End::unknown || liquidus == End::unknown)
    return MeltingStatus::not_known;
  if (solidus == End::located)
    return liquidus == End::located ? MeltingStatus::found
                                    : MeltingStatus::solidus_only;
  return liquidus == End::located ? MeltingStatus::liquidus_only
                                  : MeltingStatus::partly_molten;
}

MeltingStatus search(const PhaseChanges& changes, MeltingRange& found) {
  const Fields& fields = changes.fields;
  const auto first = std::find_if(fields.begin(), fields.end(), holds_liquid);
  const auto last = std::find_if(fields.rbegin(), fields.rend(), holds_solid);
  const auto throughout = [&](MeltingStatus status) {
    return changes.complete() ? status : MeltingStatus::not_known;
  };
  if (first == fields.end()) return throughout(MeltingStatus::solid);
  if (last == fields.rend()) return throughout(MeltingStatus::molten);
  const End solidus = take_solidus(changes, first, found);
  return status_of(solidus, take_liquidus(changes, *last, found));
}

/// All but the answer. @param state  of the steel, usable or not
MeltingRange blank(const State& state, const TemperatureRange& range,
                   TemperatureUnit unit) {
  MeltingRange found;
  found.steel = state.steel;
  found.range = range;
  found.analysis = state.analysis;
  found.parameters = state.parameters;
  found.temperature_unit = unit;
  return found;
}

bool tells_of_phases(const Warning& warning) {
  return warning.code == codes::kMatrixNotAustenite ||
         warning.code == codes::kPartlyMolten;
}

/// Why there is no liquid, and what to do.
std::string no_liquid(const State& low, const ParameterSet& set) {
  if (std::any_of(low.kinds.begin(), low.kinds.end(), is_liquid))
    return "liquid was not allowed to form: leave it among the phases";
  const std::string how = internal::how_to_lay(set, internal::kLiquid);
  return "the parameter file has no liquid" + (how.empty() ? "" : ": " + how);
}

/// "computed without B 2 wt%, not modelled (possible melt of ...): "; empty for most.
std::string without(const MeltingRange& found) {
  const std::string missing = internal::left_out_text(found.analysis);
  if (missing.empty()) return "";
  const auto melt = internal::possible_melt(found.analysis, found.temperature_unit);
  return "computed without " + missing + ", not modelled" +
         internal::in_brackets(melt ? melt->text : "") + ": ";
}

/// @param low,high  at the ends of what was searched
/// @param set       on which a layer with liquid would be laid
void conclude(const State& low, const State& high, const std::vector<PhaseGap>& gaps,
              const ParameterSet& set, MeltingRange& found) {
  found.text = internal::melting_text(found, no_liquid(low, set), gaps);
  if (found.status == MeltingStatus::no_liquid) return;
  found.text = without(found) + found.text;
  found.noted =
      internal::distinct_warnings({found.solidus ? &found.at_solidus : &low,
                                   found.liquidus ? &found.at_liquidus : &high});
  std::erase_if(found.noted, tells_of_phases);
}

}  // namespace

MeltingRange melting_range(const PhaseChanges& changes) {
  MeltingRange found = blank(changes.low, changes.range, changes.temperature_unit);
  found.fields = changes.fields;
  found.status = internal::may_melt(changes.low) ? search(changes, found)
                                                 : MeltingStatus::no_liquid;
  // Phase changes do not hold their parameter set: that which ships stands for it.
  conclude(changes.low, changes.high, changes.gaps, *default_parameters(), found);
  return found;
}

MeltingRange melting_range(const Steel& steel, const TemperatureRange& range,
                           const SoakOptions& soak, const SearchOptions& search) {
  internal::check_search(range, search, soak.temperature_unit);
  const State nothing = internal::SoakProblem(steel, soak).blank;
  if (internal::may_melt(nothing))
    return melting_range(phase_changes(steel, range, soak, search));
  MeltingRange found = blank(nothing, range, soak.temperature_unit);
  found.status = MeltingStatus::no_liquid;
  conclude(nothing, nothing, {}, *steel.parameters(), found);
  return found;
}

}  // namespace gibbsteel
