#pragma once
/// Small parameter sets out of bytes: two to four elements, up to three phases whose
/// energies are anything from sensible to absurd. They stand for no material.

#include <array>
#include <memory>

#include "gibbsteel/parameter_set.hpp"
#include "input_bytes.hpp"

namespace gibbsteel::fuzz {

inline constexpr std::array kSymbols{"Fe", "C", "Cr", "Mo"};

/// [J/mol]: mostly up to 60000, now and then up to 6e10.
inline double energy(InputBytes& bytes) {
  const unsigned kind = bytes.byte();
  const double size = kind < 230 ? 6e4 : kind < 245 ? 6e6 : 6e10;
  return size * (2.0 * bytes.share() - 1.0);
}

inline Term small_term(std::vector<std::vector<std::string>> on,
                       std::optional<int> order, double value, double per_kelvin) {
  Term term;
  term.on = std::move(on);
  term.order = order;
  term.value.terms = {{{0, false}, value}, {{1, false}, per_kelvin}};
  return term;
}

/// All end members of up to two sublattices.
inline void add_end_members(InputBytes& bytes, Phase& phase) {
  for (const auto& first : phase.sublattices.front().constituents) {
    if (phase.sublattices.size() == 1) {
      phase.energy.push_back(small_term({{first}}, std::nullopt, energy(bytes), 0.0));
      continue;
    }
    for (const auto& second : phase.sublattices.back().constituents) {
      // One after the other: compilers differ in the order of arguments.
      const double value = energy(bytes);
      const double per_kelvin = 20.0 * (bytes.share() - 0.5);
      phase.energy.push_back(
          small_term({{first}, {second}}, std::nullopt, value, per_kelvin));
    }
  }
}

/// Interactions of the first two constituents of the first sublattice.
inline void add_interactions(InputBytes& bytes, Phase& phase) {
  const auto& names = phase.sublattices.front().constituents;
  if (names.size() < 2) return;
  for (int order = 0; order < static_cast<int>(bytes.index(4)); ++order) {
    std::vector<std::vector<std::string>> on{{names[0], names[1]}};
    if (phase.sublattices.size() == 2)
      on.push_back({phase.sublattices.back().constituents.front()});
    phase.energy.push_back(small_term(on, order, energy(bytes), 0.0));
  }
}

inline Phase small_phase(InputBytes& bytes, std::size_t elements) {
  Phase phase;
  Sublattice first{1.0 + static_cast<double>(bytes.index(6)), {}};
  for (std::size_t e = 0; e < elements; ++e)
    if (bytes.byte() < 200) first.constituents.push_back(kSymbols[e]);
  if (first.constituents.empty()) first.constituents.push_back(kSymbols[0]);
  phase.sublattices.push_back(first);
  const unsigned second = bytes.byte();
  if (second % 3 == 1) phase.sublattices.push_back({1.0, {"C"}});
  if (second % 3 == 2)
    phase.sublattices.push_back({0.5 * (1 + second % 8), {"C", "vacancy"}});
  add_end_members(bytes, phase);
  add_interactions(bytes, phase);
  return phase;
}

inline SharedParameters small_set(InputBytes& bytes) {
  const std::size_t elements = 2 + bytes.index(3);
  auto set = std::make_shared<ParameterSet>();
  for (std::size_t e = 0; e < elements; ++e)
    set->elements.push_back({kSymbols[e], 10.0, "", ""});
  for (std::size_t f = 1 + bytes.index(3); f > 0; --f) {
    set->phases.push_back(small_phase(bytes, elements));
    set->phases.back().name = std::string(1, static_cast<char>('a' + f));
  }
  return set;
}

}  // namespace gibbsteel::fuzz
