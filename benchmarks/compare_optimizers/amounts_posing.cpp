#include "amounts_posing.hpp"

namespace gibbsteel::contest {

AmountsPosing::AmountsPosing(const Task& task, const Sets& start)
    : Posing(task, start), right_(conditions_.overall) {
  for (const Slot& slot : slots_) {
    const std::vector<double> fixed = fixed_atoms(slot);
    for (std::size_t e = 0; e < fixed.size(); ++e)
      if (fixed[e] > 0.0) constraints_.push_back({e, slot.first, fixed[e]});
    for (std::size_t k = 0; k < slot.free.size(); ++k)
      if (const int e = element(slot, slot.free[k]); e >= 0)
        constraints_.push_back({static_cast<std::size_t>(e), slot.first + 1 + k,
                                sites(slot, slot.free[k])});
    for (std::size_t g = 0; g + 1 < slot.groups.size(); ++g) {
      constraints_.push_back({right_.size(), slot.first, -1.0});
      for (std::size_t k = slot.groups[g]; k < slot.groups[g + 1]; ++k)
        constraints_.push_back({right_.size(), slot.first + 1 + k, 1.0});
      right_.push_back(0.0);
    }
  }
}

std::vector<double> AmountsPosing::start() const {
  std::vector<double> x(variables_);
  for (std::size_t s = 0; s < slots_.size(); ++s) {
    const Slot& slot = slots_[s];
    x[slot.first] = start_[s].amount;
    for (std::size_t k = 0; k < slot.free.size(); ++k)
      x[slot.first + 1 + k] = start_[s].amount * start_[s].y[slot.free[k]];
  }
  return x;
}

std::vector<double> AmountsPosing::fractions(const Slot& slot, const double* x) const {
  std::vector<double> y(candidate(slot).size(), 1.0);
  for (std::size_t k = 0; k < slot.free.size(); ++k)
    y[slot.free[k]] = x[slot.first + 1 + k] / x[slot.first];
  return y;
}

double AmountsPosing::value(const double* x) const {
  double sum = 0.0;
  for (const Slot& slot : slots_) {
    const auto& phase = candidate(slot);
    const std::vector<double> y = fractions(slot, x);
    sum += x[slot.first] * internal::gibbs_energy(*phase.phase, phase.at, y.data());
  }
  return sum / conditions_.rt;
}

void AmountsPosing::gradient(const double* x, double* out) const {
  std::vector<double> g;
  for (const Slot& slot : slots_) {
    const auto& phase = candidate(slot);
    const std::vector<double> y = fractions(slot, x);
    g.resize(y.size());
    double along =
        internal::gibbs_energy(*phase.phase, phase.at, y.data(), g.data(), nullptr);
    for (std::size_t k = 0; k < slot.free.size(); ++k) {
      const std::size_t i = slot.free[k];
      out[slot.first + 1 + k] = g[i] / conditions_.rt;
      along -= y[i] * g[i];
    }
    out[slot.first] = along / conditions_.rt;
  }
}

std::vector<Entry> AmountsPosing::hessian_places() const {
  std::vector<Entry> places;
  for (const Slot& slot : slots_) {
    if (slot.free.empty()) continue;  // linear in its amount
    for (std::size_t r = 0; r <= slot.free.size(); ++r)
      for (std::size_t c = 0; c <= r; ++c)
        places.push_back({slot.first + r, slot.first + c, 0.0});
  }
  return places;
}

void AmountsPosing::hessian(const double* x, double* values) const {
  std::vector<double> g, h, hy;
  for (const Slot& slot : slots_) {
    const std::size_t m = slot.free.size();
    if (m == 0) continue;
    const auto& phase = candidate(slot);
    const std::vector<double> y = fractions(slot, x);
    const std::size_t n = y.size();
    g.resize(n);
    h.resize(n * n);
    internal::gibbs_energy(*phase.phase, phase.at, y.data(), g.data(), h.data());
    const double scale = 1.0 / (x[slot.first] * conditions_.rt);
    double yhy = 0.0;
    hy.assign(m, 0.0);
    for (std::size_t r = 0; r < m; ++r) {
      for (std::size_t c = 0; c < m; ++c)
        hy[r] += h[slot.free[r] * n + slot.free[c]] * y[slot.free[c]];
      yhy += y[slot.free[r]] * hy[r];
    }
    *values++ = scale * yhy;
    for (std::size_t r = 0; r < m; ++r) {
      *values++ = -scale * hy[r];
      for (std::size_t c = 0; c <= r; ++c)
        *values++ = scale * h[slot.free[r] * n + slot.free[c]];
    }
  }
}

Sets AmountsPosing::sets(const double* x, double least) const {
  Sets found;
  for (const Slot& slot : slots_)
    if (x[slot.first] > least)
      found.push_back({slot.phase, x[slot.first], fractions(slot, x), 0.0});
  return found;
}

}  // namespace gibbsteel::contest
