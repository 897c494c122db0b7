#pragma once
/// How a melting range is told.

#include "gibbsteel/melting.hpp"

namespace gibbsteel::internal {

/// One sentence; everything but the text must be filled.
/// @param remedy  where there is no liquid, why and what to do
std::string melting_text(const MeltingRange& found, const std::string& remedy,
                         const std::vector<PhaseGap>& gaps);

}  // namespace gibbsteel::internal
