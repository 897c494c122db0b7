#pragma once
/// The matrix-style alloy: a steel made from the matrix composition of another one, and
/// how much carbide it still holds.
///
/// A twin that is not rounded is one matrix phase at the temperature it was taken from,
/// saturated with the carbides of the full-carbide steel: it has the same chemical
/// potentials there and holds carbide at any temperature where less dissolves.
///
/// By its own composition a twin may be of another hardening family than the
/// full-carbide steel, with other estimates for the same austenite: name the family of
/// one of them (HardeningOptions::family) to compare like with like.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/makeable.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

struct MatrixTwinOptions {
  MakeableSteps makeable;  ///< MakeableSteps::none() for the exact composition
  /// Elements that the file does not model (P, S, N, Cu, ...) belong to the melting
  /// practice and not to the matrix: they are left out. True keeps them as analysed,
  /// less what they bind.
  bool keep_not_modelled = false;
  SoakOptions soak;
};

/// The steel with this steel's matrix composition at that soak, all modelled elements,
/// balance Fe; named "matrix of NAME at 1200 C".
/// @throws InputError gibbsteel.input.210 (temperature), .260 (the soak is not usable
///         or has no matrix), .261 (steps), .205, .212, .232 (soak options)
Steel matrix_twin(const Steel& steel, Temperature t,
                  const MatrixTwinOptions& options = {});

/// The same from a state, for instance one with measured carbide. `steel` is the steel
/// of the state: parameters and name come from it.
/// @throws InputError gibbsteel.input.260, .261
Steel matrix_twin(const Steel& steel, const State& state,
                  const MatrixTwinOptions& options = {});

/// A twin and its residual carbide at the same and at other temperatures.
struct TwinStudy {
  State reference;    ///< the full-carbide steel at the soak
  NamedValues exact;  ///< its matrix before rounding [wt%], Fe included
  Steel twin;
  State same;    ///< the twin at the same soak
  Sweep others;  ///< the twin at the other temperatures, in the order given

  /// That the twin is of another hardening family than the full-carbide steel
  /// (gibbsteel.warning.357); those of the soaks stand with the states.
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< composition, residual carbide, warnings, as tables
};

/// @throws InputError as matrix_twin()
TwinStudy twin_study(const Steel& steel, Temperature t,
                     std::span<const Temperature> others,
                     const MatrixTwinOptions& options = {});

}  // namespace gibbsteel
