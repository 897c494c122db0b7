#include "long/cold_conditions.hpp"

#include <cmath>

#include "long/checks.hpp"

namespace gibbsteel::long_run {
namespace {

class ColdGroup {
 public:
  ColdGroup(const SharedParameters& set, std::size_t number, const ColdOptions& options)
      : number_(number),
        options_(options),
        group_(group(*set, number)),
        system_(set, group_.steels[0].elements, testing::phases_without_graphite(*set)),
        t_(Temperature::celsius(group_.steels[0].celsius)) {}

  Outcome run() {
    for (std::size_t k = 0; k < group_.steels.size(); ++k) solve(k);
    judge_convexity();
    for (std::size_t k = 0; k < group_.steels.size(); ++k) {
      if (!results_[k].report.usable()) continue;
      if (is_due(k, options_.proof_every)) judge_by_proof(k);
      if (is_due(k, options_.deep_every)) judge_by_search(k);
    }
    return std::move(outcome_);
  }

 private:
  const std::vector<double>& x(std::size_t k) const { return group_.steels[k].x; }

  /// Every so many-th condition; which member of a group it is moves on.
  bool is_due(std::size_t k, std::size_t every) const {
    return every > 0 && (number_ * (kGroupSize + 1) + k) % every == 0;
  }

  void wrong(std::size_t k, std::string what, double depth) {
    outcome_.wrong.push_back({number_, k, std::move(what), depth});
  }

  void solve(std::size_t k) {
    const double begin = thread_seconds();
    results_.push_back(minimize(system_, t_, x(k)));
    const Equilibrium& result = results_.back();
    if (!count(result, number_, k, group_.draw, x(k).size(), thread_seconds() - begin,
               outcome_))
      return;
    const double balance = balance_error(system_, result, x(k));
    outcome_.worst_balance = std::max(outcome_.worst_balance, balance);
    if (!(balance <= 1e-10)) wrong(k, "element balance", balance);
    if (!std::isfinite(result.chemical_potential[0])) return;
    const double gap = std::abs(result.gibbs_energy - plane(result, x(k)));
    outcome_.worst_gap = std::max(outcome_.worst_gap, gap);
    if (!(gap <= 1e-6)) wrong(k, "energy is not on its own plane", gap);
  }

  /// G_j >= mu_i . x_j for every pair.
  void judge_convexity() {
    for (std::size_t i = 0; i < results_.size(); ++i) {
      if (!results_[i].report.usable() ||
          !std::isfinite(results_[i].chemical_potential[0]))
        continue;
      for (std::size_t j = 0; j < results_.size(); ++j) {
        if (j == i || !results_[j].report.usable()) continue;
        const double margin = results_[j].gibbs_energy - plane(results_[i], x(j));
        outcome_.judges["convexity"].hear(margin);
        if (!(margin >= -kTolerance))
          wrong(i, "condition " + std::to_string(j) + " lies below its plane", margin);
      }
    }
  }

  /// The search goes on when its proof finds a phase below the plane: then the energy
  /// falls, or it says that it failed.
  void judge_by_proof(std::size_t k) {
    SolveOptions proving;
    proving.certify = Certificate::proof;
    proving.proof_boxes = options_.proof_boxes;
    proving.proof_seconds = options_.proof_seconds;
    const double begin = thread_seconds();
    const Equilibrium proven = minimize(system_, t_, x(k), proving);
    outcome_.proof_seconds.push_back(thread_seconds() - begin);
    if (!proven.report.usable()) {
      ++outcome_.proofs["found a phase below the plane"];
      wrong(k, "proof: " + proven.report.reason, 0.0);
      return;
    }
    const bool done = proven.report.certificate == Certificate::proof;
    if (done)
      ++outcome_.proofs["proven"];
    else
      ++outcome_.proofs[proven.report.proof.find("time budget") != std::string::npos
                            ? "not proven: time budget"
                        : proven.report.proof.find("box") != std::string::npos
                            ? "not proven: box budget"
                            : proven.report.proof];
    const double fall = proven.gibbs_energy - results_[k].gibbs_energy;
    outcome_.judges["proof"].hear(fall);
    if (!(fall >= -kTolerance)) wrong(k, "the proof led to a lower energy", fall);
  }

  void judge_by_search(std::size_t k) {
    if (!std::isfinite(results_[k].chemical_potential[0])) return;
    std::mt19937_64 random(7u + 31u * number_ + k);
    const double lowest =
        deep_search(system_, results_[k], x(k), options_.deep_starts, random);
    outcome_.judges["random starts"].hear(lowest);
    if (!(lowest >= -kTolerance)) wrong(k, "random starts: a phase below", lowest);
  }

  std::size_t number_;
  ColdOptions options_;
  Group group_;
  PhaseSystem system_;
  Temperature t_;
  std::vector<Equilibrium> results_;
  Outcome outcome_;
};

}  // namespace

Outcome cold_group(const SharedParameters& set, std::size_t number,
                   const ColdOptions& options) {
  return ColdGroup(set, number, options).run();
}

}  // namespace gibbsteel::long_run
