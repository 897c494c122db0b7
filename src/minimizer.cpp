#include "gibbsteel/minimizer.hpp"

#include <chrono>
#include <cmath>
#include <numeric>

#include "internal/number_format.hpp"
#include "minimizer/phase_points.hpp"
#include "minimizer/search.hpp"

namespace gibbsteel {
namespace {

constexpr double kSumTolerance = 1e-9;

void check_input(const PhaseSystem& system, Temperature t, std::span<const double> x,
                 const SolveOptions& options) {
  auto problems = options.problems();
  const auto bad = [&](std::string what) {
    problems.push_back({"gibbsteel.input.231", "mole_fractions", std::move(what),
                        "give one number > 0 per element of the system, sum 1"});
  };
  if (x.size() != system.elements().size())
    bad("has " + std::to_string(x.size()) + " numbers for " +
        std::to_string(system.elements().size()) + " elements");
  for (std::size_t i = 0; i < x.size(); ++i)
    if (!(x[i] > 0.0) || !std::isfinite(x[i]))
      bad("number " + std::to_string(i + 1) + " is " + internal::shortest(x[i]));
  const double sum = std::accumulate(x.begin(), x.end(), 0.0);
  if (problems.empty() && std::abs(sum - 1.0) > kSumTolerance)
    bad("they sum to " + internal::shortest(sum));
  if (!(t.in_kelvin() > 0.0) || !std::isfinite(t.in_kelvin()))
    problems.push_back({"gibbsteel.input.214", "temperature",
                        "is " + internal::shortest(t.in_kelvin()) + " K",
                        "give a temperature above 0 K"});
  if (!problems.empty()) throw InputError(std::move(problems));
}

void collect(const internal::Conditions& conditions, const internal::Search& search,
             Equilibrium& result) {
  for (const auto& set : search.sets())
    result.present.push_back({set.phase, set.amount, set.y, 0.0});
  internal::sort_by_atoms(conditions, result.present);
  for (const auto& m : search.absent())
    result.absent.push_back({m.phase, 0.0, m.y, -m.d});
  result.chemical_potential = search.potentials();
  if (search.unbounded_potentials()) {
    // Nothing outside the compound limits them, and driving forces mean nothing.
    result.chemical_potential.assign(conditions.elements(), SolveReport::kUnset);
    result.absent.clear();
    result.report.unique = false;
    result.report.lowest_absent = SolveReport::kUnset;
  }
  result.gibbs_energy = internal::total_energy(conditions, search.sets());
}

}  // namespace

Equilibrium minimize(const PhaseSystem& system, Temperature t,
                     std::span<const double> mole_fractions,
                     const SolveOptions& options) {
  check_input(system, t, mole_fractions, options);
  const auto begin = std::chrono::steady_clock::now();
  Equilibrium result;
  result.temperature = t;
  auto conditions = internal::conditions_of(system, t, mole_fractions);
  if (conditions.phases.empty()) {
    result.report.status = SolveStatus::infeasible;
    result.report.reason = "none of the allowed phases can be made of these elements";
  } else {
    internal::Search search(conditions, options);
    search.run(result.report);
    if (result.report.usable()) collect(conditions, search, result);
  }
  const std::chrono::duration<double> elapsed =
      std::chrono::steady_clock::now() - begin;
  result.report.seconds = elapsed.count();
  return result;
}

}  // namespace gibbsteel
