#include "minimizer/tangent_step.hpp"

#include <algorithm>
#include <cmath>

#include "minimizer/small_matrix.hpp"

namespace gibbsteel::internal {

TangentStep::TangentStep(std::size_t constituents, std::size_t elements) {
  reserve(constituents, elements);
}

void TangentStep::reserve(std::size_t constituents, std::size_t elements) {
  const auto at_least = [](std::vector<double>& memory, std::size_t size) {
    if (memory.size() < size) memory.resize(size);
  };
  at_least(scaled_, constituents * constituents);
  at_least(lower_, constituents * constituents);
  at_least(basis_, constituents * kMaxSublattices);
  at_least(atoms_, constituents * elements);
  at_least(d_, constituents);
  at_least(work_, std::max(constituents, elements));
}

double TangentStep::factor(const CompiledPhase& phase, double rt, const double* y,
                           const double* hessian) {
  phase_ = &phase;
  n_ = phase.size();
  s_ = phase.sublattice_count();
  for (std::size_t i = 0; i < n_; ++i) d_[i] = std::sqrt(y[i] / (rt * phase.sites[i]));
  double largest = 0.0;
  for (std::size_t j = 0; j < n_; ++j)
    for (std::size_t i = j; i < n_; ++i) {
      const double value = d_[i] * hessian[j * n_ + i] * d_[j];
      scaled_[j * n_ + i] = value;
      largest = std::max(largest, std::abs(value));
    }
  const double weight = 10.0 + 4.0 * largest;
  double shift = 0.0;
  if (!try_factor(weight, 0.0) && !try_factor(100.0 * weight, 0.0)) {
    shift = 0.25;
    while (!try_factor(weight, shift) && shift < 1e12) shift *= 3.0;
  }
  orthonormalise_sublattices();
  return shift;
}

bool TangentStep::try_factor(double sublattice_weight, double shift) {
  std::copy_n(scaled_.begin(), n_ * n_, lower_.begin());
  for (std::size_t s = 0; s < s_; ++s) {
    const std::size_t begin = phase_->first[s], end = phase_->first[s + 1];
    double squares = 0.0;
    for (std::size_t i = begin; i < end; ++i) squares += d_[i] * d_[i];
    const double weight = sublattice_weight / squares;
    for (std::size_t j = begin; j < end; ++j)
      for (std::size_t i = j; i < end; ++i)
        lower_[j * n_ + i] += weight * d_[i] * d_[j];
  }
  for (std::size_t i = 0; i < n_; ++i) lower_[i * n_ + i] += shift;
  return cholesky(lower_.data(), n_);
}

void TangentStep::orthonormalise_sublattices() {
  for (std::size_t s = 0; s < s_; ++s) {
    const std::size_t begin = phase_->first[s], end = phase_->first[s + 1];
    double* q = &basis_[s * n_];
    std::fill_n(q, n_, 0.0);
    double size = 0.0;
    for (std::size_t i = begin; i < end; ++i) size += d_[i] * d_[i];
    size = std::sqrt(size);
    for (std::size_t i = begin; i < end; ++i) q[i] = d_[i] / size;
    solve_lower(lower_.data(), n_, q);
    for (int pass = 0; pass < 2; ++pass)
      for (std::size_t k = 0; k < s; ++k) {
        const double* other = &basis_[k * n_];
        const double share = dot(other, q, n_);
        for (std::size_t i = 0; i < n_; ++i) q[i] -= share * other[i];
      }
    const double length = std::sqrt(dot(q, q, n_));
    for (std::size_t i = 0; i < n_; ++i) q[i] /= length;
  }
}

void TangentStep::project_out(double* v) const noexcept {
  for (std::size_t s = 0; s < s_; ++s) {
    const double* q = &basis_[s * n_];
    const double share = dot(q, v, n_);
    for (std::size_t i = 0; i < n_; ++i) v[i] -= share * q[i];
  }
}

void TangentStep::newton_direction(const double* gradient, double* direction) const {
  for (std::size_t i = 0; i < n_; ++i) direction[i] = -d_[i] * gradient[i];
  solve_lower(lower_.data(), n_, direction);
  project_out(direction);
  solve_upper(lower_.data(), n_, direction);
  for (std::size_t i = 0; i < n_; ++i) direction[i] *= d_[i];
}

void TangentStep::project_elements(const CompiledPhase& phase, std::size_t elements) {
  e_ = elements;
  std::fill_n(atoms_.begin(), n_ * e_, 0.0);
  for (std::size_t i = 0; i < n_; ++i)
    if (phase.constituents[i].element >= 0)
      atoms_[i * e_ + static_cast<std::size_t>(phase.constituents[i].element)] =
          d_[i] * phase.sites[i];
  solve_lower_rows(lower_.data(), n_, atoms_.data(), e_);
  for (std::size_t s = 0; s < s_; ++s) {
    const double* q = &basis_[s * n_];
    std::fill_n(work_.begin(), e_, 0.0);
    for (std::size_t i = 0; i < n_; ++i)
      for (std::size_t e = 0; e < e_; ++e) work_[e] += q[i] * atoms_[i * e_ + e];
    for (std::size_t i = 0; i < n_; ++i)
      for (std::size_t e = 0; e < e_; ++e) atoms_[i * e_ + e] -= q[i] * work_[e];
  }
}

void TangentStep::add_response(double n, double* out) const {
  for (std::size_t i = 0; i < n_; ++i) {
    const double* row = &atoms_[i * e_];
    for (std::size_t a = 0; a < e_; ++a) {
      const double factor = n * row[a];
      for (std::size_t b = 0; b <= a; ++b) out[a * e_ + b] += factor * row[b];
    }
  }
}

void TangentStep::add_projected(double n, const double* v, double* out) const {
  for (std::size_t i = 0; i < n_; ++i) work_[i] = d_[i] * v[i];
  solve_lower(lower_.data(), n_, work_.data());
  for (std::size_t i = 0; i < n_; ++i) {
    const double factor = n * work_[i];
    for (std::size_t e = 0; e < e_; ++e) out[e] += factor * atoms_[i * e_ + e];
  }
}

void TangentStep::response_to(const double* mu, const double* gradient,
                              double* dy) const {
  for (std::size_t i = 0; i < n_; ++i) dy[i] = -d_[i] * gradient[i];
  solve_lower(lower_.data(), n_, dy);
  project_out(dy);
  for (std::size_t i = 0; i < n_; ++i) dy[i] += dot(mu, &atoms_[i * e_], e_);
  solve_upper(lower_.data(), n_, dy);
  for (std::size_t i = 0; i < n_; ++i) dy[i] *= d_[i];
}

}  // namespace gibbsteel::internal
