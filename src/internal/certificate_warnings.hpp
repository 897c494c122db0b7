#pragma once
/// Warnings that come from the certificate alone: 307, 312, 313 and 314.

#include <vector>

#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel::internal {

void check_certificate(const MillAnalysis& analysis, std::vector<Warning>& out);

}  // namespace gibbsteel::internal
