#include "internal/soak_warnings.hpp"

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kNoLiquidAbove = 1180.0;   ///< [C]
constexpr double kIntermetallicsBelow = 950.0;  ///< [C]
constexpr double kAnnealedBelow = 880.0;    ///< [C]

using Warnings = std::vector<Warning>;

std::string degrees(double celsius) { return fixed(celsius, 0) + " C"; }

void check_ranges(const ParameterSet& set, const State& state, Warnings& out) {
  const double kelvin = state.temperature.in_kelvin();
  if (kelvin < set.lowest_temperature || kelvin > set.highest_temperature)
    out.push_back({"gibbsteel.warning.301",
                   degrees(state.temperature.in_celsius()) +
                       " is outside the validity of the parameter file, " +
                       degrees(set.lowest_temperature - 273.15) + " to " +
                       degrees(set.highest_temperature - 273.15) + "."});
  for (const auto& [symbol, percent] : state.analysis.modelled) {
    const ElementRange* range = set.find_range(symbol);
    if (!range || (percent >= range->low && percent <= range->high)) continue;
    out.push_back({"gibbsteel.warning.302",
                   shortest(percent) + " wt% " + symbol +
                       " is outside the validity of the parameter file, " +
                       shortest(range->low) + " to " + shortest(range->high) + "."});
  }
}

std::string bound_text(const SolidusBound& bound) {
  const std::string at = degrees(bound.celsius) + " (+-" +
                         fixed(bound.uncertainty, 0) + ")";
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

void check_melting(const ParameterSet& set, const State& state, Warnings& out) {
  const double celsius = state.temperature.in_celsius();
  if (celsius > kNoLiquidAbove && !set.find_phase("liquid"))
    out.push_back({"gibbsteel.warning.303",
                   "Above 1180 C, and the parameter file has no liquid: melting is not "
                   "predicted."});
  const SolidusBound* lowest = nullptr;
  for (const SolidusBound& bound : set.solidus_bounds)
    if (celsius > bound.celsius && resembles(bound, state.analysis.modelled) &&
        (!lowest || bound.celsius < lowest->celsius))
      lowest = &bound;
  if (lowest)
    out.push_back({"gibbsteel.warning.304",
                   "The steel resembles " + lowest->steel + ", which " +
                       bound_text(*lowest) + "."});
}

void check_matrix(const State& state, Warnings& out) {
  const auto phases = state.matrix_phases();
  if (phases.size() == 1 && phases[0].kind == "austenite") return;
  std::string text;
  for (const Occurrence& o : phases)
    text += (text.empty() ? "" : " and ") + o.name + " (" + fixed(o.volume_percent, 1) +
            " vol%)";
  if (text.empty()) text = "no matrix phase at all";
  out.push_back({"gibbsteel.warning.305",
                 "The matrix is not austenite alone: " + text + "."});
}

/// The rule for sigma, Laves and mu phases is this library's own: a matrix rich in Mo, W
/// or Cr below 950 C.
void check_missing_phases(const ParameterSet& set, const State& state, Warnings& out) {
  const auto& matrix = state.matrix.weight_percent;
  const double molybdenum = matrix["Mo"] + 0.5 * matrix["W"];
  const bool rich = molybdenum > 2.0 || matrix["Cr"] > 13.0;
  if (state.temperature.in_celsius() >= kIntermetallicsBelow || !rich) return;
  for (const char* name : {"sigma", "Laves", "mu"})
    if (set.find_phase(name)) return;
  out.push_back({"gibbsteel.warning.306",
                 "The matrix holds " + fixed(matrix["Cr"], 1) + " Cr and " +
                     fixed(molybdenum, 1) +
                     " Mo + W/2 below 950 C; sigma, Laves and mu phases, which may form "
                     "there, are not in the parameter file."});
}

void check_certificate(const State& state, Warnings& out) {
  std::string names;
  for (const auto& [symbol, percent] : state.analysis.not_modelled)
    if (percent > 0.0) names += (names.empty() ? "" : ", ") + symbol;
  if (!names.empty())
    out.push_back({"gibbsteel.warning.307",
                   "Not modelled, and left out of the calculation: " + names + "."});
}

void check_volumes(const State& state, Warnings& out) {
  std::string names;
  for (const Occurrence& o : state.occurrences)
    if (std::isnan(o.molar_volume)) names += (names.empty() ? "" : ", ") + o.name;
  if (!names.empty())
    out.push_back({"gibbsteel.warning.309",
                   "The parameter file has no volume data for " + names +
                       ": volume percents are not known."});
}

/// Where the shipped file is known to be off; they do not apply to other files.
void check_weak_spots(const State& state, Warnings& out) {
  const auto& steel = state.analysis.modelled;
  const double molybdenum = steel["Mo"] + 0.5 * steel["W"];
  const double celsius = state.temperature.in_celsius();
  const auto add = [&](const char* text) {
    out.push_back({"gibbsteel.warning.310", text});
  };
  if (molybdenum > 4.0 && celsius < kAnnealedBelow)
    add("Known weak spot: in annealed high-speed steels the file does not form the "
        "M23C6 that is observed; the total carbide reads up to 4 wt% low.");
  if (molybdenum > 3.0 && steel["Si"] >= 1.0)
    add("Known weak spot: with 1 % silicon and more in a high-speed steel the file "
        "shows ferrite that is not expected.");
  if (steel["Cr"] > 15.0 && steel["V"] > 3.0)
    add("Known weak spot: in 20Cr-4V steels the file puts too much vanadium into M7C3 "
        "and shows ferrite that is not expected.");
}

}  // namespace

bool resembles(const SolidusBound& bound, const NamedValues& weight_percent) {
  const auto near = [](const std::string& symbol, double known, double given) {
    const double tolerance = symbol == "C" ? 0.15 : std::max(0.3, 0.2 * known);
    return std::abs(given - known) <= tolerance;
  };
  NamedValues known;
  for (const auto& [symbol, percent] : bound.weight_percent) {
    known.set(symbol, percent);
    if (!near(symbol, percent, weight_percent[symbol])) return false;
  }
  for (const auto& [symbol, percent] : weight_percent)
    if (symbol != "Fe" && !known.contains(symbol) && !near(symbol, 0.0, percent))
      return false;
  return true;
}

std::vector<Warning> soak_warnings(const ParameterSet& set, const State& state) {
  Warnings out;
  check_ranges(set, state, out);
  check_melting(set, state, out);
  check_certificate(state, out);
  if (!state.usable()) {
    out.push_back({"gibbsteel.warning.308",
                   "The calculation gave no usable result: " +
                       state.solve_report.brief() + "."});
    return out;
  }
  check_matrix(state, out);
  check_missing_phases(set, state, out);
  check_volumes(state, out);
  check_weak_spots(state, out);
  return out;
}

}  // namespace gibbsteel::internal
