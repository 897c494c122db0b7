/// Bands from the standard deviations of a parameter file. The oracle is the soak with
/// other numbers in the file. The standard deviations here are invented for the test.

#include "gibbsteel/parameter_band.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstring>

#include "first_edition.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/tolerance.hpp"

using namespace gibbsteel;

namespace {

const Temperature kSoak = Temperature::celsius(1120);

CoefficientName power_of(const Phase& phase, const Term& term, std::size_t i) {
  return {phase.name, PhaseProperty::energy, term.on, term.order,
          term.value.terms[i].power};
}

/// The first edition, which states none, with invented standard deviations: 1.5 kJ/mol
/// on the constant and, strongly correlated, 1 J/(mol K) on the slope of one end member
/// of M6C, 300 J/mol on an end member of austenite (also MC), 1 % on a volume.
SharedParameters uncertain(double size = 1.0, double correlation = -0.95) {
  ParameterSet set = *first_edition();
  for (Phase& phase : set.phases) {
    if (phase.name != "M6C" && phase.name != "austenite") continue;
    for (Term& term : phase.energy) {
      auto& powers = term.value.terms;
      if (powers.size() < 2 || powers[0].standard_deviation > 0.0) continue;
      if (powers[0].power.exponent != 0 || powers[1].power.exponent != 1) continue;
      if (phase.name == "M6C") {
        powers[0].standard_deviation = 1500.0 * size;
        powers[1].standard_deviation = 1.0 * size;
        Correlation pair;
        pair.first = power_of(phase, term, 0);
        pair.second = power_of(phase, term, 1);
        pair.coefficient = correlation;
        set.correlations.push_back(pair);
      } else {
        powers[0].standard_deviation = 300.0 * size;
      }
      break;
    }
    if (phase.name == "M6C")
      phase.room_volume->terms[0].standard_deviation =
          0.01 * size * phase.room_volume->terms[0].cm3_per_mol;
  }
  return std::make_shared<const ParameterSet>(std::move(set));
}

Steel punch(const SharedParameters& set) {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", set, false});
}

ParameterBandOptions sampling(std::size_t samples, std::size_t threads = 0) {
  ParameterBandOptions options;
  options.samples = samples;
  options.threads = threads;
  return options;
}

}  // namespace

TEST_CASE("first order and sampling agree for small standard deviations") {
  const ParameterBand band =
      parameter_band(punch(uncertain(0.1)), kSoak, {}, sampling(128));
  REQUIRE(band.inputs.size() == 4);
  REQUIRE(band.unusable.empty());
  for (const QuantityBand& q : band.quantities) {
    CAPTURE(q.label());
    const double deviation = q.first_order.standard_deviation;
    REQUIRE(deviation > 0.0);
    // Standard errors of 128 random samples: quasi-random ones are better.
    CHECK(std::abs(q.sampled.standard_deviation - deviation) <
          deviation / std::sqrt(2.0 * 127.0));
    CHECK(std::abs(q.sampled.mean - q.nominal) < deviation / std::sqrt(128.0));
    double shares = 0.0;
    for (const Contribution& c : q.contributions) shares += c.share;
    CHECK(shares == doctest::Approx(1.0).epsilon(1e-10));
  }
}

TEST_CASE("the variance is that of all pairs, correlations included, Eq. (U5)") {
  const Quantity carbide = quantities::volume_percent("M6C");
  const auto deviation = [&](double correlation) {
    const auto band =
        parameter_band(punch(uncertain(1.0, correlation)), kSoak, {carbide});
    return band.quantities[0].first_order.standard_deviation;
  };
  const ParameterBand band =
      parameter_band(punch(uncertain(1.0, 0.0)), kSoak, {carbide});
  std::vector<double> g;
  std::size_t constant = 0, slope = 0;
  for (std::size_t i = 0; i < band.inputs.size(); ++i) {
    const Contribution& c = band.quantities[0].contributions[i];
    g.push_back(c.slope * band.inputs[i].standard_deviation);
    if (c.input.ends_with("/terms/1") && c.input.starts_with("/phases/M6C/"))
      constant = i;
    if (c.input.ends_with("/terms/T")) slope = i;
  }
  REQUIRE(constant != slope);
  double squares = 0.0;
  for (const double part : g) squares += part * part;
  for (const double r : {-0.95, 0.0, 0.6})
    CHECK(deviation(r) ==
          doctest::Approx(std::sqrt(squares + 2.0 * r * g[constant] * g[slope]))
              .epsilon(1e-10));
  // A constant and a slope that were fitted together compensate each other.
  CHECK(deviation(-0.95) < deviation(0.0));
}

TEST_CASE("slopes are those of soaks with other numbers in the file") {
  const SharedParameters set = uncertain();
  const ParameterBand band = parameter_band(punch(set), kSoak);
  const CoefficientName name = set->correlations[0].first;
  const std::vector<Quantity> chosen = default_quantities(band.nominal);
  const auto value = [&](double step, std::size_t q) {
    ParameterSet other = *set;
    for (Phase& phase : other.phases)
      for (Term& term : phase.energy)
        if (phase.name == name.phase && term.on == name.on && term.order == name.order)
          term.value.terms[0].coefficient += step;
    const State state =
        punch(std::make_shared<const ParameterSet>(std::move(other))).soak(kSoak);
    return chosen[q].value(state);
  };
  for (std::size_t q = 0; q < band.quantities.size(); ++q) {
    CAPTURE(band.quantities[q].label());
    const double slope = (value(5.0, q) - value(-5.0, q)) / 10.0;
    for (const Contribution& c : band.quantities[q].contributions)
      if (c.input.starts_with("/phases/M6C/energy/") && c.input.ends_with("/terms/1"))
        CHECK(std::abs(c.slope - slope) < 1e-4 * std::abs(slope));
  }
}

TEST_CASE("the same to the last bit on any number of threads") {
  const Steel steel = punch(uncertain());
  const ParameterBand serial = parameter_band(steel, kSoak, {}, sampling(16, 1));
  const ParameterBand parallel = parameter_band(steel, kSoak, {}, sampling(16, 3));
  REQUIRE(serial.sample_values.size() == parallel.sample_values.size());
  CHECK(std::memcmp(serial.sample_values.data(), parallel.sample_values.data(),
                    serial.sample_values.size() * sizeof(double)) == 0);
  CHECK(serial.full() == parallel.full());
}

TEST_CASE("what cannot be asked for") {
  CHECK_THROWS_WITH_AS(
      parameter_band(punch(first_edition()), kSoak),
      "[gibbsteel.input.279] parameters: the set states no standard deviation for any "
      "number; lay a file with \"standard_deviations\" on top of it",
      InputError);
  ParameterBandOptions options;
  options.percentiles = {0.0};
  CHECK_THROWS_WITH_AS(parameter_band(punch(uncertain()), kSoak, {}, options),
                       "[gibbsteel.input.276] percentiles: holds 0; give ascending "
                       "numbers between 0 and "
                       "100",
                       InputError);
}

TEST_CASE("356: phases whose numbers all count as exact are named") {
  const auto said = [](const NamedValues& steel, double celsius) {
    std::string text;
    const ParameterBand band =
        parameter_band(Steel(steel), Temperature::celsius(celsius));
    REQUIRE(band.usable());
    for (const Warning& warning : band.warnings)
      if (warning.code == "gibbsteel.warning.356") text += warning.text;
    return text;
  };
  const std::string begin =
      "In this steel no energy of these phases has a standard deviation: ";
  const std::string end =
      ". The band leaves out how uncertain they are; a narrow one says nothing.";
  // Of the file that ships: what was calibrated states one.
  CHECK(said({{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}}, 1200) ==
        "");
  CHECK(said({{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}}, 1030) ==
        begin + "M7C3" + end);
  CHECK(said({{"C", 1.0}, {"Cr", 1.45}}, 845) == begin + "austenite, M3C" + end);
}
