/// Short soaks: the matrix that measured carbide leaves.

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "first_edition.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "messages.hpp"

using namespace gibbsteel;

namespace {

/// 52100 as in record BRG-05 of the check files.
Steel bearing() {
  return Steel({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}},
               {"AISI 52100", {}, false});
}

State bearing_state() { return bearing().soak(Temperature::celsius(845)); }

State high_speed_state() {
  return Steel({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}},
               {"punch heat 12", {}, false})
      .soak(Temperature::celsius(1150));
}

MeasuredCarbideOptions annealed() {
  MeasuredCarbideOptions options;
  options.composition = CarbideSource::annealed;
  return options;
}

bool holds(const std::vector<std::string>& list, const std::string& item) {
  return std::find(list.begin(), list.end(), item) != list.end();
}

/// Every element of the steel is in the phases of the state.
void check_balance(const State& state) {
  double mass = 0.0, volume = 0.0;
  for (const Occurrence& o : state.occurrences) {
    mass += o.mass_percent;
    volume += o.volume_percent;
  }
  CHECK(mass == doctest::Approx(100.0).epsilon(1e-12));
  CHECK(volume == doctest::Approx(100.0).epsilon(1e-12));
  for (const auto& entry : state.analysis.modelled) {
    const std::string symbol = entry.first;
    const double given = entry.second;
    CAPTURE(symbol);
    double sum = 0.0;
    for (const Occurrence& o : state.occurrences)
      sum += o.mass_percent * o.weight_percent[symbol];
    CHECK(sum / 100.0 == doctest::Approx(given).epsilon(1e-10));
  }
}

}  // namespace

TEST_CASE("short soak: 52100 at 845 C with 6 vol% M3C left") {
  // 0.62 +- 0.06 wt% C in the matrix of 52100 after 20 to 40 min at 845 C: Stickels,
  // Metall. Trans. 5 (1974) 865, quoted from memory (record BRG-06); 0.55 to 0.60 wt%
  // when the last ferrite goes, whatever the temperature: Molinder, Acta Metall. 4
  // (1956) 565 (BRG-15). The band of the brief is 0.62 to 0.66.
  const State limit = bearing_state();
  const ShortSoak soak = with_measured_carbide(limit, {{"M3C", 6.0}});
  MESSAGE(soak.brief());
  const double carbon = soak.state.matrix.weight_percent["C"];
  CHECK(carbon >= 0.62);
  CHECK(carbon <= 0.66);
  CHECK(limit.matrix.weight_percent["C"] >= 0.80);
  // A miss that stays in sight: 0.8815 with the present edition, 0.870 with the first.
  WARN(limit.matrix.weight_percent["C"] <= 0.88);
  const Steel before(limit.analysis.given, {"AISI 52100", first_edition(), false});
  const double carbon_before =
      before.soak(limit.temperature).matrix.weight_percent["C"];
  CHECK(carbon_before >= 0.80);
  CHECK(carbon_before <= 0.88);
  CHECK(soak.state.volume_percent_of("M3C") == doctest::Approx(6.0).epsilon(1e-12));
  check_balance(soak.state);
}

TEST_CASE("short soak: by hand from densities") {
  // The balance once more in other terms: mass of carbide from volume and the two
  // densities, carbon from the mass.
  const ShortSoak soak = with_measured_carbide(bearing_state(), {{"M3C", 6.0}});
  const Occurrence& carbide = soak.state.at("M3C");
  const Occurrence& matrix = soak.state.at("austenite");
  const double mass =
      6.0 * carbide.density / (6.0 * carbide.density + 94.0 * matrix.density);
  CHECK(soak.state.matrix.weight_percent["C"] ==
        doctest::Approx((1.0 - mass * carbide.weight_percent["C"]) / (1.0 - mass))
            .epsilon(1e-10));
  CHECK(carbide.weight_percent["C"] == doctest::Approx(6.7).epsilon(0.01));
}

TEST_CASE("short soak: measured as the long-hold limit, it is the long-hold limit") {
  for (const State& limit : {bearing_state(), high_speed_state()}) {
    std::vector<MeasuredCarbide> measured;
    for (const Occurrence& o : limit.carbides())
      measured.push_back({o.kind, o.volume_percent});
    const ShortSoak soak = with_measured_carbide(limit, measured);
    for (const auto& entry : limit.matrix.weight_percent) {
      const std::string symbol = entry.first;
      const double percent = entry.second;
      CAPTURE(symbol);
      CHECK(soak.state.matrix.weight_percent[symbol] ==
            doctest::Approx(percent).epsilon(1e-9));
    }
    CHECK(soak.state.density == doctest::Approx(limit.density).epsilon(1e-10));
    const Occurrence matrix = limit.matrix_phases().front();
    const auto sites = soak.state.matrix_phases().front().site_fractions;
    REQUIRE(sites.size() == matrix.site_fractions.size());
    for (std::size_t s = 0; s < sites.size(); ++s)
      for (const auto& [name, y] : matrix.site_fractions[s].fractions)
        CHECK(sites[s].fractions[name] == doctest::Approx(y).epsilon(1e-9));
    CHECK_FALSE(holds(codes(soak.state), "348"));
  }
}

TEST_CASE("short soak: the state says what it is and what it does not know") {
  const ShortSoak soak = with_measured_carbide(bearing_state(), {{"M3C", 6.0}});
  const State& state = soak.state;
  CHECK(state.usable());
  CHECK(state.solve_report.status == SolveStatus::measured);
  CHECK(std::isnan(state.carbon_activity));
  CHECK(std::isnan(state.gibbs_energy));
  CHECK(state.chemical_potential.empty());
  CHECK(state.driving_force.empty());
  CHECK(holds(codes(state), "345"));
  CHECK(quantities::matrix("C").value(state) == state.matrix.weight_percent["C"]);
  CHECK(state.brief().find("short soak with measured carbide") != std::string::npos);
  CHECK(state.brief().find("long-hold") == std::string::npos);
  CHECK(state.full().find("no better than the count") != std::string::npos);
  CHECK(soak.full().find("long hold") != std::string::npos);
  const std::string page = report(state).text();
  CHECK(page.find("Long-hold limit (true") == std::string::npos);
  CHECK(page.find("long-hold limit (true") == std::string::npos);
  CHECK(page.find("matrix by mass balance") != std::string::npos);
}

TEST_CASE(
    "short soak: carbide of the soak or of the annealed state, the band holds both") {
  const State limit = bearing_state();
  const ShortSoak soak = with_measured_carbide(limit, {{"M3C", 6.0}});
  const ShortSoak cold = with_measured_carbide(limit, {{"M3C", 6.0}}, annealed());
  CHECK(cold.carbides.at(0).composition == CarbideSource::annealed);
  const MatrixBand& warm_band = soak.band("Cr");
  const MatrixBand& cold_band = cold.band("Cr");
  CHECK(warm_band.value == doctest::Approx(cold_band.other_composition).epsilon(1e-12));
  CHECK(cold_band.value == doctest::Approx(warm_band.other_composition).epsilon(1e-12));
  CHECK(std::abs(warm_band.value - cold_band.value) > 0.01);
  CHECK(warm_band.low == std::min(warm_band.value, warm_band.other_composition));
  CHECK(warm_band.high == std::max(warm_band.value, warm_band.other_composition));
  // Measured: 7.2 +- 0.3 wt% Cr in M3C of 1.13C 1.42Cr annealed at 750 C (BRG-01); the
  // present steel has less carbon and so fewer particles to share the chromium.
  MESSAGE("Cr in M3C annealed at 740 C: " << cold.carbides[0].weight_percent["Cr"]);
}

TEST_CASE("short soak: the standard deviation of the count goes into the band") {
  const MeasuredCarbide counted{"M3C", 6.0, 1.0};
  const ShortSoak soak = with_measured_carbide(bearing_state(), {counted});
  const auto carbon = [&](double percent) {
    return with_measured_carbide(bearing_state(), {{"M3C", percent}})
        .state.matrix.weight_percent["C"];
  };
  const MatrixBand& band = soak.band("C");
  CHECK(band.standard_deviation ==
        doctest::Approx(0.5 * (carbon(5.0) - carbon(7.0))).epsilon(1e-10));
  CHECK(band.standard_deviation > 0.04);
  CHECK(band.low == doctest::Approx(std::min(band.value, band.other_composition) -
                                    2.0 * band.standard_deviation)
                        .epsilon(1e-12));
  CHECK(band.long_hold ==
        doctest::Approx(bearing_state().matrix.weight_percent["C"]).epsilon(1e-12));
}

TEST_CASE("short soak: kinds that were not measured are kept, or absent when asked") {
  const State limit = high_speed_state();
  REQUIRE(limit.volume_percent_of("MC") > 0.0);
  const std::vector<MeasuredCarbide> measured{{"M6C", 12.0}};
  const ShortSoak kept = with_measured_carbide(limit, measured);
  CHECK(kept.state.volume_percent_of("MC") ==
        doctest::Approx(limit.volume_percent_of("MC")).epsilon(1e-12));
  CHECK(holds(codes(kept.state), "347"));
  check_balance(kept.state);
  MeasuredCarbideOptions options;
  options.unlisted = UnlistedCarbide::absent;
  const ShortSoak absent = with_measured_carbide(limit, measured, options);
  CHECK(absent.state.volume_percent_of("MC") == 0.0);
  CHECK_FALSE(holds(codes(absent.state), "347"));
  CHECK(absent.state.matrix.weight_percent["V"] >
        kept.state.matrix.weight_percent["V"]);
  check_balance(absent.state);
}

TEST_CASE(
    "short soak: carbide that a long soak dissolves comes from the annealed state") {
  // Above Acm of 52100, 900 +- 20 C (record BRG-14), nothing is left in the long run.
  const State limit = bearing().soak(Temperature::celsius(960));
  REQUIRE(limit.volume_percent_of("M3C") == 0.0);
  const ShortSoak soak = with_measured_carbide(limit, {{"M3C", 2.0}});
  CHECK(soak.carbides.at(0).composition == CarbideSource::annealed);
  CHECK_FALSE(soak.carbides[0].other_source_exists);
  CHECK(soak.band("C").low == soak.band("C").value);
  check_balance(soak.state);
}

TEST_CASE("short soak: what was counted, and how it compares, is said") {
  MeasuredCarbide small{"M3C", 0.5};
  small.smallest_counted = 0.2;
  const ShortSoak soak = with_measured_carbide(bearing_state(), {small});
  std::vector<std::string> text;
  for (const Warning& w : soak.state.warnings)
    if (w.code >= "gibbsteel.warning.345" && w.code <= "gibbsteel.warning.348")
      text.push_back(w.text);
  REQUIRE(text.size() == 3);
  CHECK(text[1] ==
        "M3C below 0.2 micrometre was not counted: what it holds is shown in the "
        "matrix.");
  CHECK(text[2].find("Less M3C was measured, 0.50 vol%, than the long-hold limit "
                     "holds, ") == 0);
}

TEST_CASE("short soak: more carbon in the carbide than in the steel") {
  const std::string text = message([] {
    with_measured_carbide(bearing_state(), {{"M3C", 20.0}});
  });
  const std::string remedy =
      "; check the count, the kind and the composition, or take the composition of the "
      "other source";
  CHECK(text ==
        "[gibbsteel.input.263] measured, C: 20 vol% M3C would hold 1.302 wt% C "
        "of the steel, which has 1.000" +
            remedy +
            "\n[gibbsteel.input.263] measured, Cr: 20 vol% M3C would hold 2.139 "
            "wt% Cr of the steel, which has 1.450" +
            remedy);
}

TEST_CASE("short soak: every problem of the input at once") {
  State state = bearing_state();
  const MeasuredCarbide wrong_limit{"M7C3", 1.0, -1.0, 0.0};
  CHECK(message([&] {
          with_measured_carbide(
              state,
              {{"austenite", 90.0}, {"M3C", -1.0}, {"M3C", std::nan("")}, wrong_limit});
        }) ==
        "[gibbsteel.input.262] measured, austenite: is the matrix; give carbides: the "
        "matrix is what they leave\n"
        "[gibbsteel.input.262] measured, M3C: is -1 vol%; give volume percents of the "
        "steel, 0 to below 100\n"
        "[gibbsteel.input.262] measured, M3C: is nan vol%; give volume percents of the "
        "steel, 0 to below 100\n"
        "[gibbsteel.input.262] measured, M3C: is given twice; give it once\n"
        "[gibbsteel.input.262] measured, M7C3: has a standard deviation of -1 vol%; "
        "give 0 or more, below 100\n"
        "[gibbsteel.input.262] measured, M7C3: has a size limit of 0 micrometre; give "
        "the smallest diameter that was counted, or leave it out");
  CHECK(message([&] { with_measured_carbide(state, {}); }) ==
        "[gibbsteel.input.262] measured: is empty; give volume percent by kind, for "
        "instance M3C 6.0");
  CHECK(message([&] {
          with_measured_carbide(state, {{"M3C", 60.0}, {"M7C3", 40.0}});
        }) ==
        "[gibbsteel.input.262] measured: sums to 100.00 vol%; give volume percents of "
        "the steel, 0 to below 100");
  state.parameters_hash = "that of another set";
  state.basis = VolumeBasis::soak;
  state.solve_report.status = SolveStatus::stalled;
  CHECK(message([&] {
          with_measured_carbide(state, {{"M3C", 6.0}});
        }) ==
        "[gibbsteel.input.266] parameters: are not those the state was made with; give "
        "the parameter set of the steel\n"
        "[gibbsteel.input.266] state: counts volumes at the soak temperature; soak "
        "again with volumes at room temperature, which the microscope sees\n"
        "[gibbsteel.input.260] state: is not usable; read its solve report; change the "
        "conditions slightly");
}

TEST_CASE("short soak: two matrix phases, no composition, no volume data") {
  const State mixed = Steel({{"C", 0.3}}).soak(Temperature::celsius(760));
  REQUIRE(mixed.matrix_phases().size() == 2);
  CHECK(message([&] {
          with_measured_carbide(mixed, {{"M3C", 1.0}});
        }) ==
        "[gibbsteel.input.260] state: has a matrix of austenite + ferrite; take a "
        "temperature at which the matrix is one phase: the balance cannot tell two "
        "apart");
  CHECK(message([&] {
          with_measured_carbide(bearing_state(), {{"M6C", 1.0}});
        }) ==
        "[gibbsteel.input.264] measured, M6C: occurs neither at 845 C nor at the "
        "annealing temperature, 740 C: its composition is not known; check the kind, "
        "or give an annealing temperature at which it occurs");
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  for (Phase& phase : set->phases)
    if (phase.name == "M3C") phase.room_volume.reset();
  MeasuredCarbideOptions options;
  options.parameters = set;
  const State state =
      Steel({{"C", 1.2}}, {"", set, false}).soak(Temperature::celsius(800));
  CHECK(message([&] {
          with_measured_carbide(state, {{"M3C", 5.0}}, options);
        }) ==
        "[gibbsteel.input.265] parameters: have no volume data for M3C; add "
        "`room_volume` to the parameter file");
}

TEST_CASE("short soak: it goes on into the hardening estimates, and they say so") {
  // Ms 245 +- 10 C, 52100 austenitized at 860 C, dilatometry (BRG-07, the pairing with
  // 860 C from memory); 65 +- 1 HRC as quenched from 845 C (BRG-12) and 10 +- 4 vol%
  // retained austenite from 850 C (BRG-13), both from memory.
  const State limit = bearing_state();
  const ShortSoak soak = with_measured_carbide(limit, {{"M3C", 6.0}});
  const HardeningEstimates estimates = hardening(soak.state);
  CHECK(std::abs(estimates.martensite_start.value - 245.0) <= 10.0);
  CHECK(std::abs(estimates.hardness_hrc.value - 65.0) <= 1.0);
  CHECK(std::abs(estimates.retained_austenite.value - 10.0) <= 4.0);
  // The long-hold limit is far from the measured martensite start: that is the point.
  CHECK(hardening(limit).martensite_start.value < 200.0);
  CHECK(estimates.full().find("Long-hold limit") == std::string::npos);
  CHECK(estimates.full().find("[gibbsteel.warning.345]") != std::string::npos);
  CHECK(hardening(limit).full().find("Long-hold limit") != std::string::npos);
}
