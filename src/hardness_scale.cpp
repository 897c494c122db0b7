#include "gibbsteel/hardness_scale.hpp"

namespace gibbsteel {

double hrc_from_hv(double hv) { return (100.0 * hv - 15100.0) / (hv + 223.0); }

double hv_from_hrc(double hrc) { return (15100.0 + 223.0 * hrc) / (100.0 - hrc); }

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
