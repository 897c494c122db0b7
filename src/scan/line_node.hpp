#pragma once
/// One solved point of a line of conditions, and what two of them have in common.

#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "scan/condition_line.hpp"

namespace gibbsteel::internal {

/// Derivatives with respect to s; NaN where the equilibrium is not unique.
struct LineSlopes {
  std::vector<double> amount;  ///< of result.present
  std::vector<double> d;       ///< of the absent minima: -driving_force
};

struct LineNode {
  double s = 0.0;
  Equilibrium result;
  std::vector<std::string> kinds;         ///< of result.present
  std::vector<std::string> absent_kinds;  ///< of result.absent
  std::optional<LineSlopes> slopes;       ///< once asked for

  bool usable() const noexcept { return result.report.usable(); }
  /// Kinds of the phases that are present, sorted; two of a kind are listed twice.
  std::vector<std::string> phase_set() const;
};

LineNode solve_node(const ConditionLine& line, double s);

/// Exact derivatives along the line, for the phase set of the node.
LineSlopes slopes_of(const ConditionLine& line, const LineNode& node);

/// Largest difference of site fractions within one phase: more than any phase changes
/// between two nodes, less than two phases of one kind differ (except close to a
/// consolute point, where a scan goes to its tolerance).
inline constexpr double kSamePhase = 0.1;

inline constexpr std::size_t kNoMatch = std::numeric_limits<std::size_t>::max();

/// For each of `a` the index of its partner in `b`: the same phase model, the nearest
/// composition first, none farther than `most` (largest difference of site fractions).
std::vector<std::size_t> partners(const std::vector<PhasePoint>& a,
                                  const std::vector<PhasePoint>& b, double most);

/// True when both hold the same kinds at compositions that can be joined: a phase that
/// is replaced by another one of its own kind is a change.
bool same_phase_set(const LineNode& a, const LineNode& b);

}  // namespace gibbsteel::internal
