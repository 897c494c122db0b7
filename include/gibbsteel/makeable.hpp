#pragma once
/// Weight percents as a heat can be ordered.

#include "gibbsteel/named_values.hpp"

namespace gibbsteel {

/// Steps to which weight percents are rounded. Common practice of melt specifications,
/// no source: carbon to 0.01, everything else to 0.05.
struct MakeableSteps {
  NamedValues steps{{"C", 0.01}};  ///< by element [wt%]
  double others = 0.05;            ///< of elements not listed [wt%]
  /// False: leave every number as it is.
  bool round = true;

  static MakeableSteps none();
  bool operator==(const MakeableSteps&) const = default;
};

/// Each to the nearest step; what rounds to 0 is left out, and so is Fe, the balance.
/// @throws InputError gibbsteel.input.261 (a step that is not above 0, at most 10 wt%)
NamedValues to_makeable(const NamedValues& weight_percent, const MakeableSteps& steps);

}  // namespace gibbsteel
