/// Volumes against densities and cell volumes from handbooks.

#include <doctest/doctest.h>

#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/volumes.hpp"

using namespace gibbsteel;

namespace {

double volume(const char* phase, const std::vector<std::string>& elements,
              const std::vector<double>& y, VolumeBasis basis, double kelvin = 298.15) {
  const auto set = default_parameters();
  const Phase& definition = *set->find_phase(phase);
  const PhaseModel model(*set, definition, elements);
  return *formula_volume(definition, model, y, basis, Temperature::kelvin(kelvin));
}

constexpr double kAvogadro = 0.602214076;  // [cm3 per mol and cubic angstrom]

}  // namespace

TEST_CASE(
    "cementite: 155.2 cubic angstrom for four formula units at room temperature") {
  // Cell 5.089 x 6.743 x 4.524 angstrom, Pnma, four Fe3C (handbook value as collected
  // for this project, read in the source).
  CHECK(volume("M3C", {"Fe", "C"}, {1, 1}, VolumeBasis::room) ==
        doctest::Approx(155.2 * kAvogadro / 4.0).epsilon(2e-3));
}

TEST_CASE(
    "vanadium carbide: lattice parameter 4.172 angstrom when full (from memory)") {
  CHECK(volume("austenite", {"V", "C"}, {1, 1, 0}, VolumeBasis::room) ==
        doctest::Approx(4.172 * 4.172 * 4.172 * kAvogadro / 4.0).epsilon(1e-2));
}

TEST_CASE(
    "austenite at 1273 K: lattice parameter 3.655 angstrom, expanding 23e-6 per K") {
  // Onink et al., Scr. Metall. Mater. 29 (1993) 1011 (from memory).
  const double hot = volume("austenite", {"Fe"}, {1, 1}, VolumeBasis::soak, 1273.15);
  CHECK(hot ==
        doctest::Approx(3.6553 * 3.6553 * 3.6553 * kAvogadro / 4.0).epsilon(2e-3));
  const double hotter = volume("austenite", {"Fe"}, {1, 1}, VolumeBasis::soak, 1373.15);
  CHECK(hotter / hot - 1.0 == doctest::Approx(3.0 * 23.3e-6 * 100.0).epsilon(0.02));
}

TEST_CASE("volumes are linear in the end members, Eq. (V1)") {
  const auto mix = [](double chromium) {
    return volume("M7C3", {"Fe", "Cr", "C"}, {chromium, 1.0 - chromium, 1.0},
                  VolumeBasis::room);
  };
  CHECK(mix(0.3) == doctest::Approx(0.7 * mix(0.0) + 0.3 * mix(1.0)).epsilon(1e-12));
}

TEST_CASE("a phase without volume data has no volume") {
  const auto set = default_parameters();
  Phase phase = *set->find_phase("M3C");
  phase.room_volume.reset();
  const std::vector<std::string> elements{"Fe", "C"};
  const PhaseModel model(*set, phase, elements);
  const std::vector<double> y{1.0, 1.0};
  CHECK_FALSE(
      formula_volume(phase, model, y, VolumeBasis::room, Temperature::kelvin(300)));
}

TEST_CASE("densities of pure iron and tungsten at room temperature") {
  // 7.874 and 19.25 g/cm3: common handbook values, from memory.
  CHECK(55.845 / volume("ferrite", {"Fe"}, {1, 1}, VolumeBasis::room) ==
        doctest::Approx(7.874).epsilon(2e-3));
  CHECK(183.84 / volume("ferrite", {"W"}, {1, 1}, VolumeBasis::room) ==
        doctest::Approx(19.25).epsilon(1e-2));
}

TEST_CASE("Eq. (V1) on two sublattices at once, by hand") {
  const std::vector<std::string> elements{"Fe", "V", "C"};
  const auto at = [&](double iron, double carbon) {
    return volume("austenite", elements, {iron, 1 - iron, carbon, 1 - carbon},
                  VolumeBasis::room);
  };
  const double expected = 0.3 * 0.8 * at(1, 1) + 0.3 * 0.2 * at(1, 0) +
                          0.7 * 0.8 * at(0, 1) + 0.7 * 0.2 * at(0, 0);
  CHECK(at(0.3, 0.8) == doctest::Approx(expected).epsilon(1e-14));
}

TEST_CASE("volumes at room temperature do not depend on the soak") {
  CHECK(volume("M3C", {"Fe", "C"}, {1, 1}, VolumeBasis::room, 1400.0) ==
        volume("M3C", {"Fe", "C"}, {1, 1}, VolumeBasis::room, 300.0));
}
