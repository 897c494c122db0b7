#include "minimizer/two_level_system.hpp"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr double kRankTolerance = 1e-13;

Eigen::Index index(std::size_t i) { return static_cast<Eigen::Index>(i); }

}  // namespace

void TwoLevelSystem::evaluate_energies(const Conditions& conditions,
                                       const std::vector<PhaseSet>& sets) {
  for (std::size_t f = 0; f < sets.size(); ++f) {
    const Candidate& candidate = conditions.phases[sets[f].phase];
    SetPoint& p = points_[f];
    p.energy = gibbs_energy(*candidate.phase, candidate.at, sets[f].y.data());
    p.formula.assign(conditions.elements(), 0.0);
    add_atoms(*candidate.phase, sets[f].y.data(), 1.0, p.formula.data());
    p.atoms = atoms(*candidate.phase, sets[f].y.data());
  }
}

void TwoLevelSystem::evaluate(Conditions& conditions,
                              const std::vector<PhaseSet>& sets) {
  std::array<double, kMaxConstituents * kMaxConstituents> hessian;
  const std::size_t elements = conditions.elements();
  used_ = 0;
  for (const PhaseSet& set : sets) {
    const Candidate& candidate = conditions.phases[set.phase];
    if (used_ == points_.size()) points_.emplace_back(candidate.size(), elements);
    SetPoint& p = points_[used_++];
    p.resize(candidate.size(), elements);
    ++conditions.evaluations;
    p.energy = gibbs_energy(*candidate.phase, candidate.at, set.y.data(),
                            p.gradient.data(), hessian.data());
    p.unstable = p.step.factor(*candidate.phase, conditions.rt, set.y.data(),
                               hessian.data()) > 0.0;
    p.step.project_elements(*candidate.phase, elements);
    add_atoms(*candidate.phase, set.y.data(), 1.0, p.formula.data());
    p.atoms = atoms(*candidate.phase, set.y.data());
  }
}

void TwoLevelSystem::excess_over(const Conditions& conditions,
                                 const std::vector<PhaseSet>& sets,
                                 const std::vector<double>& mu) {
  for (std::size_t f = 0; f < sets.size(); ++f) {
    SetPoint& p = points_[f];
    plane_weights(*conditions.phases[sets[f].phase].phase, mu, p.excess.data());
    for (std::size_t i = 0; i < p.excess.size(); ++i)
      p.excess[i] = p.gradient[i] - p.excess[i];
  }
}

void TwoLevelSystem::assemble(const Conditions& conditions,
                              const std::vector<PhaseSet>& sets) {
  const std::size_t elements = conditions.elements();
  rt_ = conditions.rt;
  scale_.resize(elements);
  for (std::size_t e = 0; e < elements; ++e)
    scale_[e] = 1.0 / std::sqrt(conditions.overall[e]);
  amount_scale_.clear();
  const std::size_t stride = ElementRows::stride_for(elements);
  products_.reserve(elements * stride);
  std::fill_n(products_.data(), elements * stride, 0.0);
  for (std::size_t f = 0; f < sets.size(); ++f) {
    amount_scale_.push_back(std::sqrt(sets[f].amount));
    points_[f].step.add_response(sets[f].amount, products_.data());
  }
  response_.resize(elements * elements);
  for (std::size_t a = 0; a < elements; ++a)
    for (std::size_t b = 0; b <= a; ++b)
      response_[b * elements + a] = response_[a * elements + b] =
          products_.data()[a * stride + b];
  const Eigen::Index rows = index(elements + sets.size());
  matrix_.setZero(rows, rows);
  for (std::size_t a = 0; a < elements; ++a) {
    for (std::size_t b = 0; b < elements; ++b)
      matrix_(index(a), index(b)) =
          response_[a * elements + b] * rt_ * (scale_[a] * scale_[b]);
    for (std::size_t f = 0; f < sets.size(); ++f)
      matrix_(index(a), index(elements + f)) = matrix_(index(elements + f), index(a)) =
          points_[f].formula[a] * scale_[a] * amount_scale_[f];
  }
}

/// By the pivots of partial pivoting: far from where full pivoting sees a lower rank.
bool TwoLevelSystem::is_surely_regular() const {
  constexpr double kFar = 1e-9;
  const auto pivots = quick_.matrixLU().diagonal().cwiseAbs();
  return pivots.minCoeff() > kFar * pivots.maxCoeff();
}

bool TwoLevelSystem::factor(const Conditions& conditions,
                            const std::vector<PhaseSet>& sets) {
  assemble(conditions, sets);
  unique_ = regular_ = false;
  if (!matrix_.allFinite()) return false;
  quick_.compute(matrix_);
  unique_ = regular_ = is_surely_regular();
  if (regular_) return true;
  full_.setThreshold(kRankTolerance);
  full_.compute(matrix_);
  unique_ = full_.isInvertible();
  if (!unique_) {
    // A rank-deficient system: a compound alone, phases in a fixed reaction.
    least_.setThreshold(kRankTolerance);
    least_.compute(matrix_);
  }
  return true;
}

/// Eq. (N4)
double TwoLevelSystem::ratio_of_eigenvalues() {
  eigenvalues_.compute(matrix_, Eigen::EigenvaluesOnly);
  const auto sizes = eigenvalues_.eigenvalues().cwiseAbs();
  return sizes.maxCoeff() / sizes.minCoeff();
}

double TwoLevelSystem::condition_number() {
  return unique_ ? ratio_of_eigenvalues() : std::numeric_limits<double>::infinity();
}

/// The last pivot of full pivoting is no smaller than the smallest singular value, the
/// first no larger than the largest one: far below 1 / kRankTolerance the matrix has
/// full rank.
double TwoLevelSystem::condition_number(const Conditions& conditions,
                                        const std::vector<PhaseSet>& sets) {
  constexpr double kSurelyUnique = 1e8;
  assemble(conditions, sets);
  if (matrix_.allFinite()) {
    const double ratio = ratio_of_eigenvalues();
    if (ratio < kSurelyUnique) return ratio;
  }
  return factor(conditions, sets) ? condition_number()
                                  : std::numeric_limits<double>::infinity();
}

void TwoLevelSystem::solve(Eigen::VectorXd& right, Eigen::VectorXd& change) const {
  const std::size_t elements = scale_.size();
  for (std::size_t e = 0; e < elements; ++e) right[index(e)] *= scale_[e];
  for (std::size_t f = 0; f < amount_scale_.size(); ++f)
    right[index(elements + f)] *= amount_scale_[f] / rt_;
  change.resize(right.size());
  if (regular_)
    change = quick_.solve(right);
  else if (unique_)
    change = full_.solve(right);
  else
    change = least_.solve(right);
  for (std::size_t e = 0; e < elements; ++e) change[index(e)] *= rt_ * scale_[e];
  for (std::size_t f = 0; f < amount_scale_.size(); ++f)
    change[index(elements + f)] *= amount_scale_[f];
}

}  // namespace gibbsteel::internal
