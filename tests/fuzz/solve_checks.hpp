#pragma once
/// What holds for every result of the minimizer, usable or not.

#include <algorithm>
#include <cmath>
#include <span>
#include <vector>

#include "gibbsteel/minimizer.hpp"
#include "input_bytes.hpp"
#include "promises.hpp"

namespace gibbsteel::fuzz {

inline constexpr double kBalance = 1e-10;  ///< largest relative error of an element

/// A proof with a small budget where the next byte asks for one.
inline SolveOptions proven_now_and_then(InputBytes& bytes, SolveOptions options) {
  if (bytes.byte() % 4 != 1) return options;
  options.certify = Certificate::proof;
  options.proof_boxes = 50;
  return options;
}

/// Site fractions from 0 to 1 that sum to 1 on every sublattice.
inline void check_fractions(const PhaseModel& phase, const std::vector<double>& y) {
  promise(y.size() == phase.constituents().size(), "one site fraction per constituent");
  std::vector<double> sums;
  for (std::size_t i = 0; i < y.size(); ++i) {
    promise(y[i] >= 0.0 && y[i] <= 1.0, "a site fraction is from 0 to 1");
    const std::size_t s = phase.constituents()[i].sublattice;
    sums.resize(std::max(sums.size(), s + 1), 0.0);
    sums[s] += y[i];
  }
  for (const double sum : sums)
    promise(std::abs(sum - 1.0) < 1e-9, "site fractions sum to 1");
}

/// Atoms of every element in what is present, held against the overall composition.
inline void check_balance(const PhaseSystem& system, std::span<const double> overall,
                          const Equilibrium& result) {
  std::vector<double> held(overall.size(), 0.0);
  double sum = 0.0;
  for (const double x : overall) sum += x;
  for (const PhasePoint& point : result.present) {
    const PhaseModel& phase = system.phases().at(point.phase);
    promise(point.amount > 0.0 && std::isfinite(point.amount),
            "a phase that is present has an amount");
    check_fractions(phase, point.y);
    for (std::size_t i = 0; i < point.y.size(); ++i) {
      const int element = phase.constituents()[i].element;
      if (element >= 0)
        held[static_cast<std::size_t>(element)] +=
            point.amount * phase.sites(i) * point.y[i];
    }
  }
  for (std::size_t e = 0; e < held.size(); ++e)
    promise(std::abs(held[e] * sum / overall[e] - 1.0) <= kBalance,
            "the elements are balanced");
}

/// The potentials are finite numbers on which the energy lies, or all unknown.
inline void check_potentials(std::span<const double> overall,
                             const Equilibrium& result) {
  const auto& mu = result.chemical_potential;
  promise(mu.size() == overall.size(), "one potential per element");
  if (std::all_of(mu.begin(), mu.end(), [](double m) { return std::isnan(m); })) {
    promise(!result.report.unique, "potentials that are unknown are said to be");
    return;
  }
  double plane = 0.0, size = 1.0;
  for (std::size_t e = 0; e < mu.size(); ++e) {
    promise(std::isfinite(mu[e]), "a potential is finite");
    plane += overall[e] * mu[e];
    size = std::max(size, std::abs(overall[e] * mu[e]));
  }
  promise(std::abs(plane - result.gibbs_energy) <= 1e-6 + 1e-8 * size,
          "the energy lies on the plane of the potentials");
}

inline void check_result(const PhaseSystem& system, std::span<const double> overall,
                         const Equilibrium& result, const SolveOptions& options = {}) {
  const SolveReport& report = result.report;
  promise(!report.reason.empty() && !report.brief().empty(), "a report gives a reason");
  promise(report.status != SolveStatus::not_run, "a result has a status");
  if (!report.usable()) {
    promise(report.status != SolveStatus::converged, "what is not usable is flagged");
    promise(result.present.empty() && result.chemical_potential.empty() &&
                std::isnan(result.gibbs_energy),
            "a result that failed holds no numbers");
    promise(std::isnan(report.proven_gap), "a result that failed is not proven");
    return;
  }
  promise(std::isfinite(result.gibbs_energy), "the energy is finite");
  promise(!result.present.empty(), "something is present");
  promise(std::isnan(report.lowest_absent) ||
              report.lowest_absent >= -options.stability_tolerance,
          "nothing is left below the plane");
  const bool proven = report.certificate == Certificate::proof ||
                      report.certificate == Certificate::covered;
  promise(std::isfinite(report.proven_gap) == proven, "a gap stands for a proof");
  check_balance(system, overall, result);
  check_potentials(overall, result);
  for (const PhasePoint& point : result.absent) {
    check_fractions(system.phases().at(point.phase), point.y);
    promise(point.driving_force <= options.stability_tolerance,
            "a phase that is absent has no driving force");
  }
}

}  // namespace gibbsteel::fuzz
