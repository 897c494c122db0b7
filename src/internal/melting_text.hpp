#pragma once
/// How a melting range is told.

#include "gibbsteel/melting.hpp"

namespace gibbsteel::internal {

/// One sentence; everything but the text must be filled.
/// @param known  the parameter set has a liquid
std::string melting_text(const MeltingRange& found, bool known,
                         const std::vector<PhaseGap>& gaps);

}  // namespace gibbsteel::internal
