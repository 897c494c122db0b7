#pragma once
/// What every test of the contract suite needs: all phases of all shipped parameter
/// files, and compositions inside their range.

#include <random>
#include <string>
#include <vector>

#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/phase_model.hpp"
#include "synthetic_set.hpp"
#include "with_liquid.hpp"

namespace gibbsteel::contract {

/// The shipped files, and the set with every kind of term. A new file is covered by
/// adding one line.
inline std::vector<SharedParameters> shipped_files() {
  return {default_parameters(), with_liquid(), synthetic_set()};
}

/// A layer leaves what lies below as it is: only the phases that it adds are new.
inline bool is_new(const ParameterSet& set, const Phase& phase) {
  return set.files.size() == 1 || !default_parameters()->find_phase(phase.name);
}

inline std::vector<std::string> symbols(const ParameterSet& set) {
  std::vector<std::string> all;
  for (const auto& element : set.elements) all.push_back(element.symbol);
  return all;
}

/// Random site fractions: between well mixed and nearly pure.
inline std::vector<double> random_fractions(const PhaseModel& model,
                                            std::mt19937_64& random) {
  std::gamma_distribution<double> gamma(0.6, 1.0);
  const auto& all = model.constituents();
  std::vector<double> y(all.size()), sum(16, 0.0);
  for (std::size_t i = 0; i < y.size(); ++i)
    sum[all[i].sublattice] += y[i] = gamma(random) + 1e-3;
  for (std::size_t i = 0; i < y.size(); ++i) y[i] /= sum[all[i].sublattice];
  return y;
}

/// Runs `test(set, phase, model)` on every phase with all elements active.
template <typename Test>
void for_every_phase(const Test& test) {
  for (const auto& set : shipped_files()) {
    const auto elements = symbols(*set);
    for (const Phase& phase : set->phases)
      if (is_new(*set, phase)) test(*set, phase, PhaseModel(*set, phase, elements));
  }
}

}  // namespace gibbsteel::contract
