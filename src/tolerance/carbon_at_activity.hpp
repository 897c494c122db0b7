#pragma once
/// How much carbon a steel needs for a given carbon activity.

#include "gibbsteel/steel.hpp"

namespace gibbsteel::internal {

struct CarbonFound {
  double weight_percent = Occurrence::kUnknown;
  std::string trouble;  ///< empty when found
};

/// Solves a_C(C) = activity, Eq. (U4), with everything but C and Fe as it is. Activity
/// never falls with carbon (stability), so there is one answer, or a whole range of
/// them where the phases present fix the activity; then one of the range is returned.
/// @param activity  relative to graphite, > 0
CarbonFound carbon_at_activity(const Steel& steel, Temperature t,
                               const SoakOptions& options, double activity);

}  // namespace gibbsteel::internal
