#pragma once
/// What came out of one solve, judged in the same way for every solver.

#include <string>

#include "task.hpp"

namespace gibbsteel::contest {

struct Answer {
  Sets sets;           ///< empty when the solver gave nothing
  int iterations = 0;  ///< of the solver's own kind
  std::string said;    ///< the solver's own verdict
};

struct Outcome {
  double seconds = 0.0;  ///< processor time, median of the repetitions
  int repetitions = 0;
  /// Energy above the plane of the chemical potentials of the reference
  /// [J/mol of atoms]: G - G_reference when the elements balance, and not to be
  /// lowered by leaving some out.
  double gap = 0.0;
  double balance = 0.0;  ///< largest error of a mole fraction
  int iterations = 0;
  std::string said;
};

/// Fills gap and balance; NaN without an answer. Site fractions are normalized first.
Outcome judge(const Task& task, const Answer& answer);

}  // namespace gibbsteel::contest
