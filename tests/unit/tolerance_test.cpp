/// Bands of a heat out of its tolerances. The oracle is the soak itself: single soaks
/// of the heats in question, all corners of the box, differences of soaks.

#include "gibbsteel/tolerance.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstring>

#include "gibbsteel/errors.hpp"
#include "tolerance/heat_soaks.hpp"
#include "tolerance/input_distribution.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1120);

Steel punch() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

/// Narrow enough for first order, away from any phase change.
HeatTolerances narrow() {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.547, 0.553}, {"Mo", 2.73, 2.77}};
  tolerances.standard_deviations = {{"V", 0.005}, {"Cr", 0.02}};
  tolerances.furnace_error = 1.0;
  tolerances.segregation_percent = 0.5;
  return tolerances;
}

ToleranceOptions sampling(std::size_t samples, std::size_t threads = 1,
                          bool corners = false) {
  ToleranceOptions options;
  options.samples = samples;
  options.threads = threads;
  options.corners = corners;
  return options;
}

double rows_equal(const std::vector<double>& a, const std::vector<double>& b) {
  return a.size() == b.size() &&
         std::memcmp(a.data(), b.data(), a.size() * sizeof(double)) == 0;
}

}  // namespace

TEST_CASE("first order and sampling agree for small tolerances") {
  for (const SegregatedCarbon carbon :
       {SegregatedCarbon::equal_activity, SegregatedCarbon::scaled}) {
    CAPTURE(to_string(carbon));
    ToleranceOptions options = sampling(64);
    options.segregated_carbon = carbon;
    const ToleranceBand band = tolerance_band(punch(), kSoak, narrow(), {}, options);
    REQUIRE(band.unusable.empty());
    REQUIRE(band.quantities.size() == 8);  // C, carbide, MC, M6C, Cr, Mo, W, V
    for (const QuantityBand& q : band.quantities) {
      CAPTURE(q.label());
      const double deviation = q.first_order.standard_deviation;
      REQUIRE(deviation > 0.0);
      CHECK_FALSE(q.first_order.one_sided);
      // Standard errors of 64 random samples: quasi-random ones are better.
      CHECK(std::abs(q.sampled.standard_deviation - deviation) <
            deviation / std::sqrt(2.0 * 63.0));
      CHECK(std::abs(q.sampled.mean - q.first_order.mean) <
            deviation / std::sqrt(64.0));
      double shares = 0.0, sampled_shares = 0.0;
      for (const Contribution& c : q.contributions) {
        shares += c.share;
        sampled_shares += c.sampled_share;
        CHECK(std::abs(c.share - c.sampled_share) < 0.1);
      }
      CHECK(shares == doctest::Approx(1.0).epsilon(1e-12));
      CHECK(std::abs(sampled_shares - 1.0) < 0.1);
    }
  }
}

TEST_CASE("slopes are those of the soaks: differences over each input") {
  const auto inputs = internal::inputs_of(punch(), kSoak, narrow());
  const internal::HeatSoaks heats(punch(), kSoak, inputs, {},
                                  SegregatedCarbon::equal_activity);
  const ToleranceBand band = tolerance_band(punch(), kSoak, narrow(), {}, sampling(0));
  const auto quantities = default_quantities(band.nominal);
  std::vector<double> nominal;
  for (const TolerancedInput& input : inputs) nominal.push_back(input.nominal);
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    CAPTURE(inputs[i].name);
    const double step = 0.02 * inputs[i].standard_deviation;
    auto low = nominal, high = nominal;
    low[i] -= step;
    high[i] += step;
    const State below = heats.at(low).state, above = heats.at(high).state;
    for (std::size_t q = 0; q < quantities.size(); ++q) {
      const double slope =
          (quantities[q].value(above) - quantities[q].value(below)) / (2.0 * step);
      const double scale = band.quantities[q].first_order.standard_deviation /
                           inputs[i].standard_deviation;
      CHECK(std::abs(band.quantities[q].contributions[i].slope - slope) < 1e-4 * scale);
    }
  }
}

TEST_CASE("a sample is the soak of that heat") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.5, 0.6}};
  tolerances.standard_deviations = {{"V", 0.05}};
  tolerances.furnace_error = 10.0;
  const ToleranceBand band = tolerance_band(punch(), kSoak, tolerances,
                                            {quantities::matrix("C")}, sampling(16));
  for (std::size_t row = 0; row < band.samples; ++row) {
    const double* x = &band.sample_inputs[3 * row];
    const State single =
        punch().changed({{"C", x[0]}, {"V", x[1]}}).soak(Temperature::celsius(x[2]));
    CHECK(band.sample_values[row] == single.matrix.weight_percent["C"]);
    CHECK(x[0] >= 0.5);
    CHECK(x[0] <= 0.6);
    CHECK(std::abs(x[2] - 1120.0) <= 10.0);
  }
}

TEST_CASE("the same to the last bit on any number of threads") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.50, 0.60}};
  tolerances.standard_deviations = {{"V", 0.05}};
  tolerances.segregation_percent = 5.0;
  const auto run = [&](std::size_t threads) {
    return tolerance_band(punch(), kSoak, tolerances,
                          {quantities::matrix("C"), quantities::volume_percent("MC")},
                          sampling(36, threads, true));
  };
  const ToleranceBand serial = run(1);
  for (const std::size_t threads : {2u, 5u}) {
    const ToleranceBand parallel = run(threads);
    CHECK(rows_equal(parallel.sample_inputs, serial.sample_inputs));
    CHECK(rows_equal(parallel.sample_values, serial.sample_values));
    CHECK(parallel.corners == serial.corners);
    CHECK(parallel.full() == serial.full());
    for (std::size_t q = 0; q < serial.quantities.size(); ++q) {
      const QuantityBand &a = serial.quantities[q], &b = parallel.quantities[q];
      CHECK(a.lowest_corner.value == b.lowest_corner.value);
      CHECK(a.highest_corner.inputs == b.highest_corner.inputs);
      CHECK(a.sampled.mean == b.sampled.mean);
    }
  }
}

TEST_CASE("worst corners are those of all corners") {
  HeatTolerances tolerances;
  tolerances.ranges = {{"C", 0.50, 0.60}, {"Cr", 4.0, 5.0}, {"V", 0.9, 1.1}};
  tolerances.standard_deviations = {{"Mo", 0.1}};
  tolerances.furnace_error = 10.0;
  const ToleranceBand band =
      tolerance_band(punch(), kSoak, tolerances, {}, sampling(0, 0, true));
  const internal::HeatSoaks heats(punch(), kSoak, band.inputs, {},
                                  SegregatedCarbon::equal_activity);
  const auto quantities = default_quantities(band.nominal);
  std::vector<double> lowest(quantities.size(), HUGE_VAL);
  std::vector<double> highest(quantities.size(), -HUGE_VAL);
  for (unsigned corner = 0; corner < 32; ++corner) {
    std::vector<double> x;
    for (std::size_t i = 0; i < 5; ++i)
      x.push_back(corner >> i & 1 ? band.inputs[i].high : band.inputs[i].low);
    const State state = heats.at(x).state;
    for (std::size_t q = 0; q < quantities.size(); ++q) {
      lowest[q] = std::min(lowest[q], quantities[q].value(state));
      highest[q] = std::max(highest[q], quantities[q].value(state));
    }
  }
  for (std::size_t q = 0; q < quantities.size(); ++q) {
    CAPTURE(quantities[q].label());
    CHECK(band.quantities[q].lowest_corner.value == lowest[q]);
    CHECK(band.quantities[q].highest_corner.value == highest[q]);
  }
  CHECK(band.corners <= 32);
  // Less carbon in the steel, hotter: less carbide (common practice, no source).
  const auto& least = band.at("carbide").lowest_corner.inputs;
  CHECK(least[0] == 0.50);
  CHECK(least[4] == 1130.0);
}

TEST_CASE("a segregated place has the carbon activity of the heat, Eq. (U4)") {
  for (const double percent : {-8.0, 8.0}) {
    CAPTURE(percent);
    const State heat = punch().soak(kSoak);
    HeatTolerances tolerances;
    tolerances.segregation_percent = 10.0;
    const auto inputs = internal::inputs_of(punch(), kSoak, tolerances);
    const auto place = [&](SegregatedCarbon carbon) {
      const internal::HeatSoaks heats(punch(), kSoak, inputs, {}, carbon);
      return heats.at(std::vector<double>{percent}).state;
    };
    const State equal = place(SegregatedCarbon::equal_activity);
    CHECK(std::abs(equal.carbon_activity / heat.carbon_activity - 1.0) < 1e-7);
    CHECK(equal.analysis.given["Cr"] ==
          doctest::Approx(4.5 * (1.0 + percent / 100.0)).epsilon(1e-14));
    // Carbide formers draw carbon (common practice, no source).
    CHECK((equal.analysis.given["C"] - 0.55) * percent > 0.0);
    CHECK(place(SegregatedCarbon::scaled).analysis.given["C"] ==
          doctest::Approx(0.55 * (1.0 + percent / 100.0)).epsilon(1e-14));
    CHECK(place(SegregatedCarbon::unchanged).analysis.given["C"] == 0.55);
  }
}

TEST_CASE("silicon drives carbon away") {
  // L. S. Darken, Trans. AIME 180 (1949) 430 (from memory): carbon leaves the side of a
  // weld that is rich in Si.
  const Steel spring({{"C", 0.5}, {"Si", 1.5}});
  HeatTolerances tolerances;
  tolerances.segregation_percent = 20.0;
  const Temperature t = Temperature::celsius(1050);
  const internal::HeatSoaks heats(spring, t, internal::inputs_of(spring, t, tolerances),
                                  {}, SegregatedCarbon::equal_activity);
  CHECK(heats.at(std::vector<double>{20.0}).state.analysis.given["C"] < 0.495);
}
