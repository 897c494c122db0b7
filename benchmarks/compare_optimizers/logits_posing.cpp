#include "logits_posing.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::contest {

std::vector<double> LogitsPosing::start() const {
  std::vector<double> x(variables_);
  for (std::size_t s = 0; s < slots_.size(); ++s) {
    const Slot& slot = slots_[s];
    x[slot.first] = start_[s].amount;
    for (std::size_t k = 0; k < slot.free.size(); ++k)
      x[slot.first + 1 + k] = std::log(std::max(start_[s].y[slot.free[k]], 1e-300));
  }
  return x;
}

std::vector<double> LogitsPosing::fractions(const Slot& slot, const double* x) const {
  std::vector<double> y(candidate(slot).size(), 1.0);
  const double* u = x + slot.first + 1;
  for (std::size_t g = 0; g + 1 < slot.groups.size(); ++g) {
    const std::size_t begin = slot.groups[g], end = slot.groups[g + 1];
    const double highest = *std::max_element(u + begin, u + end);
    double sum = 0.0;
    for (std::size_t k = begin; k < end; ++k) sum += std::exp(u[k] - highest);
    // Not below what the logarithms of the energy can take.
    for (std::size_t k = begin; k < end; ++k)
      y[slot.free[k]] = std::max(std::exp(u[k] - highest) / sum, 1e-300);
  }
  return y;
}

double LogitsPosing::value(const double* x, double* gradient) const {
  double total = 0.0;
  std::vector<double> g;
  for (const Slot& slot : slots_) {
    const auto& phase = candidate(slot);
    const std::vector<double> y = fractions(slot, x);
    const double amount = x[slot.first];
    g.resize(y.size());
    const double energy =
        internal::gibbs_energy(*phase.phase, phase.at, y.data(), g.data(), nullptr);
    total += amount * energy;
    if (gradient == nullptr) continue;
    gradient[slot.first] = energy / conditions_.rt;
    for (std::size_t s = 0; s + 1 < slot.groups.size(); ++s) {
      double mean = 0.0;
      for (std::size_t k = slot.groups[s]; k < slot.groups[s + 1]; ++k)
        mean += y[slot.free[k]] * g[slot.free[k]];
      for (std::size_t k = slot.groups[s]; k < slot.groups[s + 1]; ++k)
        gradient[slot.first + 1 + k] =
            amount * y[slot.free[k]] * (g[slot.free[k]] - mean) / conditions_.rt;
    }
  }
  return total / conditions_.rt;
}

void LogitsPosing::balance(const double* x, double* out, double* gradient) const {
  const std::size_t elements = conditions_.elements();
  for (std::size_t e = 0; e < elements; ++e) out[e] = -conditions_.overall[e];
  if (gradient != nullptr) std::fill_n(gradient, elements * variables_, 0.0);
  for (const Slot& slot : slots_) {
    const std::vector<double> y = fractions(slot, x);
    const double amount = x[slot.first];
    std::vector<double> atoms(elements);
    internal::add_atoms(*candidate(slot).phase, y.data(), 1.0, atoms.data());
    for (std::size_t e = 0; e < elements; ++e) {
      out[e] += amount * atoms[e];
      if (gradient != nullptr) gradient[e * variables_ + slot.first] = atoms[e];
    }
    if (gradient == nullptr) continue;
    for (std::size_t s = 0; s + 1 < slot.groups.size(); ++s)
      for (std::size_t k = slot.groups[s]; k < slot.groups[s + 1]; ++k) {
        const int e = element(slot, slot.free[k]);
        if (e < 0) continue;
        const double part = amount * sites(slot, slot.free[k]) * y[slot.free[k]];
        double* row = gradient + static_cast<std::size_t>(e) * variables_;
        row[slot.first + 1 + k] += part;
        for (std::size_t j = slot.groups[s]; j < slot.groups[s + 1]; ++j)
          row[slot.first + 1 + j] -= part * y[slot.free[j]];
      }
  }
}

Sets LogitsPosing::sets(const double* x, double least) const {
  Sets found;
  for (const Slot& slot : slots_)
    if (x[slot.first] > least)
      found.push_back({slot.phase, x[slot.first], fractions(slot, x), 0.0});
  return found;
}

}  // namespace gibbsteel::contest
