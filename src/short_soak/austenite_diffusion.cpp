#include "short_soak/austenite_diffusion.hpp"

#include <array>
#include <cmath>

namespace gibbsteel::internal {
namespace {

struct Arrhenius {
  std::string_view element;
  double d0;  ///< [m2/s]
  double q;   ///< [J/mol]
};

/// From memory. Cr: assessed mobility of B. Joensson for austenite of Cr, Fe and Ni
/// (about 1995); Bowen & Leak, Metall. Trans. 1 (1970) 1695 measured 1.08e-3 and 291.8
/// kJ/mol, three times as much at 850 C. V: Bowen & Leak, the same paper. Mo, W:
/// Alberry & Haworth, Met. Sci. 8 (1974) 407. Mn: review of Oikawa, Tetsu-to-Hagane 68
/// (1982) 1489. Ni: MacEwan, MacEwan & Yaffe, Can. J. Chem. 37 (1959) 1623. Co:
/// Suzuoka, Trans. Jpn. Inst. Met. 2 (1961) 176. Nb: Geise & Herzig 1985. Ti: Moll &
/// Ogilvie, Trans. AIME 215 (1959) 613. Si: order of magnitude as in handbook tables,
/// author not remembered. Extrapolated, as most were measured above 950 C.
constexpr auto kTable = std::to_array<Arrhenius>({
    {"Cr", 1.75e-4, 286000.0},
    {"Mo", 3.6e-6, 239800.0},
    {"W", 1.3e-5, 267400.0},
    {"V", 2.5e-5, 264200.0},
    {"Mn", 1.78e-5, 264000.0},
    {"Ni", 7.7e-5, 280500.0},
    {"Co", 1.0e-4, 301900.0},
    {"Si", 7.0e-6, 243000.0},
    {"Nb", 7.5e-5, 264000.0},
    {"Ti", 1.5e-5, 251000.0},
});

}  // namespace

std::optional<double> diffusion_in_austenite(std::string_view element, Temperature t) {
  for (const Arrhenius& entry : kTable)
    if (entry.element == element)
      return entry.d0 * std::exp(-entry.q / (kGasConstant * t.in_kelvin()));
  return std::nullopt;
}

}  // namespace gibbsteel::internal
