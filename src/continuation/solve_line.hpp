#pragma once
/// All points of a line, every stretch of it between two anchors.

#include "continuation/line_solver.hpp"

namespace gibbsteel::internal {

/// One condition of a line.
struct LinePoint {
  Temperature temperature = Temperature::kelvin(0.0);
  std::vector<double> mole_fractions;  ///< as PhaseSystem::elements()
};

/// Solves the points in order, each from the one before, and hands over every result
/// in order once it stands: at the next anchor.
/// @param sink  gets the index of the point and its result, which it may move from;
///              false ends the line
LineCounts solve_line(const PhaseSystem& system, const SolveOptions& options,
                      std::span<const LinePoint> points,
                      const std::function<bool(std::size_t, Equilibrium&&)>& sink,
                      ConditionNumbers numbers = ConditionNumbers::wanted);

}  // namespace gibbsteel::internal
