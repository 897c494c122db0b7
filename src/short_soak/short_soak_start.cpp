#include "short_soak/short_soak_start.hpp"

#include <algorithm>
#include <cmath>

#include "internal/annealed_carbides.hpp"
#include "internal/candidate_phases.hpp"
#include "internal/liquid_share.hpp"
#include "internal/measured_checks.hpp"
#include "internal/number_format.hpp"
#include "internal/shared_hash.hpp"

namespace gibbsteel::internal {
namespace {

void check_state(const State& state) {
  const Occurrence matrix = state.matrix_phases().front();
  if (matrix.kind != "austenite")
    refuse_limit("state", "has a matrix of " + matrix.name,
                 "take a temperature at which it is austenite");
  if (liquid_share(state).percent > 0.0)
    refuse_limit("state", "is partly molten", "take a temperature below the solidus");
  for (const Occurrence& o : state.occurrences)
    if (o.kind == "graphite")
      refuse_limit("state", "holds graphite, and soaks of minutes are about cementite",
                   "soak without graphite (graphite=True)");
}

/// What a count would be told, and what is told instead.
void replace_warnings(ShortSoak& soak, const Warning& warning) {
  auto& list = soak.state.warnings;
  list.erase(std::remove_if(list.begin(), list.end(),
                            [](const Warning& w) {
                              return w.code == "gibbsteel.warning.345" ||
                                     w.code == "gibbsteel.warning.348";
                            }),
             list.end());
  list.insert(list.begin(), warning);
}

SharedParameters set_of(const ShortSoakLimitOptions& options) {
  return options.parameters ? options.parameters : default_parameters();
}

/// All but the shares, before anything is annealed.
ShortSoakStart unannealed(const State& state, const ShortSoakLimitOptions& options) {
  MeasuredCarbideOptions balance;
  balance.composition = CarbideSource::annealed;
  balance.unlisted = UnlistedCarbide::absent;
  balance.parameters = set_of(options);
  balance.annealing = options.annealing;
  balance.annealing.basis = VolumeBasis::room;  // as that of the state
  for (const std::string& kind : all_kinds(*balance.parameters, state.suppressed))
    if (kind != "ferrite")  // the matrix when annealed
      balance.annealing.suppressed.push_back(kind);
  Steel steel(state.analysis.given,
              {state.steel, balance.parameters, !state.analysis.bound.empty()});
  return {std::move(balance), std::move(steel), {}};
}

}  // namespace

ShortSoakStart short_soak_start(const State& state,
                                const ShortSoakLimitOptions& options) {
  check_measured(state, {{kCementite}}, shared_hash(set_of(options)));
  check_state(state);
  ShortSoakStart start = unannealed(state, options);
  const State annealed =
      annealed_state(start.steel, options.annealed_at, start.balance.annealing);
  start.shares = annealed_carbides(annealed);
  check_annealed(annealed, start.shares);
  start.balance.annealed_at = annealed.temperature;
  return start;
}

Temperature usual_annealing(const State& state, const ShortSoakLimitOptions& options) {
  check_same_set(state, shared_hash(set_of(options)));
  const ShortSoakStart start = unannealed(state, options);
  return annealed_state(start.steel, std::nullopt, start.balance.annealing).temperature;
}

void check_no_ferrite(const NamedValues& matrix, Temperature t,
                      const SharedParameters& parameters, const std::string& place,
                      const std::string& remedy) {
  SoakOptions options;
  options.phases = {"austenite", "ferrite"};
  const State found = Steel(matrix, {"", parameters, false}).soak(t, options);
  if (!found.usable())
    refuse_limit(place, "leaves a matrix that gives no usable result",
                 "change the temperature slightly");
  if (found.volume_percent_of("ferrite") > 0.0)
    refuse_limit(place,
                 "is too cold: a matrix with " + fixed(matrix["C"], 2) +
                     " wt% carbon would hold ferrite",
                 remedy);
}

void describe(ShortSoak& soak, const State& long_hold, double potential,
              const ShortSoakKind& kind) {
  SolveReport& report = soak.state.solve_report;
  report.status = kind.status;
  report.reason = kind.reason;
  soak.measured.clear();  // nothing was counted
  for (CarbideInBalance& carbide : soak.carbides) carbide.measured = false;
  const double rt = kGasConstant * long_hold.temperature.in_kelvin();
  const double above = potential - long_hold.chemical_potential["C"];
  soak.state.carbon_activity = long_hold.carbon_activity * std::exp(above / rt);
  replace_warnings(soak, kind.warning);
}

}  // namespace gibbsteel::internal
