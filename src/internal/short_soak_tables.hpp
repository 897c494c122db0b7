#pragma once
/// What a printed ShortSoak and its report share. The first row holds the headings.

#include <string>
#include <vector>

#include "gibbsteel/measured_carbide.hpp"

namespace gibbsteel::internal {

/// Carbide was computed, not counted.
bool is_computed(const ShortSoak& soak);

/// Carbide as it entered the balance, beside the long hold.
std::vector<std::vector<std::string>> carbide_rows(const ShortSoak& soak);

/// Matrix [wt%] with its band, beside the long hold; iron is the balance.
std::vector<std::vector<std::string>> band_rows(const ShortSoak& soak);

/// What the band is made of.
std::string band_sentence(const ShortSoak& soak);

}  // namespace gibbsteel::internal
