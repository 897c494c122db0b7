#pragma once
/// Hardness of carbides of any name, and what can be a mixture at all.

#include <cmath>
#include <string_view>

namespace gibbsteel::internal {

/// carbide_hardness() for the kinds of every parameter file, known or not [HV].
inline constexpr double carbide_vickers(std::string_view kind) {
  if (kind == "M3C") return 1100.0;
  if (kind == "MC") return 2600.0;
  return 1500.0;
}

/// Hardness finite and not negative, fractions from 0 to 1.
inline bool is_mixture(double martensite, double austenite, double carbide,
                       double carbide_hv) {
  const auto hardness = [](double hv) { return std::isfinite(hv) && hv >= 0.0; };
  const auto fraction = [](double f) { return f >= 0.0 && f <= 1.0; };
  return hardness(martensite) && hardness(carbide_hv) && fraction(austenite) &&
         fraction(carbide);
}

}  // namespace gibbsteel::internal
