#include "internal/soak_warnings.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "internal/certificate_warnings.hpp"
#include "internal/error_codes.hpp"
#include "internal/family_borders.hpp"
#include "internal/layer_remedy.hpp"
#include "internal/liquid_share.hpp"
#include "internal/missing_carbon.hpp"
#include "internal/number_format.hpp"
#include "internal/solidus_bounds.hpp"
#include "internal/temperature_text.hpp"
#include "internal/unit_hint.hpp"
#include "internal/weak_spots.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kNoLiquidAbove = 1180.0;       ///< [C]
constexpr double kIntermetallicsBelow = 950.0;  ///< [C]
/// Pure ferrite above is that of a steel that does not harden [C].
constexpr double kAnnealedBelow = 912.0;

using Warnings = std::vector<Warning>;

TemperatureRange validity(const ParameterSet& set) {
  return {Temperature::kelvin(set.lowest_temperature),
          Temperature::kelvin(set.highest_temperature)};
}

/// " Did you mean 2050 F (1121 C)? It was given as 2050 K."
std::string hint_on_unit(const ParameterSet& set, Temperature t, TemperatureUnit unit) {
  std::string hint = unit_hint(t, unit, validity(set));
  if (hint.empty()) return hint;
  hint.front() = 'D';
  if (unit != TemperatureUnit::celsius)
    hint += " It was given as " + as_given(t, unit) + ".";
  return " " + hint;
}

void check_ranges(const ParameterSet& set, const State& state, TemperatureUnit unit,
                  Warnings& out) {
  const TemperatureRange valid = validity(set);
  if (state.temperature < valid.low || state.temperature > valid.high)
    out.push_back({"gibbsteel.warning.301",
                   "The temperature is outside the validity of the parameter file, " +
                       degrees(valid.low, unit) + " to " + degrees(valid.high, unit) +
                       "." + hint_on_unit(set, state.temperature, unit)});
  for (const auto& [symbol, percent] : state.analysis.modelled) {
    const ElementRange* range = set.find_range(symbol);
    if (!range || (percent >= range->low && percent <= range->high)) continue;
    out.push_back({"gibbsteel.warning.302",
                   shortest(percent) + " wt% " + symbol +
                       " is outside the validity of the parameter file, " +
                       shortest(range->low) + " to " + shortest(range->high) + "."});
  }
}

std::string bound_text(const SolidusBound& bound, TemperatureUnit unit) {
  const Temperature t = Temperature::celsius(bound.celsius);
  const std::string at = unit == TemperatureUnit::celsius
                             ? degrees(t) + " (+-" + fixed(bound.uncertainty, 0) + ")"
                             : degrees_with_error(t, bound.uncertainty, unit);
  switch (bound.sense) {
    case SolidusSense::at_least:
      return "is known to be free of melt only up to " + at;
    case SolidusSense::at_most:
      return "has been seen to melt at " + at;
    case SolidusSense::measured:
      break;
  }
  return "begins to melt at " + at;
}

/// " With more carbon than that this steel may melt 14 C sooner."
std::string carbon_text(const SolidusBound& bound, const NamedValues& steel) {
  const double sooner = sooner_by_carbon(bound, steel);
  if (sooner < 0.5) return "";
  return " With more carbon than that this steel may melt " + fixed(sooner, 0) +
         " C sooner.";
}

void check_melting(const ParameterSet& set, const State& state, TemperatureUnit unit,
                   Warnings& out) {
  const double celsius = state.temperature.in_celsius();
  if (celsius > kNoLiquidAbove && !set.find_phase(kLiquid))
    out.push_back({"gibbsteel.warning.303",
                   "Above " + degrees(Temperature::celsius(kNoLiquidAbove), unit) +
                       ", and the parameter file has no liquid: melting is not "
                       "predicted." +
                       layer_remedy(set, kLiquid)});
  const NamedValues& steel = state.analysis.modelled;
  const auto bounds = resembling(set.solidus_bounds, steel);
  // Where the start of melting was measured, what is free of melt adds nothing.
  const bool measured = std::any_of(bounds.begin(), bounds.end(), [](const auto* b) {
    return b->sense == SolidusSense::measured;
  });
  const SolidusBound* worst = nullptr;
  for (const SolidusBound* bound : bounds)
    if (celsius > least_solidus(*bound, steel) && (is_seen(*bound) || !measured) &&
        (!worst || weighs_more(*bound, *worst, steel)))
      worst = bound;
  if (worst)
    out.push_back({"gibbsteel.warning.304", "The steel resembles " + worst->steel +
                                                ", which " + bound_text(*worst, unit) +
                                                "." + carbon_text(*worst, steel)});
}

bool can_hold(const Phase& phase, const std::string& symbol) {
  for (const Sublattice& sublattice : phase.sublattices) {
    const auto& names = sublattice.constituents;
    if (std::find(names.begin(), names.end(), symbol) != names.end()) return true;
  }
  return false;
}

/// Liquid is that close to forming [J/mol of atoms]: 30 to 60 C for steels, which gain
/// 4 to 9 J/mol of atoms in a degree there.
constexpr double kCloseToMelting = -270.0;

void check_near_melting(const State& state, Warnings& out) {
  if (!state.driving_force.contains(kLiquid)) return;
  if (state.driving_force[kLiquid] <= kCloseToMelting) return;
  out.push_back({"gibbsteel.warning.317",
                 "Close to melting: within 60 C of the computed solidus, which may be "
                 "30 C too high, and below which carbide streaks melt."});
}

/// Above that temperature [C], and from these weight percents on, an element that is
/// not modelled brings melt below the computed solidus. Own judgement.
constexpr double kMeltersAbove = 1100.0;
constexpr std::pair<const char*, double> kMelters[] = {
    {"B", 0.005}, {"P", 0.05}, {"S", 0.05}};

void check_missing_in_liquid(const Phase& model, const State& state, Warnings& out) {
  if (state.temperature.in_celsius() <= kMeltersAbove) return;
  std::string missing;
  const auto add = [&](const std::string& symbol) {
    missing += (missing.empty() ? "" : ", ") + symbol;
  };
  for (const auto& [symbol, percent] : state.analysis.modelled)
    if (percent > 0.0 && !can_hold(model, symbol)) add(symbol);
  for (const auto& [symbol, least] : kMelters)
    if (state.analysis.not_modelled[symbol] >= least) add(symbol);
  if (!missing.empty())
    out.push_back({"gibbsteel.warning.316",
                   "The liquid of the parameter file cannot hold " + missing +
                       ": the steel melts lower than predicted. Read a computed "
                       "solidus and liquidus as upper limits."});
}

void check_liquid(const ParameterSet& set, const State& state, Warnings& out) {
  const KindShare liquid = liquid_share(state);
  if (liquid.percent > 0.0)
    out.push_back(melting_warning(liquid, liquid));
  else
    check_near_melting(state, out);
  if (const Phase* model = set.find_phase(kLiquid))
    check_missing_in_liquid(*model, state, out);
}

/// Without amounts, so that a sweep can say it once for many soaks.
void check_matrix(const State& state, Warnings& out) {
  std::string names;
  std::size_t count = 0, austenites = 0;
  for (const Occurrence& o : state.occurrences) {
    if (o.role != Role::matrix) continue;
    ++count;
    austenites += o.kind == "austenite" ? 1u : 0u;
    names += (names.empty() ? "" : " and ") + o.name;
  }
  if (count == 1 && austenites == 1) return;
  const bool annealed =
      names == "ferrite" && state.temperature.in_celsius() < kAnnealedBelow;
  std::string text = "The matrix is not austenite alone: " + names + ".";
  if (names.empty()) text = "There is no matrix phase at all.";
  if (annealed)
    text = "The matrix is ferrite: below the hardening range (annealed condition).";
  out.push_back({"gibbsteel.warning.305", text});
}

/// The rule for sigma, Laves and mu phases is this library's own: below 950 C, a matrix
/// with more than 2 wt% of Mo + W/2 or more than 13 wt% Cr. It looks at the matrix, not
/// at the steel, because what the carbides hold cannot form these phases: a lean-carbon
/// alloy trips it sooner than a tool steel of the same alloy content.
void check_missing_phases(const ParameterSet& set, const State& state, Warnings& out) {
  const auto& matrix = state.matrix.weight_percent;
  const double molybdenum = matrix["Mo"] + 0.5 * matrix["W"];
  const bool rich = molybdenum > 2.0 || matrix["Cr"] > 13.0;
  if (state.temperature.in_celsius() >= kIntermetallicsBelow || !rich) return;
  for (const char* name : {"sigma", "Laves", "mu"})
    if (set.find_phase(name)) return;
  out.push_back(
      {"gibbsteel.warning.306",
       "The matrix holds more than 13 wt% Cr or 2 wt% Mo + W/2. Below 950 C sigma, "
       "Laves or mu phase may form from it; they are not in the parameter file."});
}

void check_unique(const State& state, Warnings& out) {
  if (!state.solve_report.unique)
    out.push_back({"gibbsteel.warning.311",
                   "The equilibrium leaves amounts or chemical potentials free; one of "
                   "the possible answers is shown."});
}

void check_volumes(const State& state, Warnings& out) {
  std::string names;
  for (const Occurrence& o : state.occurrences)
    if (std::isnan(o.molar_volume)) names += (names.empty() ? "" : ", ") + o.name;
  if (!names.empty())
    out.push_back(
        {"gibbsteel.warning.309", "The parameter file has no volume data for " + names +
                                      ": volume percents are not known."});
}

}  // namespace

/// Silicon [wt%] from which graphite forms in practice: O6 and A10 have it by design.
/// Own judgement.
constexpr double kGraphitizes = 0.8;

void check_graphite(const State& state, Warnings& out) {
  const double silicon = state.analysis.modelled["Si"];
  const bool allowed = state.driving_force.contains("graphite");
  if (allowed || silicon < kGraphitizes || !(state.carbon_activity > 1.0)) return;
  out.push_back({"gibbsteel.warning.359",
                 "Carbon activity " + fixed(state.carbon_activity, 2) + " with " +
                     shortest(silicon) +
                     " wt% Si: graphite may form in place of cementite, as in "
                     "graphitic tool steels. It was not allowed here."});
}

std::vector<Warning> soak_warnings(const ParameterSet& set, const State& state,
                                   TemperatureUnit unit) {
  Warnings out;
  add_distinct(missing_carbon(state.analysis), out);
  check_ranges(set, state, unit, out);
  check_melting(set, state, unit, out);
  check_certificate(set, state.analysis, unit, out);
  if (!state.usable()) {
    out.push_back({"gibbsteel.warning.308",
                   "The calculation gave no usable result: " +
                       std::string(to_string(state.solve_report.status)) + " (" +
                       state.solve_report.reason + ")."});
    return out;
  }
  check_unique(state, out);
  check_liquid(set, state, out);
  if (!liquid_share(state).nothing_else) check_matrix(state, out);
  check_missing_phases(set, state, out);
  check_volumes(state, out);
  check_graphite(state, out);
  check_weak_spots(set, state, out);
  return out;
}

void ask_for_celsius(Temperature given, TemperatureUnit unit,
                     std::vector<Warning>& warnings) {
  constexpr double kColdest = 800.0, kHottest = 1250.0;  // of hardening [C]
  const double number = given.in_fahrenheit();
  if (unit != TemperatureUnit::fahrenheit || number < kColdest || number > kHottest)
    return;
  for (Warning& warning : warnings) {
    if (warning.code == codes::kTemperatureOutside) return;  // asks by itself
    if (warning.code == codes::kMatrixNotAustenite)
      warning.text += " Did you mean " +
                      as_given(Temperature::celsius(number), TemperatureUnit::celsius) +
                      "? It was given as " + as_given(given, unit) + ".";
  }
}

}  // namespace gibbsteel::internal
