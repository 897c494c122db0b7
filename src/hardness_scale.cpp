#include "gibbsteel/hardness_scale.hpp"

#include "internal/rockwell_scale.hpp"

namespace gibbsteel {

using namespace internal;

double hrc_from_hv(double hv) {
  return kRockwellTop - kRockwellSpan / (hv + kRockwellShift);
}

double hv_from_hrc(double hrc) {
  return kRockwellSpan / (kRockwellTop - hrc) - kRockwellShift;
}

double mixture_hardness(double martensite, double austenite, double carbide,
                        double carbide_hv) {
  const double matrix = (1.0 - austenite) * martensite + austenite * kAusteniteHardness;
  return (1.0 - carbide) * matrix + carbide * carbide_hv;
}

double carbide_hardness(std::string_view kind) {
  if (kind == "M3C") return 1100.0;
  if (kind == "MC") return 2600.0;
  return 1500.0;
}

}  // namespace gibbsteel
