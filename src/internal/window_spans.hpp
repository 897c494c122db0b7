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

/// Takes out a gap; `rule` is what its ends are called.
WindowSpans less(const WindowSpans& spans, const PhaseGap& gap, WindowRule rule);

/// A rule cannot be judged where its number has no value. Both lists go upwards.
void count_as_gaps(const std::vector<PhaseGap>& no_value, std::vector<PhaseGap>& gaps);

/// Takes those gaps out of the list that lie where phases are known and the kind is not
/// among them. @return them
std::vector<PhaseGap> take_gaps_without(const PhaseChanges& changes,
                                        const std::string& kind,
                                        std::vector<PhaseGap>& gaps);

/// Both lists go upwards, and so does the result.
WindowSpans intersection(const WindowSpans& a, const WindowSpans& b);

}  // namespace gibbsteel::internal
