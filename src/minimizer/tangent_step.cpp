#include "minimizer/tangent_step.hpp"

#include <Eigen/Cholesky>
#include <cmath>

namespace gibbsteel::internal {
namespace {

Eigen::Index index(std::size_t i) { return static_cast<Eigen::Index>(i); }

}  // namespace

TangentStep::TangentStep(std::size_t constituents, std::size_t elements)
    : scaled_(index(constituents), index(constituents)),
      lower_(index(constituents), index(constituents)),
      basis_(index(constituents), index(kMaxSublattices)),
      atoms_(index(constituents), index(elements)),
      d_(index(constituents)),
      work_(index(constituents)) {}

double TangentStep::factor(const CompiledPhase& phase, double rt, const double* y,
                           const double* hessian) {
  phase_ = &phase;
  n_ = index(phase.size());
  s_ = index(phase.sublattice_count());
  for (Eigen::Index i = 0; i < n_; ++i)
    d_[i] = std::sqrt(y[i] / (rt * phase.sites[static_cast<std::size_t>(i)]));
  double largest = 0.0;
  for (Eigen::Index i = 0; i < n_; ++i)
    for (Eigen::Index j = 0; j < n_; ++j) {
      scaled_(i, j) = d_[i] * hessian[i * n_ + j] * d_[j];
      largest = std::max(largest, std::abs(scaled_(i, j)));
    }
  const double weight = 10.0 + 4.0 * largest;
  double shift = 0.0;
  if (!try_factor(weight, 0.0) && !try_factor(100.0 * weight, 0.0)) {
    shift = 0.25;
    while (!try_factor(weight, shift) && shift < 1e12) shift *= 3.0;
  }
  orthonormalise_sublattices(phase);
  return shift;
}

bool TangentStep::try_factor(double sublattice_weight, double shift) {
  auto k = lower_.topLeftCorner(n_, n_);
  k = scaled_.topLeftCorner(n_, n_);
  for (std::size_t s = 0; s + 1 < phase_->first.size(); ++s) {
    const auto begin = index(phase_->first[s]);
    const auto count = index(phase_->first[s + 1]) - begin;
    const auto u = d_.segment(begin, count);
    k.block(begin, begin, count, count) +=
        (sublattice_weight / u.squaredNorm()) * u * u.transpose();
  }
  for (Eigen::Index i = 0; i < n_; ++i) k(i, i) += shift;
  Eigen::Ref<Matrix> view = k;
  const Eigen::LLT<Eigen::Ref<Matrix>> cholesky(view);
  return cholesky.info() == Eigen::Success;
}

void TangentStep::orthonormalise_sublattices(const CompiledPhase& phase) {
  const auto lower = lower_.topLeftCorner(n_, n_).triangularView<Eigen::Lower>();
  for (Eigen::Index s = 0; s < s_; ++s) {
    const auto begin = index(phase.first[static_cast<std::size_t>(s)]);
    const auto end = index(phase.first[static_cast<std::size_t>(s) + 1]);
    auto q = basis_.col(s).head(n_);
    q.setZero();
    q.segment(begin, end - begin) = d_.segment(begin, end - begin);
    q.normalize();
    lower.solveInPlace(q);
    for (int pass = 0; pass < 2; ++pass)
      for (Eigen::Index k = 0; k < s; ++k)
        q -= basis_.col(k).head(n_).dot(q) * basis_.col(k).head(n_);
    q.normalize();
  }
}

void TangentStep::project_out(Eigen::Ref<Eigen::VectorXd> v) const {
  for (Eigen::Index k = 0; k < s_; ++k)
    v -= basis_.col(k).head(n_).dot(v) * basis_.col(k).head(n_);
}

void TangentStep::newton_direction(const double* gradient, double* direction) const {
  const auto lower = lower_.topLeftCorner(n_, n_).triangularView<Eigen::Lower>();
  auto v = work_.head(n_);
  for (Eigen::Index i = 0; i < n_; ++i) v[i] = -d_[i] * gradient[i];
  lower.solveInPlace(v);
  project_out(v);
  lower.transpose().solveInPlace(v);
  for (Eigen::Index i = 0; i < n_; ++i) direction[i] = d_[i] * v[i];
}

void TangentStep::project_elements(const CompiledPhase& phase, std::size_t elements) {
  e_ = index(elements);
  auto x = atoms_.topLeftCorner(n_, e_);
  x.setZero();
  for (Eigen::Index i = 0; i < n_; ++i) {
    const auto k = static_cast<std::size_t>(i);
    if (phase.constituents[k].element >= 0)
      x(i, phase.constituents[k].element) = d_[i] * phase.sites[k];
  }
  lower_.topLeftCorner(n_, n_).triangularView<Eigen::Lower>().solveInPlace(x);
  for (Eigen::Index e = 0; e < e_; ++e) project_out(x.col(e));
}

void TangentStep::add_response(double n, double* out) const {
  for (Eigen::Index a = 0; a < e_; ++a)
    for (Eigen::Index b = 0; b <= a; ++b) {
      const double value = n * atoms_.col(a).head(n_).dot(atoms_.col(b).head(n_));
      out[a * e_ + b] += value;
      if (a != b) out[b * e_ + a] += value;
    }
}

void TangentStep::add_projected(double n, const double* v, double* out) const {
  auto x = work_.head(n_);
  for (Eigen::Index i = 0; i < n_; ++i) x[i] = d_[i] * v[i];
  lower_.topLeftCorner(n_, n_).triangularView<Eigen::Lower>().solveInPlace(x);
  for (Eigen::Index e = 0; e < e_; ++e) out[e] += n * atoms_.col(e).head(n_).dot(x);
}

void TangentStep::response_to(const double* mu, const double* gradient,
                              double* dy) const {
  const auto lower = lower_.topLeftCorner(n_, n_).triangularView<Eigen::Lower>();
  auto v = work_.head(n_);
  for (Eigen::Index i = 0; i < n_; ++i) v[i] = -d_[i] * gradient[i];
  lower.solveInPlace(v);
  project_out(v);
  for (Eigen::Index e = 0; e < e_; ++e) v += mu[e] * atoms_.col(e).head(n_);
  lower.transpose().solveInPlace(v);
  for (Eigen::Index i = 0; i < n_; ++i) dy[i] = d_[i] * v[i];
}

}  // namespace gibbsteel::internal
