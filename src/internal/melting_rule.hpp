#pragma once
/// The rule of a hardening window that keeps it below the computed solidus.

#include <functional>
#include <string>

#include "internal/window_spans.hpp"

namespace gibbsteel::internal {

struct MeltingRule {
  /// "30 C below 1235 C, the low end of the computed solidus, 1265 C +-30"
  std::string text;
  WindowSpans spans;  ///< one, or none
};

/// Where `changes` are free of liquid, less the margin and the error [K]. A solidus
/// that close above their range counts too: `look` finds the changes there.
MeltingRule below_melting(
    const PhaseChanges& changes, double margin, double error,
    const std::function<PhaseChanges(const TemperatureRange&)>& look);

}  // namespace gibbsteel::internal
