/// Diameter at which particles stop the growth of austenite grains [um]: Eq. (H22) to
/// (H25). All are proportional to particle diameter over volume fraction.

#include <numbers>

#include "property_equations/builtin.hpp"

namespace gibbsteel::internal {
namespace {

PropertyEquation pinning(const char* key, const char* label, const char* formula,
                         const char* source, const char* note, double factor) {
  PropertyEquation equation;
  equation.kind = PropertyKind::grain_pinning;
  equation.key = key;
  equation.label = label;
  equation.formula = formula;
  equation.source = source;
  equation.note = note;
  equation.value = [factor](const PropertyInput& in) {
    return in.carbide_fraction > 0.0
               ? factor * in.particle_diameter / in.carbide_fraction
               : PropertyInput::kUnknown;
  };
  equation.slope = [value = equation.value](const PropertyInput& in) {
    return PropertySlope{{}, 0.0, -value(in) / in.carbide_fraction};
  };
  return equation;
}

}  // namespace

std::vector<PropertyEquation> grain_pinning_equations() {
  // Largest to mean grain radius; 1.4 to 2 are seen, the value is this library's own.
  constexpr double kGrainRatio = 1.7;
  constexpr double kGladman = std::numbers::pi * (1.5 - 2.0 / kGrainRatio) / 6.0;
  return {pinning("hillert", "H22", "D = 4 d / (9 f)",
                  "Hillert, Acta Metall. 13 (1965) 227, from memory",
                  "normal grain growth; read it as a lower bound", 4.0 / 9.0),
          pinning("zener", "H23", "D = 4 d / (3 f)",
                  "Zener, in Smith, Trans. AIME 175 (1948) 15, from memory",
                  "reads high", 4.0 / 3.0),
          pinning("gladman", "H24", "D = pi d (3/2 - 2/Z) / (6 f), Z = 1.7",
                  "Gladman, Proc. R. Soc. A 294 (1966) 298, from memory",
                  "Z = 1.4 to 2 is seen: from 0.4 to 1.6 of the value", kGladman),
          pinning("manohar", "H25", "D = 0.17 d / f",
                  "Manohar, Ferry & Chandra, ISIJ Int. 38 (1998) 913, from memory, "
                  "doubtful",
                  "for f below 0.05", 0.17)};
}

}  // namespace gibbsteel::internal
