#include "minimizer/linear_program.hpp"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr double kPriceTolerance = 1e-7;  ///< [J/mol of atoms]
constexpr double kRounding = 8.0 * std::numeric_limits<double>::epsilon();
constexpr double kPivotTolerance = 1e-9;
constexpr int kRefactorEvery = 40;
/// Relative spread of the perturbed right side. Seeds like the bulk make the program
/// degenerate, and the plain rule then cycles.
constexpr double kPerturbation = 1e-5;

Eigen::Map<const Eigen::VectorXd> composition(const ColumnPool& pool, Eigen::Index k,
                                              Eigen::Index rows) {
  return {pool.composition(static_cast<std::size_t>(k)), rows};
}

}  // namespace

LinearProgram::LinearProgram(std::span<const double> overall)
    : overall_(Eigen::Map<const Eigen::VectorXd>(
          overall.data(), static_cast<Eigen::Index>(overall.size()))),
      perturbed_(overall_),
      amounts_(overall_),
      mu_(Eigen::VectorXd::Constant(overall_.size(), kArtificialEnergy)),
      inverse_(Eigen::MatrixXd::Identity(overall_.size(), overall_.size())) {
  constexpr double kGolden = 0.618033988749895;
  for (Eigen::Index e = 0; e < overall_.size(); ++e) {
    basis_.push_back(-1 - e);
    const double turn = kGolden * static_cast<double>(e + 1);
    perturbed_[e] *= 1.0 + kPerturbation * (turn - std::floor(turn));
  }
  amounts_ = perturbed_;
}

double LinearProgram::basis_energy(const ColumnPool& pool, Eigen::Index row) const {
  const Eigen::Index k = basis_[static_cast<std::size_t>(row)];
  return k < 0 ? artificial_energy_ : pool.energy(static_cast<std::size_t>(k));
}

void LinearProgram::update_potentials(const ColumnPool& pool) {
  Eigen::VectorXd energies(overall_.size());
  for (Eigen::Index r = 0; r < energies.size(); ++r)
    energies[r] = basis_energy(pool, r);
  mu_ = inverse_.transpose() * energies;
  // The potential of a trace element is a difference of energies over a tiny content:
  // what rounding leaves of it must not pass for a price.
  noise_ = kRounding * (inverse_.cwiseAbs().transpose() * energies.cwiseAbs());
}

/// No column may cost more than doing without: the program would call a composition
/// infeasible that the phases can hold.
void LinearProgram::raise_artificial_energy(const ColumnPool& pool) {
  constexpr double kMargin = 10.0;
  for (std::size_t k = 0; k < pool.size(); ++k) {
    const double needed = kMargin * std::abs(pool.energy(k));
    if (needed > artificial_energy_ && std::isfinite(needed))
      artificial_energy_ = needed;
  }
}

void LinearProgram::refactor(const ColumnPool& pool) {
  const Eigen::Index rows = overall_.size();
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(rows, rows);
  for (Eigen::Index r = 0; r < rows; ++r) {
    const Eigen::Index k = basis_[static_cast<std::size_t>(r)];
    if (k < 0)
      matrix(-1 - k, r) = 1.0;
    else
      matrix.col(r) = composition(pool, k, rows);
  }
  inverse_ = matrix.partialPivLu().inverse();
  amounts_ = (inverse_ * perturbed_).cwiseMax(0.0);
}

bool LinearProgram::in_basis(Eigen::Index column) const {
  return std::find(basis_.begin(), basis_.end(), column) != basis_.end();
}

Eigen::Index LinearProgram::entering(const ColumnPool& pool) {
  const auto d = pool.distances(potentials(), memory_);
  double lowest = 0.0;
  Eigen::Index best = -1;
  for (std::size_t k = 0; k < pool.size(); ++k) {
    const double price = d[k];
    if (!(price < lowest)) continue;  // NaN too
    const double* x = pool.composition(k);
    double tolerance = kPriceTolerance;
    for (Eigen::Index e = 0; e < noise_.size(); ++e) tolerance += noise_[e] * x[e];
    if (!(price < -tolerance) || in_basis(static_cast<Eigen::Index>(k))) continue;
    lowest = price;
    best = static_cast<Eigen::Index>(k);
  }
  return best;
}

bool LinearProgram::pivot(const ColumnPool& pool, Eigen::Index column) {
  const Eigen::VectorXd direction =
      inverse_ * composition(pool, column, overall_.size());
  double shortest = std::numeric_limits<double>::infinity();
  Eigen::Index leaving = -1;
  for (Eigen::Index r = 0; r < direction.size(); ++r) {
    if (direction[r] <= kPivotTolerance) continue;
    const double ratio = amounts_[r] / direction[r];
    const bool tie = leaving >= 0 && ratio <= shortest * (1.0 + 1e-12) + 1e-300;
    if (leaving < 0 || ratio < shortest * (1.0 - 1e-12) ||
        (tie && direction[r] > direction[leaving])) {
      shortest = leaving < 0 ? ratio : std::min(shortest, ratio);
      leaving = r;
    }
  }
  if (leaving < 0) return false;
  amounts_ -= shortest * direction;
  amounts_ = amounts_.cwiseMax(0.0);
  amounts_[leaving] = shortest;
  const Eigen::RowVectorXd row = inverse_.row(leaving) / direction[leaving];
  for (Eigen::Index r = 0; r < direction.size(); ++r)
    if (r != leaving) inverse_.row(r) -= direction[r] * row;
  inverse_.row(leaving) = row;
  basis_[static_cast<std::size_t>(leaving)] = column;
  return true;
}

bool LinearProgram::solve(const ColumnPool& pool) {
  raise_artificial_energy(pool);
  refactor(pool);
  update_potentials(pool);
  for (int count = 1; count <= kMostPivots; ++count) {
    const Eigen::Index column = entering(pool);
    if (column < 0) {
      refactor(pool);
      update_potentials(pool);
      amounts_ = (inverse_ * overall_).cwiseMax(0.0);
      return true;
    }
    if (!pivot(pool, column)) return false;
    if (count % kRefactorEvery == 0) refactor(pool);
    update_potentials(pool);
  }
  return false;
}

std::vector<LinearProgram::Entry> LinearProgram::basis() const {
  std::vector<Entry> entries;
  for (std::size_t r = 0; r < basis_.size(); ++r)
    if (basis_[r] >= 0)
      entries.push_back({static_cast<std::size_t>(basis_[r]),
                         amounts_[static_cast<Eigen::Index>(r)]});
  return entries;
}

bool LinearProgram::unbounded_potentials() const noexcept {
  for (const Eigen::Index k : basis_)
    if (k < 0) return true;
  return false;
}

bool LinearProgram::infeasible() const noexcept {
  for (std::size_t r = 0; r < basis_.size(); ++r) {
    if (basis_[r] >= 0) continue;
    const Eigen::Index element = -1 - basis_[r];
    if (amounts_[static_cast<Eigen::Index>(r)] > 1e-9 * overall_[element]) return true;
  }
  return false;
}

}  // namespace gibbsteel::internal
