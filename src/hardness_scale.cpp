#include "gibbsteel/hardness_scale.hpp"

#include <algorithm>
#include <limits>

#include "gibbsteel/parameter_file.hpp"
#include "internal/carbide_vickers.hpp"
#include "internal/kind_names.hpp"
#include "internal/rockwell_scale.hpp"

namespace gibbsteel {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

/// So that the ends survive the way there and back.
bool on_scale(double hrc) {
  constexpr double kRounding = 1e-9;
  return hrc >= internal::kRockwellFrom - kRounding &&
         hrc <= internal::kRockwellTo + kRounding;
}

}  // namespace

double hrc_from_hv(double hv) {
  if (!(hv > 0.0)) return kNone;
  const double hrc = internal::rockwell_of(hv);
  return on_scale(hrc) ? hrc : kNone;
}

double hv_from_hrc(double hrc) {
  return on_scale(hrc) ? internal::vickers_of(hrc) : kNone;
}

double mixture_hardness(double martensite, double austenite, double carbide,
                        double carbide_hv) {
  if (!internal::is_mixture(martensite, austenite, carbide, carbide_hv)) return kNone;
  const double matrix = (1.0 - austenite) * martensite + austenite * kAusteniteHardness;
  return (1.0 - carbide) * matrix + carbide * carbide_hv;
}

double carbide_hardness(std::string_view kind) {
  const auto known = internal::carbide_kind_names(*default_parameters());
  if (std::find(known.begin(), known.end(), kind) == known.end())
    throw InputError({internal::no_such_kind(known, kind, "kind")});
  return internal::carbide_vickers(kind);
}

}  // namespace gibbsteel
