#pragma once
/// Stretches of temperature on which rules hold.

#include <vector>

#include "gibbsteel/hardening_window.hpp"
#include "gibbsteel/temperature_for.hpp"

namespace gibbsteel::internal {

using WindowSpans = std::vector<WindowSpan>;

/// Fields without the kind; `rule` is what its coming and going is called.
WindowSpans without_kind(const PhaseChanges& changes, const std::string& kind,
                         WindowRule rule);

/// Where the quantity of a search is at least its target.
WindowSpans at_least(const TemperatureSearch& search, WindowRule rule);

/// Both lists go upwards, and so does the result.
WindowSpans intersection(const WindowSpans& a, const WindowSpans& b);

}  // namespace gibbsteel::internal
