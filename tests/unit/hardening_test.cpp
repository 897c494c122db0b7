/// Hardening estimates of a state: the chain, families, slopes, wrong arguments.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

Steel matrix_type() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

/// A state with one matrix phase of a given composition and the rest carbide: a place
/// to check the arithmetic by hand without any parameter file.
State by_hand(const NamedValues& austenite, double m7c3_volume_percent) {
  State state;
  state.steel = "heat by hand";
  state.temperature = Temperature::celsius(1030);
  state.analysis.given = state.analysis.modelled = austenite;
  Occurrence matrix;
  matrix.name = matrix.kind = "austenite";
  matrix.role = Role::matrix;
  matrix.volume_percent = matrix.mass_percent = 100.0 - m7c3_volume_percent;
  matrix.weight_percent = austenite;
  Occurrence carbide;
  carbide.name = carbide.kind = "M7C3";
  carbide.role = Role::carbide;
  carbide.volume_percent = carbide.mass_percent = m7c3_volume_percent;
  state.occurrences = {matrix};
  if (m7c3_volume_percent > 0.0) state.occurrences.push_back(carbide);
  state.matrix.weight_percent = austenite;
  state.matrix.volume_percent = matrix.volume_percent;
  state.solve_report.status = SolveStatus::converged;
  state.solve_report.certificate = Certificate::many_starts;
  return state;
}

const NamedValues kX{{"Fe", 91.75}, {"C", 0.60}, {"Mn", 0.35}, {"Si", 0.30},
                     {"Cr", 6.0},   {"Mo", 0.7}, {"V", 0.3}};

HardeningOptions general() {
  HardeningOptions options;
  options.family = "general";
  return options;
}

bool has_code(const HardeningEstimates& result, const std::string& code) {
  for (const Warning& warning : result.warnings)
    if (warning.code == "gibbsteel.warning." + code) return true;
  return false;
}

std::string text_of(const HardeningEstimates& result, const std::string& code) {
  for (const Warning& warning : result.warnings)
    if (warning.code == "gibbsteel.warning." + code) return warning.text;
  return "";
}

}  // namespace

TEST_CASE("the chain by hand: 1.5C-12Cr matrix, 10 % M7C3, general family") {
  const HardeningEstimates result = hardening(by_hand(kX, 10.0), general());
  // Mean of 219 and 222 C, worked examples of tests/unit/property_equations_test.cpp.
  CHECK(std::abs(result.martensite_start.value - 220.5) <= 0.6);
  CHECK(result.martensite_start.high - result.martensite_start.value ==
        doctest::Approx(30.0));
  const double fraction = std::exp(-0.011 * (result.martensite_start.value - 20.0));
  CHECK(result.retained_austenite_of_matrix.value == doctest::Approx(100.0 * fraction));
  CHECK(result.retained_austenite.value == doctest::Approx(90.0 * fraction));
  const double martensite = 150.0 + 1667.0 * 0.6 - 926.0 * 0.36;
  const double bare = (1.0 - fraction) * martensite + fraction * 250.0;
  const double counted = 0.9 * bare + 0.1 * 1500.0;
  CHECK(result.hardness_hv.value == doctest::Approx(0.5 * (bare + counted)));
  CHECK(result.hardness_hrc.value ==
        doctest::Approx(hrc_from_hv(result.hardness_hv.value)));
  CHECK(result.austenite_percent == doctest::Approx(100.0));
  CHECK(result.warnings.empty());
  CHECK(result.brief() ==
        "heat by hand quenched from 1030 C (1886 F) to 20 C (68 F), long-hold limit: "
        "martensite start 221 C (191 to 251), retained austenite 9.9 vol% (4.6 to "
        "15.8), as-quenched "
        "hardness 63.7 HRC (61.2 to 65.8)");
}

TEST_CASE("large carbide counts up to 12 %") {
  const double twelve = hardening(by_hand(kX, 12.0), general()).hardness_hv.value;
  const double twenty = hardening(by_hand(kX, 20.0), general()).hardness_hv.value;
  CHECK(twenty == doctest::Approx(twelve).epsilon(1e-12));
  CHECK(twelve > hardening(by_hand(kX, 5.0), general()).hardness_hv.value);
  CHECK(quenched_hardness(817.0, 0.12, 0.20, 1500.0) ==
        doctest::Approx(0.5 * (mixture_hardness(817.0, 0.12, 0.0, 1500.0) +
                               mixture_hardness(817.0, 0.12, 0.12, 1500.0))));
}

TEST_CASE("bands: wider than their parts, and carried from martensite start") {
  const HardeningEstimates result = hardening(by_hand(kX, 10.0), general());
  const auto fraction_at = [](double start) {
    return 90.0 * std::exp(-0.011 * (start - 20.0));
  };
  const Estimate& retained = result.retained_austenite;
  const double up = fraction_at(result.martensite_start.low) - retained.value;
  CHECK(retained.high - retained.value == doctest::Approx(std::hypot(up, 90.0 * 0.05)));
  CHECK(result.hardness_hv.value - result.hardness_hv.low > 40.0);
  CHECK(result.hardness_hrc.low < result.hardness_hrc.value);
  CHECK(result.hardness_hrc.high > result.hardness_hrc.value);
}

TEST_CASE("deep cooling leaves less austenite and a harder steel") {
  HardeningOptions options = general();
  options.coldest = Temperature::celsius(-75);
  const HardeningEstimates cold = hardening(by_hand(kX, 10.0), options);
  const HardeningEstimates room = hardening(by_hand(kX, 10.0), general());
  // exp(-0.011 * 95 K) = 0.352 of what stays at 20 C.
  CHECK(cold.retained_austenite.value ==
        doctest::Approx(std::exp(-0.011 * 95.0) * room.retained_austenite.value));
  CHECK(cold.hardness_hrc.value > room.hardness_hrc.value);
}

TEST_CASE("families by composition") {
  const std::pair<const char*, NamedValues> steels[]{
      {"high-speed", {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5}, {"W", 6.2}, {"V", 1.9}}},
      {"high-speed", {{"C", 0.72}, {"Cr", 4.1}, {"W", 18}, {"V", 1.05}}},
      {"high-speed", {{"C", 0.8}, {"Cr", 4.1}, {"Mo", 4.25}, {"V", 1}}},  // M50
      {"high-speed", {{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2}, {"V", 1}}},
      {"chromium-cold-work", {{"C", 1.55}, {"Cr", 12}, {"Mo", 0.8}, {"V", 0.8}}},
      {"chromium-cold-work", {{"C", 2.1}, {"Cr", 12}}},
      {"stainless", {{"C", 0.68}, {"Cr", 13}}},
      {"stainless", {{"C", 1.05}, {"Cr", 17}, {"Mo", 0.5}}},
      {"bearing", {{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}}},
      {"bearing", {{"C", 0.95}, {"Mn", 0.4}}},                           // W1
      {"bearing", {{"C", 0.92}, {"Mn", 1.2}, {"Cr", 0.5}, {"W", 0.5}}},  // O1
      {"general", {{"C", 1.0}, {"V", 3.0}}},
      {"general", {{"C", 1.85}}},
      {"general", {{"C", 0.4}, {"Cr", 5.2}, {"Mo", 1.35}, {"V", 1}}},
      {"general", {{"C", 1.0}, {"Cr", 5.2}, {"Mo", 1.1}, {"V", 0.2}}}};
  for (const auto& [key, composition] : steels)
    CHECK(hardening_family_of(composition).key == key);
  CHECK(hardening_families().size() == 5);
  CHECK_THROWS_WITH_AS(hardening_family("hss"),
                       "[gibbsteel.input.242] family: there is no family 'hss'; choose "
                       "one of high-speed, chromium-cold-work, stainless, bearing, "
                       "general",
                       InputError);
}

TEST_CASE("a family moves start, retained austenite and hardness by what it states") {
  const State state = by_hand(kX, 10.0);
  HardeningOptions options;
  options.family = "high-speed";
  const HardeningFamily& family = hardening_family("high-speed");
  const HardeningEstimates plain = hardening(state, general());
  const HardeningEstimates moved = hardening(state, options);
  CHECK(moved.martensite_start.value - plain.martensite_start.value ==
        doctest::Approx(family.start_offset));
  CHECK(moved.retained_austenite_of_matrix.value ==
        doctest::Approx(100.0 * std::exp(-family.transformation_rate *
                                         (moved.martensite_start.value - 20.0))));
  CHECK(moved.martensite_start.equation == "exponential-mean (H12) - 69 C");
  CHECK(moved.family_chosen);
  CHECK_FALSE(hardening(state).family_chosen);
}

namespace {

HardeningEstimates of_family(const char* family) {
  HardeningOptions options;
  options.family = family;
  return hardening(by_hand(kX, 10.0), options);
}

}  // namespace

TEST_CASE("the source of hardness says from what the offset of the family comes") {
  const auto source_of = [](const char* family) {
    return of_family(family).hardness_hv.source;
  };
  const std::string equations =
      "fit to data of Krauss and Leslie used by Takahashi & Bhadeshia, from memory; "
      "mixture: own estimate";
  const std::string offset = equations + "; offset of the family: own estimate from ";
  CHECK(source_of("general") == equations);
  CHECK(source_of("bearing") == offset + "1 record");
  CHECK(source_of("high-speed") ==
        offset +
            "10 records of 3 steels, austenite of 9 computed with the shipped file");
  CHECK(source_of("stainless") ==
        offset + "3 records of 2 steels, austenite computed with the shipped file");
}

TEST_CASE("the scatter about an offset is that of several records") {
  const auto source_of = [](const char* family) {
    return of_family(family).martensite_start.source;
  };
  const std::string offset =
      "mean of van Bohemen 2012 and Barbier 2014 (from memory), own choice; offset of "
      "the family: own estimate from ";
  CHECK(source_of("high-speed") == offset + "1 record");
  CHECK(source_of("bearing") == offset + "3 records, scatter 12 C");
}

TEST_CASE("below room temperature the estimates say how little was compared") {
  const auto cold_remarks = [](double celsius, const char* family) {
    HardeningOptions options;
    options.family = family;
    options.coldest = Temperature::celsius(celsius);
    const HardeningEstimates result = hardening(by_hand(kX, 10.0), options);
    std::vector<std::string> told;
    for (const Estimate* each : {&result.retained_austenite, &result.hardness_hrc})
      for (const std::string& remark : each->remarks)
        if (remark.rfind("below 20 C", 0) == 0) told.push_back(remark);
    return told;
  };
  const std::string retained = "below 20 C no measurement was compared";
  const std::string hardness =
      "below 20 C one measurement was compared, a 0.65C-13Cr steel at -75 C";
  using Texts = std::vector<std::string>;
  CHECK(cold_remarks(-75.0, "general") == Texts{retained, hardness});
  const std::string offset =
      "; the offset of the family was found at room temperature and may be too much "
      "where less austenite stays";
  CHECK(cold_remarks(-196.0, "high-speed") == Texts{retained, hardness + offset});
  CHECK(cold_remarks(20.0, "high-speed").empty());
}

TEST_CASE("near the border of a family a warning names the other one") {
  const NamedValues border{{"C", 0.5}, {"Cr", 4.5}, {"Mo", 2.7}};
  const HardeningEstimates result = hardening(by_hand(border, 0.0));
  CHECK(text_of(result, "335") ==
        "The steel is near the border of its family: hardening estimates lie between "
        "those of high-speed (59 %) and general (41 %). Name a family to take it "
        "alone.");
  CHECK_FALSE(has_code(hardening(by_hand(border, 0.0), general()), "335"));
  CHECK_FALSE(has_code(hardening(by_hand(kX, 0.0)), "335"));
}

TEST_CASE("an equation that is named is used as it stands") {
  HardeningOptions options;
  options.family = "high-speed";
  options.martensite_start = "van-bohemen";
  options.retained_austenite = "van-bohemen-rate";
  options.martensite_hardness = "hodge-orehoski";
  const HardeningEstimates result = hardening(by_hand(kX, 10.0), options);
  CHECK(std::abs(result.martensite_start.value - 219.0) <= 0.51);
  CHECK(std::abs(result.retained_austenite_of_matrix.value - 5.7) <= 0.051);
  CHECK(result.martensite_start.equation == "van-bohemen (H7)");
  CHECK(result.hardness_hrc.equation ==
        "hodge-orehoski (H16), mixed by (H20), HRC by (H21)");
}

TEST_CASE("a user's own equation, extrapolated, with an error of its own") {
  PropertyEquation own;
  own.key = "shop";
  own.source = "dilatometer of the shop";
  own.value = [](const PropertyInput& in) {
    return 500.0 - 400.0 * in.weight_percent["C"];
  };
  own.ranges = {{"C", 0.3, 0.5}};
  own.error = 12.0;
  HardeningOptions options = general();
  options.equations = options.equations.with_equation(own);
  options.martensite_start = "shop";
  const HardeningEstimates result = hardening(by_hand(kX, 10.0), options);
  CHECK(result.martensite_start.value == doctest::Approx(260.0));
  CHECK(result.martensite_start.low == doctest::Approx(248.0));
  CHECK(result.martensite_start.source == "dilatometer of the shop");
  CHECK_FALSE(result.martensite_start.in_range);
  CHECK(text_of(result, "331") ==
        "Extrapolated: shop: 0.60 wt% C is outside its range, 0.3 to 0.5.");
}

TEST_CASE("grain limit: only with a particle size; Hillert to Zener") {
  CHECK(hardening(by_hand(kX, 5.0)).grain_diameter.remarks ==
        std::vector<std::string>{"give the mean diameter of the carbide to get it"});
  HardeningOptions options;
  options.particle_diameter = 0.5;
  const Estimate grain = hardening(by_hand(kX, 5.0), options).grain_diameter;
  // 0.5 um, 5 %: 4.4 um by Hillert, 2 * 6.7 um by Zener (worked example).
  CHECK(std::abs(grain.value - 4.4) <= 0.051);
  CHECK(grain.low == grain.value);
  CHECK(std::abs(grain.high - 2.0 * 6.7) <= 0.1);
  options.grain_pinning = "manohar";
  CHECK(std::abs(hardening(by_hand(kX, 5.0), options).grain_diameter.value - 1.7) <=
        0.051);
  CHECK(hardening(by_hand(kX, 0.0), options).grain_diameter.remarks ==
        std::vector<std::string>{"no carbide is left that pins the grains"});
}

TEST_CASE("every wrong option is named at once") {
  HardeningOptions options;
  options.family = "hss";
  options.martensite_start = "bohemen";
  options.coldest = Temperature::celsius(1100);
  options.particle_diameter = 0.0;
  options.cooling_rate = -1.0;
  CHECK_THROWS_WITH_AS(
      hardening(by_hand(kX, 5.0), options),
      "[gibbsteel.input.242] family: there is no family 'hss'; choose one of "
      "high-speed, chromium-cold-work, stainless, bearing, general\n"
      "[gibbsteel.input.240] martensite start: there is no equation 'bohemen'; choose "
      "one of steven-haynes, andrews-linear, andrews-product, steven-haynes-co-si, "
      "andrews-linear-co-si, andrews-product-co-si, stuhlmann, capdevila, van-bohemen, "
      "barbier, ingber-kunert, finkler-schirra, payson-savage, exponential-mean\n"
      "[gibbsteel.input.243] coldest temperature: is 1100 C, not below the soak at "
      "1030 "
      "C; give the temperature that the quench reaches\n"
      "[gibbsteel.input.244] particle diameter: is 0; give the mean diameter in "
      "micrometres, for instance 0.5\n"
      "[gibbsteel.input.245] cooling rate: is -1; give C/h at 700 C, for instance "
      "36000",
      InputError);
  HardeningOptions frozen;
  frozen.coldest = Temperature::celsius(-300);
  CHECK_THROWS_WITH_AS(
      hardening(by_hand(kX, 5.0), frozen),
      "[gibbsteel.input.243] coldest temperature: is -300 C; give the "
      "temperature that the quench reaches, for instance 20 C or -75 C",
      InputError);
}

TEST_CASE("only austenite hardens: ferrite beside it stays soft") {
  State state = by_hand(kX, 0.0);
  Occurrence ferrite = state.occurrences[0];
  ferrite.name = ferrite.kind = "ferrite";
  ferrite.volume_percent = 25.0;
  state.occurrences[0].volume_percent = 75.0;
  const double alone = hardening(by_hand(kX, 0.0), general()).hardness_hv.value;
  state.occurrences.push_back(ferrite);
  const HardeningEstimates result = hardening(state, general());
  CHECK(result.hardness_hv.value == doctest::Approx(0.75 * alone + 0.25 * 200.0));
  CHECK(result.retained_austenite.value ==
        doctest::Approx(result.retained_austenite_of_matrix.value));
  CHECK(text_of(result, "330") ==
        "The matrix is austenite + ferrite: only the austenite, 75 % of it, hardens; "
        "the rest counts with 200 HV.");
  state.occurrences = {ferrite};
  const HardeningEstimates soft = hardening(state);
  CHECK(text_of(soft, "330") == "The matrix is ferrite: nothing hardens.");
  CHECK_FALSE(soft.martensite_start.known());
  CHECK(soft.brief() ==
        "heat by hand quenched from 1030 C (1886 F) to 20 C (68 F), long-hold limit: "
        "no estimate, there is no austenite: nothing hardens");
}

TEST_CASE("of a partly molten steel the solid part is estimated, with a warning") {
  State state = by_hand(kX, 0.0);
  const HardeningEstimates whole = hardening(state, general());
  CHECK_FALSE(has_code(whole, "337"));
  Occurrence liquid = state.occurrences[0];
  liquid.name = liquid.kind = "liquid";
  liquid.role = Role::other;
  liquid.volume_percent = 25.0;
  state.occurrences[0].volume_percent = 75.0;
  state.occurrences.push_back(liquid);
  state.warnings = {{"gibbsteel.warning.315", "partly molten"}};
  const HardeningEstimates part = hardening(state, general());
  CHECK(part.hardness_hv.value == doctest::Approx(whole.hardness_hv.value));
  CHECK(part.retained_austenite.value ==
        doctest::Approx(0.75 * whole.retained_austenite.value));
  CHECK(part.retained_austenite_of_matrix.value ==
        doctest::Approx(whole.retained_austenite.value));
  CHECK(text_of(part, "337") ==
        "Estimates are those of the solid part: what is liquid, 25.0 vol%, freezes as "
        "something else. A steel that has begun to melt is spoilt for hardening.");
  CHECK(text_of(part, "315") == "partly molten");
  state.occurrences = {liquid};
  const HardeningEstimates molten = hardening(state, general());
  CHECK_FALSE(has_code(molten, "337"));
  CHECK(text_of(molten, "330") == "There is no matrix phase: nothing hardens.");
}

TEST_CASE("austenite that does not transform, and nitrogen that is not modelled") {
  State state = by_hand({{"C", 1.8}, {"Mn", 3.0}}, 0.0);
  state.analysis.not_modelled = {{"N", 0.12}};
  state.analysis.given.set("N", 0.12);
  const HardeningEstimates result = hardening(state, general());
  CHECK(result.retained_austenite.value == doctest::Approx(100.0));
  CHECK(result.hardness_hv.value == doctest::Approx(250.0));
  CHECK(
      text_of(result, "332") ==
      "Martensite start, -27 C, is not above the coldest temperature, 20 C: the steel "
      "stays austenite.");
  CHECK(text_of(result, "333") ==
        "N 0.12 wt% is not modelled: estimates and indices of the matrix leave it out. "
        "In solution it counts like about as much carbon.");
  CHECK(result.steel_indices.pitting_index == doctest::Approx(16.0 * 0.12));
  CHECK(result.matrix_indices.pitting_index == 0.0);
}

TEST_CASE("without volumes mass fractions stand in, and the warning says so") {
  State state = by_hand(kX, 10.0);
  state.occurrences[1].volume_percent = Occurrence::kUnknown;
  const HardeningEstimates result = hardening(state, general());
  CHECK(result.hardness_hv.value ==
        hardening(by_hand(kX, 10.0), general()).hardness_hv.value);
  CHECK(text_of(result, "334") ==
        "A phase has no volume data: mass fractions stand for volume fractions.");
}

TEST_CASE("what the state warns of, and what bears on the austenite, is kept") {
  State state = by_hand(kX, 10.0);
  state.warnings = {{"gibbsteel.warning.310", "known weak spot"},
                    {"gibbsteel.warning.307", "left out: P"}};
  const HardeningEstimates result = hardening(state, general());
  CHECK(text_of(result, "310") == "known weak spot");
  CHECK_FALSE(has_code(result, "307"));
}

TEST_CASE("a state that is not usable gives unknown estimates, not numbers") {
  SoakOptions options;
  options.phases = {{"M3C"}};
  const State state = Steel({{"C", 0.4}}).soak(Temperature::celsius(900), options);
  const HardeningEstimates result = hardening(state);
  CHECK(std::isnan(result.hardness_hrc.value));
  CHECK(result.hardness_hrc.remarks ==
        std::vector<std::string>{"the state is not usable"});
  CHECK(has_code(result, "308"));
  CHECK(std::isnan(quantities::hardness_hrc().value(state)));
}

TEST_CASE("quantities are the numbers of hardening()") {
  const State state = matrix_type().soak(Temperature::celsius(1120));
  HardeningOptions options;
  options.coldest = Temperature::celsius(-75);
  const HardeningEstimates result = hardening(state, options);
  CHECK(quantities::martensite_start(options).value(state) ==
        result.martensite_start.value);
  CHECK(quantities::retained_austenite(options).value(state) ==
        doctest::Approx(result.retained_austenite.value).epsilon(1e-14));
  CHECK(quantities::retained_austenite_of_matrix(options).value(state) ==
        doctest::Approx(result.retained_austenite_of_matrix.value).epsilon(1e-14));
  CHECK(quantities::hardness_hv(options).value(state) == result.hardness_hv.value);
  CHECK(quantities::hardness_hrc(options).value(state) == result.hardness_hrc.value);
  CHECK(quantities::hardness_hrc().label() == "as-quenched hardness [HRC]");
  options.particle_diameter = 0.5;
  const double limit = hardening(state, options).grain_diameter.value;
  CHECK(quantities::grain_limit(options).value(state) == limit);
  CHECK(quantities::grain_limit(options).label() == "austenite grain limit [um]");
}

TEST_CASE("bands of quantities are those of hardening()") {
  HardeningOptions options;
  options.particle_diameter = 0.5;
  const std::pair<Quantity, Estimate HardeningEstimates::*> all[]{
      {quantities::martensite_start(options), &HardeningEstimates::martensite_start},
      {quantities::retained_austenite(options),
       &HardeningEstimates::retained_austenite},
      {quantities::retained_austenite_of_matrix(options),
       &HardeningEstimates::retained_austenite_of_matrix},
      {quantities::hardness_hv(options), &HardeningEstimates::hardness_hv},
      {quantities::hardness_hrc(options), &HardeningEstimates::hardness_hrc},
      {quantities::grain_limit(options), &HardeningEstimates::grain_diameter}};
  // One family, and a mixture of two near a border.
  for (const Steel& steel :
       {matrix_type(), Steel({{"C", 0.6}, {"Cr", 5.0}, {"Mo", 2.7}, {"V", 0.5}})}) {
    const State state = steel.soak(Temperature::celsius(1020));
    const HardeningEstimates result = hardening(state, options);
    for (const auto& [quantity, estimate] : all) {
      const std::string label = quantity.label();
      CAPTURE(label);
      CHECK(quantity.has_band());
      const Quantity::Ends ends = quantity.band(state);
      CHECK(ends.low == (result.*estimate).low);
      CHECK(ends.high == (result.*estimate).high);
      CHECK(std::isnan(quantity.band(State{}).low));
    }
  }
  CHECK(!quantities::matrix("C").has_band());
  CHECK(std::isnan(quantities::matrix("C").band(by_hand(kX, 5.0)).high));
}

TEST_CASE("grain limit as a quantity: of the carbide, not of the family") {
  CHECK_THROWS_WITH_AS(
      quantities::grain_limit({}),
      "[gibbsteel.input.244] particle diameter: is not given; give the mean diameter "
      "in micrometres, for instance 0.5",
      InputError);
  HardeningOptions options;
  options.particle_diameter = 0.5;
  const Quantity limit = quantities::grain_limit(options);
  CHECK(!limit.by_family());
  CHECK(std::abs(limit.value(by_hand(kX, 5.0)) - 4.4) <= 0.051);
  CHECK(std::isnan(limit.value(by_hand(kX, 0.0))));
  // Near a border, where martensite start is told to be a mean of two families.
  const State between = Steel({{"C", 0.6}, {"Cr", 5.0}, {"Mo", 2.7}, {"V", 0.5}})
                            .soak(Temperature::celsius(1020));
  REQUIRE(hardening(between).family_shares.size() == 2);
  CHECK(limit.value(between) == hardening(between, options).grain_diameter.value);
  const auto has_335 = [&](const Quantity& quantity) {
    for (const Warning& warning : quantity.warnings(between))
      if (warning.code == "gibbsteel.warning.335") return true;
    return false;
  };
  CHECK(has_335(quantities::martensite_start()));
  CHECK(!has_335(limit));
}

TEST_CASE("slopes of quantities agree with central differences of the state") {
  HardeningOptions usual;
  usual.particle_diameter = 0.5;
  HardeningOptions cold = usual;
  cold.coldest = Temperature::celsius(-75);
  HardeningOptions other = general();
  other.particle_diameter = 2.0;
  other.martensite_start = "andrews-product";
  other.retained_austenite = "van-bohemen-rate";
  other.martensite_hardness = "just";
  const std::pair<Steel, double> cases[]{
      {matrix_type(), 1120.0},
      {Steel({{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}}), 845.0},
      {Steel({{"C", 1.55}, {"Cr", 12}, {"Mo", 0.8}, {"V", 0.8}, {"Mn", 0.3}}), 1030.0},
      {Steel({{"C", 0.4}, {"Cr", 13.6}, {"V", 0.3}}), 1000.0}};
  for (const auto& pair : cases) {
    const Sensitivities all =
        sensitivities(pair.first, Temperature::celsius(pair.second));
    for (const HardeningOptions& options : {usual, cold, other})
      for (const Quantity& quantity :
           {quantities::martensite_start(options),
            quantities::retained_austenite(options), quantities::hardness_hv(options),
            quantities::retained_austenite_of_matrix(options),
            quantities::hardness_hrc(options), quantities::grain_limit(options)})
        for (const StateSlope& slope : all.slopes) {
          CAPTURE(quantity.name());
          CAPTURE(slope.input.name);
          const Quantity numeric(quantity.name(), quantity.unit(), quantity.function());
          const double exact = quantity.slope(all.state, slope);
          CHECK(exact == doctest::Approx(numeric.slope(all.state, slope))
                             .epsilon(1e-5)
                             .scale(1e-3));
        }
  }
}

TEST_CASE("a steel that stays austenite is as soft as austenite") {
  const Steel steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}});
  HardeningOptions options;
  options.coldest = Temperature::celsius(500.0);
  const auto result = hardening(steel.soak(Temperature::celsius(1120.0)), options);
  CHECK(result.retained_austenite_of_matrix.value == doctest::Approx(100.0));
  // 200 to 300 HV (common practice, no source), and a
  // little for the carbide.
  CHECK(result.hardness_hv.value > 200.0);
  CHECK(result.hardness_hv.value < 300.0);
}
