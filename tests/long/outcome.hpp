#pragma once
/// What a part of the long run brings home, and how parts add up.

#include <array>
#include <map>
#include <string>
#include <vector>

#include "long/conditions.hpp"

namespace gibbsteel::long_run {

/// One solve: where it is found again, and what it cost.
struct Solve {
  std::size_t part = 0;    ///< number of the group or line
  std::size_t member = 0;  ///< within it
  double seconds = 0.0;    ///< of the processor
  int rounds = 0, newton_steps = 0, columns = 0, evaluations = 0;
  std::size_t elements = 0, phases = 0;
};

/// A result that must not stand as it is: flagged by the library, or wrong without a
/// flag.
struct Finding {
  std::size_t part = 0, member = 0;
  std::string what;
  double depth = 0.0;  ///< [J/mol of atoms] where it is an energy
};

struct Tally {
  long solved = 0, converged = 0, certified = 0;
  std::map<std::string, long> flagged;  ///< by reason
};

struct Outcome {
  std::array<Tally, kDraws> by_draw;
  std::vector<Solve> solves;
  std::vector<Finding> flagged, wrong;
  double worst_balance = 0.0;
  double worst_gap = 0.0;  ///< largest |G - mu . x| [J/mol of atoms]
  /// Judges: how often each was asked, and the closest call [J/mol of atoms] (negative:
  /// below what is allowed).
  struct Judge {
    long asked = 0;
    double closest = 1e300;
    void hear(double margin) {
      ++asked;
      if (margin < closest) closest = margin;
    }
  };
  std::map<std::string, Judge> judges;
  std::map<std::string, long> proofs;  ///< by outcome
  std::vector<double> proof_seconds;
  long same_bits = 0;      ///< points of sweeps with the bits of a cold soak
  long phase_changes = 0;  ///< met between neighbours of a line

  void add(Outcome&& other);
};

/// Seconds of the processor that this thread has used.
double thread_seconds();

/// Counts a solve. @return true when its result may be used
bool count(const Equilibrium& result, std::size_t part, std::size_t member, Draw draw,
           std::size_t elements, double seconds, Outcome& outcome);

}  // namespace gibbsteel::long_run
