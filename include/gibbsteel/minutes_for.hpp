#pragma once
/// How long to soak until the matrix holds so much of an element.

#include <string>
#include <string_view>

#include "gibbsteel/timed_soak.hpp"

namespace gibbsteel {

/// Only ever appended.
enum class MinutesStatus {
  found,
  at_once,        ///< carbon alone gets there: as soon as the section is at temperature
  never_reached,  ///< not even after the longest soak
  too_long,       ///< not within 100 000 minutes
};
std::string_view to_string(MinutesStatus) noexcept;

struct MinutesFor {
  MinutesStatus status = MinutesStatus::never_reached;
  double minutes = Occurrence::kUnknown;  ///< at temperature; 0 at once, else NaN
  /// Of the element in the matrix [wt%] by the short-soak limit, and at the end.
  double at_first = Occurrence::kUnknown, at_last = Occurrence::kUnknown;
  std::string text;  ///< one sentence, with the minutes and their range
  /// A third of the minutes and three times them, as far as size and diffusion are
  /// known; 0 at once, else NaN.
  double low_minutes = Occurrence::kUnknown, high_minutes = Occurrence::kUnknown;
};

/// By timed_soak(). The element may rise (C, Cr, Mn) or fall (Si) with time.
/// @param weight_percent  of the element in the matrix
/// @throws InputError as timed_soak(), also where the matrix would then hold ferrite;
///         gibbsteel.input.201 (no symbol of an element),
///         .209 (the matrix holds none of it), .252 and .340 (weight percent not
///         finite, below 0 or above 100)
MinutesFor minutes_for(const State& state, const std::string& element,
                       double weight_percent, const TimedSoakOptions& options = {});

}  // namespace gibbsteel
