#include "internal/soak_problem.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/curve_value.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/candidate_phases.hpp"
#include "internal/kind_names.hpp"
#include "internal/number_format.hpp"
#include "internal/soak_warnings.hpp"
#include "internal/state_totals.hpp"
#include "internal/temperature_functions.hpp"
#include "internal/unit_hint.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kLowest = 300.0, kHighest = 2500.0;  ///< of a soak [K]

/// Soaks that somebody may mean: wide, so that a hint is given for all of them.
constexpr TemperatureRange kMeant{Temperature::celsius(600.0),
                                  Temperature::celsius(1600.0)};

/// "is 3033.1 K = 2760.0 C"; what was given in F is told in F.
std::string refused(Temperature t, TemperatureUnit unit) {
  if (std::isnan(t.in_kelvin())) return "is nan K = nan C";
  const bool in_f = unit == TemperatureUnit::fahrenheit;
  return "is " + fixed(in_f ? t.in_fahrenheit() : t.in_kelvin(), 1) +
         (in_f ? " F = " : " K = ") + fixed(t.in_celsius(), 1) + " C";
}

/// curve_value() with the curves that the phases were compiled with.
double reference_energy(const PhaseSystem& system, const Element& element,
                        double kelvin) {
  const auto& curves = system.parameters().curves;
  const auto found = std::find_if(
      curves.begin(), curves.end(),
      [&](const Curve& curve) { return curve.name == element.reference_curve; });
  if (found == curves.end())  // a set made by hand: it says so
    return curve_value(system.parameters(), element.reference_curve,
                       Temperature::kelvin(kelvin));
  const CurveTable& table = system.phases().front().curves();
  std::vector<TemperatureValue> values(table.size());
  table.evaluate(TemperaturePowers(kelvin), values);
  return values[static_cast<std::size_t>(found - curves.begin())].value;
}

double carbon_activity(const PhaseSystem& system, const Equilibrium& result) {
  const auto& elements = system.elements();
  const auto at = std::find(elements.begin(), elements.end(), "C");
  const Element* carbon = system.parameters().find_element("C");
  if (!carbon || at == elements.end()) return Occurrence::kUnknown;
  const auto e = static_cast<std::size_t>(at - elements.begin());
  const double kelvin = result.temperature.in_kelvin();
  const double graphite = reference_energy(system, *carbon, kelvin);
  return std::exp((result.chemical_potential[e] - graphite) / (kGasConstant * kelvin));
}

NamedValues named(const std::vector<std::string>& names,
                  const std::vector<double>& numbers) {
  NamedValues values;
  values.reserve(names.size());
  for (std::size_t i = 0; i < names.size(); ++i) values.append(names[i], numbers[i]);
  return values;
}

void fill_results(const PhaseSystem& system, const Equilibrium& result, State& state) {
  state.occurrences = occurrences(system, result, state.basis);
  fill_totals(state);
  state.gibbs_energy = result.gibbs_energy;
  state.carbon_activity = carbon_activity(system, result);
  state.chemical_potential = named(system.elements(), result.chemical_potential);
  state.driving_force = driving_forces(system, result);
}

/// Phase models of the file that are no candidates.
std::vector<std::string> left_out(const ParameterSet& set, const SoakOptions& chosen) {
  const auto candidates = candidate_phases(set, chosen);
  std::vector<std::string> names;
  for (const Phase& phase : set.phases)
    if (std::find(candidates.begin(), candidates.end(), phase.name) == candidates.end())
      names.push_back(phase.name);
  return names;
}

}  // namespace

bool is_soak_temperature(Temperature t) noexcept {
  return t.in_kelvin() >= kLowest && t.in_kelvin() <= kHighest;
}

Temperature highest_soak_temperature() noexcept {
  return Temperature::kelvin(kHighest);
}

void check_temperatures(std::span<const Temperature> temperatures,
                        TemperatureUnit unit) {
  std::vector<Problem> problems;
  for (const Temperature t : temperatures) {
    if (is_soak_temperature(t)) continue;
    const std::string hint = unit_hint(t, unit, kMeant);
    problems.push_back({"gibbsteel.input.210", "temperature", refused(t, unit),
                        hint + (hint.empty() ? "" : " ") +
                            "give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and "
                            "check the unit"});
  }
  if (!problems.empty()) throw InputError(std::move(problems));
}

SoakProblem::SoakProblem(const Steel& steel, const SoakOptions& chosen)
    : system(steel.parameters(), steel.elements(),
             candidate_phases(*steel.parameters(), chosen)),
      mole_fractions(steel.mole_fractions()),
      options(chosen) {
  if (options.prove_every < 1)
    throw InputError({{"gibbsteel.input.232", "prove_every",
                       "is " + std::to_string(options.prove_every), "give 1 or more"}});
  blank = blank_state(*steel.parameters(), steel.parameters_hash(), chosen);
  blank.steel = steel.name();
  blank.analysis = steel.analysis();
}

Equilibrium SoakProblem::solve(Temperature t) const {
  return minimize(system, t, mole_fractions, options.solve);
}

Equilibrium SoakProblem::solve_unproven(Temperature t) const {
  SolveOptions chosen = options.solve;
  chosen.certify = Certificate::many_starts;
  return minimize(system, t, mole_fractions, chosen);
}

State SoakProblem::state_of(const Equilibrium& result) const {
  State state = blank;
  fill_state(system, result, state, options.temperature_unit);
  return state;
}

State blank_state(const ParameterSet& set, std::string hash,
                  const SoakOptions& chosen) {
  State blank;
  blank.basis = chosen.basis;
  blank.parameters = set.title();
  blank.parameters_hash = std::move(hash);
  blank.kinds = kind_names(set);
  blank.suppressed = left_out(set, chosen);
  return blank;
}

void fill_state(const PhaseSystem& system, const Equilibrium& result, State& state,
                TemperatureUnit unit) {
  state.temperature = result.temperature;
  state.solve_report = result.report;
  if (result.report.usable()) fill_results(system, result, state);
  state.warnings = soak_warnings(system.parameters(), state, unit);
}

}  // namespace gibbsteel::internal
