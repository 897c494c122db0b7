/// The surface of cementite that dissolves, Eqs. (B4) to (B6), against soaks of
/// austenite alone, which know nothing of surfaces.

#include "short_soak/particle_surface.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/gibbsteel.hpp"
#include "short_soak/austenite_diffusion.hpp"

using namespace gibbsteel;

namespace {

Temperature celsius(double value) { return Temperature::celsius(value); }

/// Potentials [J/mol] in austenite alone, from a soak that knows nothing of surfaces.
/// @param metals  share of each among the metals
State austenite_of(const NamedValues& metals, double carbon_per_metal, Temperature t) {
  const ParameterSet& set = *default_parameters();
  NamedValues mass;
  double sum = 0.0;
  for (const auto& [symbol, share] : metals)
    mass.set(symbol, share * set.find_element(symbol)->molar_mass);
  mass.set("C", carbon_per_metal * set.find_element("C")->molar_mass);
  for (const auto& [symbol, value] : mass) sum += value;
  NamedValues percent;
  for (const auto& [symbol, value] : mass)
    if (symbol != "Fe") percent.set(symbol, 100.0 * value / sum);
  SoakOptions alone;
  alone.phases = {"austenite"};
  return Steel(percent).soak(t, alone);
}

/// With the carbon at which mu_C is `potential`.
State at_potential(const NamedValues& metals, double potential, Temperature t) {
  double low = 1e-6, high = 0.25;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    const double mu = austenite_of(metals, middle, t).chemical_potential["C"];
    (mu < potential ? low : high) = middle;
  }
  return austenite_of(metals, 0.5 * (low + high), t);
}

/// Site fractions of a phase of iron, chromium and carbon.
std::vector<double> filled(const PhaseModel& model, double chromium, double carbon) {
  std::vector<double> y;
  for (const Constituent& c : model.constituents())
    y.push_back(c.name == "Cr"   ? chromium
                : c.name == "Fe" ? 1.0 - chromium
                : c.name == "C"  ? carbon
                                 : 1.0 - carbon);
  return y;
}

/// Potential of a formula unit of cementite with this metal alone [J/mol].
double of_formula(const PhaseModel& cementite, double chromium, const char* metal,
                  Temperature t) {
  const auto y = filled(cementite, chromium, 1.0);
  const PhaseDerivatives d = cementite.evaluate(t, y);
  double potential = d.value;
  for (std::size_t i = 0; i < y.size(); ++i) {
    const Constituent& c = cementite.constituents()[i];
    if (c.name == metal) potential += d.dy[i];
    if (c.name != "C") potential -= y[i] * d.dy[i];
  }
  return potential;
}

}  // namespace

TEST_CASE("diffusion follows Arrhenius, and its table has every metal of the file") {
  using internal::diffusion_in_austenite;
  // Joensson's mobility, as remembered: RT ln D = -286000 - 71.9 T [J/mol, m2/s].
  const double assessed =
      std::exp((-286000.0 - 71.9 * 1273.15) / (8.314462618 * 1273.15));
  CHECK(*diffusion_in_austenite("Cr", Temperature::kelvin(1273.15)) / assessed ==
        doctest::Approx(1.0).epsilon(0.005));
  // At 850 C [1e-17 m2/s], from the same sources by hand.
  const std::pair<const char*, double> by_hand[]{
      {"Mo", 2.54},   {"W", 0.477}, {"V", 1.29},  {"Mn", 0.939}, {"Ni", 0.694},
      {"Co", 0.0911}, {"Si", 3.50}, {"Nb", 3.96}, {"Ti", 3.18},  {"Cr", 0.875}};
  for (const auto& pair : by_hand) {
    const double d = *diffusion_in_austenite(pair.first, celsius(850));
    CHECK_MESSAGE(std::abs(1e17 * d / pair.second - 1.0) < 0.005, pair.first);
  }
  for (const auto& element : default_parameters()->elements)
    if (element.symbol != "C" && element.symbol != "Fe") {
      const auto d = diffusion_in_austenite(element.symbol, celsius(1000));
      REQUIRE_MESSAGE(d, element.symbol);
      // Within a power of ten of the others, as handbooks have it: no source.
      CHECK_MESSAGE((*d > 2e-17 && *d < 5e-15), element.symbol);
    }
  CHECK_FALSE(diffusion_in_austenite("Xx", celsius(1000)));
}

TEST_CASE("at the surface austenite and cementite are in equilibrium, metals balance") {
  const Temperature t = celsius(850);
  const ParameterSet& set = *default_parameters();
  const std::vector<std::string> elements{"Fe", "C", "Cr"};
  const PhaseModel cementite(set, *set.find_phase("M3C"), elements);
  const PhaseModel austenite(set, *set.find_phase("austenite"), elements);
  const double of_cementite = 0.1, mean = 0.012, carbon = 0.03, share = 0.05;
  internal::ParticleSurface surface(cementite, filled(cementite, of_cementite, 1.0),
                                    austenite, t);
  const double k = surface.speed(filled(austenite, mean, carbon), share);
  REQUIRE(k > 0.0);
  // Eq. (B6) gives the surface, soaks of austenite its potentials.
  const double away =
      *internal::diffusion_in_austenite("Cr", t) / internal::crowding(share);
  const double at_surface = (k * of_cementite + away * mean) / (k + away);
  const State of_mean = austenite_of({{"Fe", 1.0 - mean}, {"Cr", mean}}, carbon, t);
  const double mu_carbon = of_mean.chemical_potential["C"];
  const State beside =
      at_potential({{"Fe", 1.0 - at_surface}, {"Cr", at_surface}}, mu_carbon, t);
  const auto wanted = [&](const char* metal) {
    return 3.0 * beside.chemical_potential[metal] + mu_carbon;
  };
  // Eq. (B5): of iron it fixes the skin of the cementite, of chromium it is the test.
  double low = 1e-6, high = 0.6;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    (of_formula(cementite, middle, "Fe", t) > wanted("Fe") ? low : high) = middle;
  }
  CHECK(of_formula(cementite, 0.5 * (low + high), "Cr", t) ==
        doctest::Approx(wanted("Cr")).epsilon(1e-6));
  // Richer in chromium than the mean: it has to flow away.
  CHECK(at_surface > 2.0 * mean);
  CHECK(at_surface < of_cementite);
}

TEST_CASE("austenite that is full of metal and carbon dissolves no cementite") {
  const Temperature t = celsius(850);
  const ParameterSet& set = *default_parameters();
  const std::vector<std::string> elements{"Fe", "C", "Cr"};
  const PhaseModel cementite(set, *set.find_phase("M3C"), elements);
  const PhaseModel austenite(set, *set.find_phase("austenite"), elements);
  internal::ParticleSurface surface(cementite, filled(cementite, 0.1, 1.0), austenite,
                                    t);
  CHECK(surface.speed(filled(austenite, 0.05, 0.06), 0.05) == 0.0);
  // So little carbon that it leaves whatever chromium does.
  CHECK(std::isinf(surface.speed(filled(austenite, 0.005, 1e-5), 0.05)));
  CHECK(surface.speed(filled(austenite, 0.012, 0.03), 0.05) >
        surface.speed(filled(austenite, 0.012, 0.03), 1e-6));
}
