#include "minimizer/tangent_step.hpp"

#include <algorithm>

namespace gibbsteel::internal {

using one::dot;
using one::solve_lower;
using one::solve_upper;

TangentStep::TangentStep(std::size_t constituents, std::size_t elements) {
  reserve(constituents, elements);
}

void TangentStep::reserve(std::size_t constituents, std::size_t elements) {
  const auto at_least = [](std::vector<double>& memory, std::size_t size) {
    if (memory.size() < size) memory.resize(size);
  };
  at_least(memory_, one::TangentFactor<double>::room(constituents, kMaxSublattices));
  at_least(work_, constituents);
  atoms_.reserve(constituents * ElementRows::stride_for(elements));
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
  const std::size_t stride = ElementRows::stride_for(elements);
  rows_ = {factor_.lower(), factor_.basis(0), n_, s_, elements, stride, atoms_.data()};
  std::fill_n(rows_.x, n_ * stride, 0.0);
  for (std::size_t i = 0; i < n_; ++i)
    if (phase.constituents[i].element >= 0)
      rows_.x[i * stride + static_cast<std::size_t>(phase.constituents[i].element)] =
          factor_.d()[i] * phase.sites[i];
  lane_kernels().project_rows(rows_);
}

void TangentStep::add_response(double n, double* out) const {
  lane_kernels().add_row_products(rows_, n, out);
}

void TangentStep::add_projected(double n, const double* v, double* out) const {
  for (std::size_t i = 0; i < n_; ++i) work_[i] = factor_.d()[i] * v[i];
  solve_lower(factor_.lower(), n_, work_.data());
  for (std::size_t i = 0; i < n_; ++i) {
    const double factor = n * work_[i];
    const double* row = rows_.x + i * rows_.stride;
    for (std::size_t e = 0; e < rows_.elements; ++e) out[e] += factor * row[e];
  }
}

void TangentStep::response_to(const double* dmu, const double* excess,
                              double* dy) const {
  for (std::size_t i = 0; i < n_; ++i) dy[i] = -factor_.d()[i] * excess[i];
  solve_lower(factor_.lower(), n_, dy);
  factor_.project_out(dy);
  for (std::size_t i = 0; i < n_; ++i)
    dy[i] += dot(dmu, rows_.x + i * rows_.stride, rows_.elements);
  solve_upper(factor_.lower(), n_, dy);
  for (std::size_t i = 0; i < n_; ++i) dy[i] *= factor_.d()[i];
}

}  // namespace gibbsteel::internal
