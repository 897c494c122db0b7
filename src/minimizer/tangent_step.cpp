#include "minimizer/tangent_step.hpp"

#include <algorithm>

namespace gibbsteel::internal {

using one::dot;
using one::solve_lower;
using one::solve_lower_rows;
using one::solve_upper;

TangentStep::TangentStep(std::size_t constituents, std::size_t elements) {
  reserve(constituents, elements);
}

void TangentStep::reserve(std::size_t constituents, std::size_t elements) {
  const auto at_least = [](std::vector<double>& memory, std::size_t size) {
    if (memory.size() < size) memory.resize(size);
  };
  at_least(memory_, one::TangentFactor<double>::room(constituents, kMaxSublattices));
  at_least(atoms_, constituents * elements);
  at_least(work_, std::max(constituents, elements));
}

double TangentStep::factor(const CompiledPhase& phase, double rt, const double* y,
                           const double* hessian) {
  n_ = phase.size();
  s_ = phase.sublattice_count();
  factor_.place(memory_.data(), n_, s_);
  return factor_.factor(phase, rt, y, hessian, true);
}

void TangentStep::newton_direction(const double* gradient, double* direction) const {
  factor_.newton_direction(gradient, direction);
}

void TangentStep::project_elements(const CompiledPhase& phase, std::size_t elements) {
  e_ = elements;
  std::fill_n(atoms_.begin(), n_ * e_, 0.0);
  for (std::size_t i = 0; i < n_; ++i)
    if (phase.constituents[i].element >= 0)
      atoms_[i * e_ + static_cast<std::size_t>(phase.constituents[i].element)] =
          factor_.d()[i] * phase.sites[i];
  solve_lower_rows(factor_.lower(), n_, atoms_.data(), e_);
  for (std::size_t s = 0; s < s_; ++s) {
    const double* q = factor_.basis(s);
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
  for (std::size_t i = 0; i < n_; ++i) work_[i] = factor_.d()[i] * v[i];
  solve_lower(factor_.lower(), n_, work_.data());
  for (std::size_t i = 0; i < n_; ++i) {
    const double factor = n * work_[i];
    for (std::size_t e = 0; e < e_; ++e) out[e] += factor * atoms_[i * e_ + e];
  }
}

void TangentStep::response_to(const double* dmu, const double* excess,
                              double* dy) const {
  for (std::size_t i = 0; i < n_; ++i) dy[i] = -factor_.d()[i] * excess[i];
  solve_lower(factor_.lower(), n_, dy);
  factor_.project_out(dy);
  for (std::size_t i = 0; i < n_; ++i) dy[i] += dot(dmu, &atoms_[i * e_], e_);
  solve_upper(factor_.lower(), n_, dy);
  for (std::size_t i = 0; i < n_; ++i) dy[i] *= factor_.d()[i];
}

}  // namespace gibbsteel::internal
