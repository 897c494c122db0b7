#pragma once
/// The whole search: cold start, refinement, certificate, and back when a phase lies
/// below the plane.

#include "gibbsteel/minimizer.hpp"
#include "minimizer/certificate.hpp"
#include "minimizer/two_level_newton.hpp"
#include "proof/plane_proof.hpp"

namespace gibbsteel::internal {

class Search {
 public:
  Search(Conditions& conditions, const SolveOptions& options);
  /// Fills the report (status, certificate, residuals, counts).
  void run(SolveReport& report);

  const std::vector<PhaseSet>& sets() const noexcept { return sets_; }
  const std::vector<double>& potentials() const noexcept { return mu_; }
  const std::vector<AbsentMinimum>& absent() const noexcept { return absent_; }
  bool unbounded_potentials() const noexcept {
    return generation_.program().unbounded_potentials();
  }

 private:
  bool start(SolveReport& report);
  bool refine_from_program();
  bool refine_without_one();
  bool improves(const std::vector<PhaseSet>& sets, const std::vector<double>& mu,
                double before, const AbsentMinimum& below) const;
  bool refine_lower(std::vector<PhaseSet> sets, const AbsentMinimum& below);
  bool refine_in_place_of_one(const AbsentMinimum& below);
  bool refine_with(const std::vector<AbsentMinimum>& violations);
  bool refine_again(const std::vector<AbsentMinimum>& violations);
  bool certify(SolveReport& report);
  bool glance();
  bool test();
  bool prove();
  bool split_unstable();
  void add_columns(const std::vector<AbsentMinimum>& violations);
  std::vector<AbsentMinimum> violations() const;
  void finish(SolveReport& report);

  Conditions& conditions_;
  const SolveOptions& options_;
  ColumnGeneration generation_;
  std::vector<PhaseSet> sets_;
  std::vector<double> mu_;
  std::vector<AbsentMinimum> absent_;
  Refinement last_;
  PlaneProof proof_;
  int newton_steps_ = 0;
  double condition_number_ = SolveReport::kUnset;
};

}  // namespace gibbsteel::internal
