#include "internal/melts.hpp"

#include <algorithm>

#include "internal/liquid_share.hpp"

namespace gibbsteel::internal {

bool melts(const PhaseChanges& changes, Temperature t) {
  for (const PhaseField& field : changes.fields) {
    const auto& kinds = field.phases;
    if (std::find(kinds.begin(), kinds.end(), kLiquid) != kinds.end())
      return field.low <= t;
  }
  return false;
}

}  // namespace gibbsteel::internal
