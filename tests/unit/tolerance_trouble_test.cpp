/// Tolerance bands at phase changes, without a result, stopped, and asked for wrongly.

#include <doctest/doctest.h>

#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/tolerance.hpp"

using namespace gibbsteel;

namespace {

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

ToleranceOptions sampling(std::size_t samples) {
  ToleranceOptions options;
  options.samples = samples;
  options.threads = 1;
  options.corners = false;
  return options;
}

const Warning* find(const std::vector<Warning>& warnings, const std::string& code) {
  for (const Warning& warning : warnings)
    if (warning.code == code) return &warning;
  return nullptr;
}

}  // namespace

TEST_CASE("phases that come and go are counted and warned of") {
  // Fe-C: A_cm of 1.0 % C is near 800 C, so a furnace error of 30 C around it crosses
  // it; the share is checked against the samples one by one.
  const Steel steel({{"C", 1.0}}, {"plain", {}, false});
  const Temperature t = Temperature::celsius(810);
  HeatTolerances tolerances;
  tolerances.furnace_error = 40.0;
  const ToleranceBand band = tolerance_band(
      steel, t, tolerances, {quantities::mass_percent("M3C")}, sampling(32));
  std::size_t with_cementite = 0;
  for (std::size_t i = 0; i < band.samples; ++i)
    if (band.sample_values[i] > 0.0) ++with_cementite;
  REQUIRE(with_cementite > 0);
  REQUIRE(with_cementite < 32);
  double share = -1.0;
  for (const PhaseShare& phase : band.phases)
    if (phase.kind == "M3C") share = phase.share;
  CHECK(share == static_cast<double>(with_cementite) / 32.0);
  const Warning* warning = find(band.warnings, "gibbsteel.warning.354");
  REQUIRE(warning);
  CHECK(warning->text.find("M3C in ") != std::string::npos);
  // Sampled: never negative, zero above A_cm. A straight line would not know.
  CHECK(band.quantities[0].sampled.lowest == 0.0);
}

TEST_CASE("close to a phase change the first-order band is flagged") {
  const Steel steel({{"C", 0.4}}, {"plain", {}, false});
  // Bisect to 0.01 K of where the last ferrite goes.
  double low = 760.0, high = 830.0;
  while (high - low > 0.01) {
    const double middle = 0.5 * (low + high);
    const State state = steel.soak(Temperature::celsius(middle));
    (state.matrix_phases().size() > 1 ? low : high) = middle;
  }
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.39, 0.41}};
  const ToleranceBand band =
      tolerance_band(steel, Temperature::celsius(low), tolerances, {}, sampling(8));
  REQUIRE_FALSE(band.quantities.empty());
  CHECK(band.quantities[0].first_order.one_sided);
  CHECK(find(band.warnings, "gibbsteel.warning.350"));
  // Far away it is not.
  const ToleranceBand far =
      tolerance_band(steel, Temperature::celsius(900), tolerances, {}, sampling(0));
  CHECK_FALSE(far.quantities[0].first_order.one_sided);
  CHECK_FALSE(find(far.warnings, "gibbsteel.warning.350"));
}

TEST_CASE("samples without a result are counted and left out, never dropped silently") {
  // Cementite and graphite alone hold 6.7 wt% C or more: part of the range has none.
  const Steel steel({{"C", 7.0}}, {"trial", {}, false});
  ToleranceOptions options = sampling(32);
  options.soak.graphite = true;
  options.soak.phases = {{"M3C", "graphite"}};
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 6.4, 7.2}};
  const ToleranceBand band =
      tolerance_band(steel, Temperature::celsius(900), tolerances,
                     {quantities::mass_percent("M3C")}, options);
  REQUIRE(band.nominal.usable());
  CHECK(band.samples == 32);
  REQUIRE(band.unusable.size() > 5);
  CHECK(band.quantities[0].sampled.count == 32 - band.unusable.size());
  for (const UnusableSample& sample : band.unusable) {
    CHECK(sample.inputs[0] < 6.70);
    CHECK_FALSE(sample.reason.empty());
  }
  std::size_t unknown = 0;
  for (const double value : band.sample_values)
    if (std::isnan(value)) ++unknown;
  CHECK(unknown == band.unusable.size());
  const Warning* warning = find(band.warnings, "gibbsteel.warning.351");
  REQUIRE(warning);
  CHECK(warning->text.starts_with(std::to_string(unknown) + " of 32 samples gave no"));
  CHECK(band.full().find("NOT USABLE") != std::string::npos);
}

TEST_CASE("a steel without a result has no band, and says so") {
  ToleranceOptions options = sampling(8);
  options.soak.phases = {{"M3C"}};
  HeatTolerances tolerances;
  tolerances.furnace_error = 5.0;
  const ToleranceBand band =
      tolerance_band(punch(), Temperature::celsius(1120), tolerances, {}, options);
  CHECK_FALSE(band.usable());
  CHECK(band.quantities.empty());
  CHECK(band.samples == 0);
  CHECK(band.brief() == band.nominal.brief());
  CHECK(band.full().starts_with(band.nominal.brief()));
  CHECK_THROWS_WITH_AS(band.at("C in the matrix"),
                       "[gibbsteel.input.209] quantity: 'C in the matrix' is not in "
                       "this band; the nominal state is not usable: it holds none",
                       InputError);
}

TEST_CASE("stopped: the part that is done is the first part of the whole") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.50, 0.60}};
  ToleranceOptions options = sampling(96);
  const std::vector<Quantity> carbon{quantities::matrix("C")};
  const Temperature t = Temperature::celsius(1120);
  const ToleranceBand whole = tolerance_band(punch(), t, tolerances, carbon, options);
  std::vector<std::size_t> seen;
  options.corners = true;
  options.progress = [&](std::size_t done) {
    seen.push_back(done);
    return done < 64;
  };
  const ToleranceBand part = tolerance_band(punch(), t, tolerances, carbon, options);
  CHECK(seen == std::vector<std::size_t>{32, 64});
  CHECK(part.cancelled);
  REQUIRE(part.samples == 64);
  CHECK(part.corners == 0);
  CHECK(part.quantities[0].sampled.count == 64);
  for (std::size_t i = 0; i < 64; ++i)
    CHECK(part.sample_values[i] == whole.sample_values[i]);
  CHECK(part.brief().ends_with("64 samples, CANCELLED after 64 of 96"));
  CHECK_FALSE(whole.cancelled);
}

TEST_CASE("an element that the steel lacks, and one that the file does not model") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"Ni", 0.0, 0.4}, {"Cu", 0.0, 0.3}};
  const ToleranceBand band =
      tolerance_band(punch(), Temperature::celsius(1120), tolerances,
                     {quantities::matrix("C")}, sampling(64));
  CHECK(band.unusable.empty());
  const QuantityBand& carbon = band.quantities[0];
  for (std::size_t i = 0; i < 2; ++i) {
    CAPTURE(carbon.contributions[i].input);
    NamedValues change;
    change.set(carbon.contributions[i].input, 0.01);
    const double value = punch()
                             .changed(change)
                             .soak(Temperature::celsius(1120))
                             .matrix.weight_percent["C"];
    const double slope = (value - carbon.nominal) / 0.01;
    CHECK(std::abs(carbon.contributions[i].slope - slope) < 0.01 * std::abs(slope));
  }
  CHECK(std::abs(carbon.sampled.standard_deviation -
                 carbon.first_order.standard_deviation) <
        0.1 * carbon.first_order.standard_deviation);
}

TEST_CASE("tolerances outside the validity of the file are warned of") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"Mn", 0.0, 3.0}};
  const ToleranceBand band =
      tolerance_band(punch(), Temperature::celsius(1120), tolerances, {}, sampling(0));
  const Warning* warning = find(band.warnings, "gibbsteel.warning.353");
  REQUIRE(warning);
  CHECK(warning->text ==
        "The tolerances reach outside the validity of the parameter file: Mn (0 to 2 "
        "wt%).");
}

TEST_CASE("everything wrong with tolerances is said at once") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.6, 0.5},
                       {"Cr", 5.0, 5.5},
                       {"Fe", 80, 90},
                       {"mo", 2.0, 3.0},
                       {"V", 0.9, 1.1}};
  tolerances.standard_deviations = {{"V", 0.05}, {"W", 0.0}};
  tolerances.furnace_error = 500.0;
  tolerances.segregation_percent = -1.0;
  ToleranceOptions options = sampling(2'000'000);
  options.percentiles = {50.0, 5.0};
  CHECK_THROWS_WITH_AS(
      tolerance_band(punch(), Temperature::celsius(1120), tolerances, {}, options),
      "[gibbsteel.input.270] ranges, C: is 0.6 to 0.5 wt%; give (lowest, highest) "
      "within "
      "0 to 100 weight percent\n"
      "[gibbsteel.input.272] ranges, Cr: is 5 to 5.5 wt%, and the steel has 4.5; give "
      "a "
      "range that holds the steel, or a steel that is within the range\n"
      "[gibbsteel.input.273] ranges: Fe is the balance; give the tolerances of the "
      "other elements only\n"
      "[gibbsteel.input.201] ranges: 'mo' is not the symbol of an element; did you "
      "mean "
      "'Mo'?\n"
      "[gibbsteel.input.271] standard_deviations: V is given twice; give it one range "
      "or one standard deviation\n"
      "[gibbsteel.input.274] standard_deviations, W: is 0; give weight percent above "
      "0, "
      "at most 100\n"
      "[gibbsteel.input.275] furnace error: is 500; give 0 to 200 C\n"
      "[gibbsteel.input.275] segregation: is -1; give 0 to 90 percent of the alloy "
      "content\n"
      "[gibbsteel.input.276] samples: is 2000000; give 0 for none, or 8 to 1000000\n"
      "[gibbsteel.input.276] percentiles: holds 5; give ascending numbers between 0 "
      "and "
      "100",
      InputError);
}

TEST_CASE("nothing that scatters; too much that scatters; too hot with the error") {
  const Temperature t = Temperature::celsius(1120);
  CHECK_THROWS_WITH_AS(
      tolerance_band(punch(), t, {}),
      "[gibbsteel.input.277] tolerances: nothing scatters; give a range, a standard "
      "deviation, a furnace error or a segregation",
      InputError);
  HeatTolerances wide;
  wide.ranges = {{"Co", 0.0, 95.0}};
  CHECK_THROWS_WITH_AS(
      tolerance_band(punch(), t, wide),
      "[gibbsteel.input.278] tolerances: let the elements sum to 105.80 weight "
      "percent; "
      "narrow them: the sum with every element at its highest cannot be above 100",
      InputError);
  HeatTolerances hot;
  hot.furnace_error = 100.0;
  CHECK_THROWS_WITH_AS(
      tolerance_band(punch(), Temperature::celsius(2200), hot),
      "[gibbsteel.input.210] temperature: is 2573.2 K = 2300.0 C; did you mean 2300 F "
      "(1260 C)? give 300 K to 2500 K (27 C to 2227 C, 80 F to 4040 F) and check the "
      "unit",
      InputError);
}
