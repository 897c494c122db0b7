#include "proof/enclosure.hpp"

#include "proof/interval_magnetic.hpp"

namespace gibbsteel::internal {
namespace {

/// Range of the effective value of a raw one, and of the slope between them.
struct Effective {
  Interval value, slope;
};

Effective effective(const Interval& raw, double divisor) {
  const Interval negative = -reciprocal(exactly(divisor));
  if (raw.lo >= 0.0) return {raw, exactly(1.0)};
  if (raw.hi <= 0.0) return {raw * negative, negative};
  const Interval below = Interval{raw.lo, 0.0} * negative;
  return {{0.0, std::max(raw.hi, below.hi)}, {negative.lo, 1.0}};
}

}  // namespace

EnergyEnclosure::EnergyEnclosure(const Candidate& candidate)
    : candidate_(candidate), rt_(kGasConstant * candidate.at.kelvin) {
  const std::size_t n = candidate.size();
  dc_.resize(n);
  db_.resize(n);
  hc_.resize(n * n);
  hb_.resize(n * n);
}

void EnergyEnclosure::magnetic_polynomials(const Box& box, bool curvature) {
  const CompiledPhase& p = phase();
  const auto clear = [](std::vector<Interval>& v) { v.assign(v.size(), Interval{}); };
  for (auto* v : {&dc_, &db_}) clear(*v);
  if (curvature)
    for (auto* v : {&hc_, &hb_}) clear(*v);
  raw_curie_ = raw_moment_ = {};
  add_polynomial(p.curie, p.curie_coefficients.data(), box.data(),
                 {&raw_curie_, dc_.data(), curvature ? hc_.data() : nullptr, p.size()});
  add_polynomial(
      p.moment, p.moment_coefficients.data(), box.data(),
      {&raw_moment_, db_.data(), curvature ? hb_.data() : nullptr, p.size()});
}

void EnergyEnclosure::at(const Box& point, bool without_magnetism, Enclosure& out) {
  const CompiledPhase& p = phase();
  out.value = {};
  out.gradient.assign(p.size(), Interval{});
  add_polynomial(p.energy.polynomial, candidate_.at.value.data(), point.data(),
                 {&out.value, out.gradient.data(), nullptr, p.size()});
  if (p.structure_factor <= 0.0 || without_magnetism) return;
  magnetic_polynomials(point, false);
  const Effective c = effective(raw_curie_, p.negative_value_divisor);
  const Effective b = effective(raw_moment_, p.negative_value_divisor);
  const auto e =
      enclose_magnetic(candidate_.at.kelvin, c.value, b.value, p.structure_factor);
  out.value += e.value;
  const Interval ec = e.c * c.slope, eb = e.b * b.slope;
  for (std::size_t i = 0; i < p.size(); ++i)
    out.gradient[i] += ec * dc_[i] + eb * db_[i];
}

void EnergyEnclosure::over(const Box& box, Enclosure& out) {
  const CompiledPhase& p = phase();
  out.hessian.assign(p.size() * p.size(), Interval{});
  out.kink = false;
  add_polynomial(p.energy.polynomial, candidate_.at.value.data(), box.data(),
                 {nullptr, nullptr, out.hessian.data(), p.size()});
  if (p.structure_factor <= 0.0) return;
  magnetic_polynomials(box, true);
  out.kink = raw_moment_.lo < 0.0 && raw_moment_.hi > 0.0;
  if (out.kink)
    fill_kink(out);
  else
    add_magnetic_hessian(out);
}

void EnergyEnclosure::fill_kink(Enclosure& out) {
  const CompiledPhase& p = phase();
  const Effective c = effective(raw_curie_, p.negative_value_divisor);
  const Effective b = effective(raw_moment_, p.negative_value_divisor);
  const auto e =
      enclose_magnetic(candidate_.at.kelvin, c.value, b.value, p.structure_factor);
  out.kink_value = e.value;
  out.kink_gradient.resize(p.size());
  const Interval ec = e.c * c.slope, eb = e.b * b.slope;
  for (std::size_t i = 0; i < p.size(); ++i)
    out.kink_gradient[i] = ec * dc_[i] + eb * db_[i];
}

void EnergyEnclosure::add_magnetic_hessian(Enclosure& out) {
  const CompiledPhase& p = phase();
  const std::size_t n = p.size();
  const Effective c = effective(raw_curie_, p.negative_value_divisor);
  const Effective b = effective(raw_moment_, p.negative_value_divisor);
  const auto e =
      enclose_magnetic(candidate_.at.kelvin, c.value, b.value, p.structure_factor);
  const Interval ec = e.c * c.slope, eb = e.b * b.slope;
  const Interval ecc = e.cc * c.slope * c.slope, ebb = e.bb * b.slope * b.slope;
  const Interval ecb = e.cb * c.slope * b.slope;
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i; j < n; ++j) {
      const std::size_t at = i * n + j;
      out.hessian[at] += ec * hc_[at] + eb * hb_[at] + ecc * (dc_[i] * dc_[j]) +
                         ebb * (db_[i] * db_[j]) +
                         ecb * (dc_[i] * db_[j] + db_[i] * dc_[j]);
    }
}

Interval plane_distance(const CompiledPhase& phase, double rt, const Box& point,
                        const Interval& energy, std::span<const Interval> weights) {
  Interval sum = energy;
  for (std::size_t i = 0; i < phase.size(); ++i)
    sum += phase.sites[i] * exactly(rt) * (point[i] * log(point[i])) -
           weights[i] * point[i];
  return sum;
}

}  // namespace gibbsteel::internal
