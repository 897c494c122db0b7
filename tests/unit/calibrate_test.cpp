/// Calibrations against what is known: numbers that were shifted on purpose, a case
/// with a closed form, an outlier, a number that nothing sees. Measurements are made up
/// from the library itself.

#include "gibbsteel/calibrate.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <cmath>
#include <cstring>

#include "calibration_helpers.hpp"
#include "gibbsteel/errors.hpp"

using namespace gibbsteel;
using namespace calibration_helpers;

namespace {

CalibrationOptions without_cross_validation(Loss loss = Loss::huber) {
  CalibrationOptions options;
  options.loss = loss;
  options.cross_validate = false;
  return options;
}

/// Volume of a gram [cm3/g]: in pure austenite linear in the volume of the end member.
Quantity specific_volume() {
  return {"volume of a gram", "cm3/g",
          [](const State& state) { return 1.0 / state.density; }};
}

Measurement of_iron(double celsius, double value, double uncertainty) {
  return {"iron", {{"Fe", 100.0}}, Temperature::celsius(celsius), specific_volume(),
          value,  uncertainty};
}

std::string austenite_volume() {
  const Phase& austenite = *first_edition()->find_phase("austenite");
  for (std::size_t i = 0; i < austenite.room_volume->terms.size(); ++i)
    if (austenite.room_volume->terms[i].on == std::vector<std::string>{"Fe", "vacancy"})
      return "/phases/austenite/room_volume/terms/" + std::to_string(i) +
             "/cm3_per_mol";
  return "";
}

}  // namespace

TEST_CASE("shifted numbers are found again from measurements that see them") {
  const auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 1e-4);
  const Calibration c = calibrate(measurements, freed(shifts()), first_edition(),
                                  without_cross_validation());
  CHECK(c.status == CalibrationStatus::converged);
  CHECK(c.rms_before() > 100.0);
  CHECK(c.rms_after() < 0.1);
  for (std::size_t j = 0; j < shifts().size(); ++j) {
    CAPTURE(c.numbers[j].text);
    CHECK(c.numbers[j].seen());
    // The measurements have no scatter, so far inside the standard deviation; what is
    // left is the pull of the prior.
    CHECK(std::abs(c.numbers[j].after - c.numbers[j].before - shifts()[j].by) <
          0.3 * c.numbers[j].deviation);
    CHECK(c.numbers[j].deviation < 0.02 * std::abs(shifts()[j].by));
  }
  for (const MeasurementOutcome& m : c.measurements) {
    CHECK(m.weight == 1.0);
    CHECK(m.left_out == 0);
  }
}

TEST_CASE("from another start to the same minimum, the prior where it was") {
  const auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 1e-2);
  auto numbers = freed(shifts());
  const Calibration c =
      calibrate(measurements, numbers, first_edition(), without_cross_validation());
  for (FreeNumber& number : numbers) number.start = 1500.0;
  numbers[0].start = c.numbers[0].before + 4000.0;
  numbers[1].start = c.numbers[1].after;
  numbers[2].start.reset();
  const Calibration other =
      calibrate(measurements, numbers, first_edition(), without_cross_validation());
  CHECK(other.status == CalibrationStatus::converged);
  CHECK(other.misfit_before == c.misfit_before);
  CHECK(other.misfit_after == doctest::Approx(c.misfit_after).epsilon(1e-3));
  for (std::size_t j = 0; j < numbers.size(); ++j) {
    CHECK(other.numbers[j].before == c.numbers[j].before);
    CHECK(std::abs(other.numbers[j].after - c.numbers[j].after) <
          0.05 * c.numbers[j].deviation);
  }
}

TEST_CASE("a linear case: closed form of one number, two measurements and a prior") {
  // v = a p with a = 1 / molar mass of iron: the room volume of pure austenite.
  const double a = 1.0 / first_edition()->find_element("Fe")->molar_mass;
  const double prior = 0.05, u1 = 2e-4, u2 = 5e-4;
  const std::vector<Measurement> two{of_iron(1000.0, 0.1240, u1),
                                     of_iron(1200.0, 0.1250, u2)};
  const Calibration c = calibrate(two, {{austenite_volume(), prior}}, first_edition(),
                                  without_cross_validation(Loss::squares));
  CHECK(c.status == CalibrationStatus::converged);
  const double p0 = c.numbers[0].before;
  const double precision =
      a * a / (u1 * u1) + a * a / (u2 * u2) + 1.0 / (prior * prior);
  const double p =
      (a * 0.1240 / (u1 * u1) + a * 0.1250 / (u2 * u2) + p0 / (prior * prior)) /
      precision;
  CHECK(c.numbers[0].after == doctest::Approx(p).epsilon(1e-9));
  CHECK(std::abs(p - p0) > 0.01);
  CHECK(c.numbers[0].deviation == doctest::Approx(1.0 / std::sqrt(precision)));
  CHECK(c.covariance[0] == doctest::Approx(1.0 / precision));
  const double r1 = (a * p - 0.1240) / u1, r2 = (a * p - 0.1250) / u2;
  CHECK(c.measurements[0].residual_after == doctest::Approx(r1).epsilon(1e-6));
  CHECK(c.misfit_after ==
        doctest::Approx(r1 * r1 + r2 * r2 + std::pow((p - p0) / prior, 2)));
  CHECK(c.directions[0].ratio == doctest::Approx(c.numbers[0].ratio()));
}

TEST_CASE("a wrong measurement pulls a robust fit less than squares") {
  auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02);
  measurements[3].value *= 1.6;  // carbide of M2: 30 uncertainties
  const auto error = [&](Loss loss) {
    const Calibration c = calibrate(measurements, freed(shifts()), first_edition(),
                                    without_cross_validation(loss));
    CHECK(c.status == CalibrationStatus::converged);
    if (loss != Loss::squares) CHECK(c.measurements[3].weight < 0.1);
    double sum = 0.0;
    for (std::size_t j = 0; j < shifts().size(); ++j)
      sum += std::pow(c.numbers[j].after - c.numbers[j].before - shifts()[j].by, 2);
    return std::sqrt(sum);
  };
  const double squares = error(Loss::squares);
  CHECK(squares > 3000.0);
  CHECK(error(Loss::huber) < 0.5 * squares);
  CHECK(error(Loss::cauchy) < 0.2 * squares);
}

TEST_CASE("a number that no measurement sees stays, and is reported") {
  auto free = freed(shifts());
  // Cobalt: there is none in these steels.
  const Phase& austenite = *first_edition()->find_phase("austenite");
  for (std::size_t i = 0; i < austenite.energy.size(); ++i)
    if (austenite.energy[i].on[0] == std::vector<std::string>{"Co"} &&
        !austenite.energy[i].value.terms.empty()) {
      free.push_back(
          {"/phases/austenite/energy/" + std::to_string(i) + "/terms/" +
               (austenite.energy[i].value.terms[0].power.exponent == 0 ? "1" : "T"),
           500.0});
      break;
    }
  REQUIRE(free.size() == 4);
  const Calibration c = calibrate(measured(shifted_set(shifts()), {1100.0}, 0.02), free,
                                  first_edition(), without_cross_validation());
  CHECK(c.numbers[3].after == c.numbers[3].before);
  CHECK(c.numbers[3].deviation == doctest::Approx(500.0));
  CHECK_FALSE(c.numbers[3].seen());
  CHECK(c.directions.back().singular_value == 0.0);
  CHECK(c.directions.back().along[3] == doctest::Approx(1.0));
  CHECK(c.full().find("NOT SEEN") != std::string::npos);
}

TEST_CASE("measurements without a value are reported and left out, never counted") {
  auto measurements = measured(shifted_set(shifts()), {1100.0}, 0.02);
  const auto plain = calibrate(measurements, freed(shifts()), first_edition(),
                               without_cross_validation());
  Measurement without = measurements[0];
  without.quantity = {"silver in the matrix", "wt%", [](const State& state) {
                        return state.matrix.weight_percent["Ag"] / 0.0 * 0.0;
                      }};
  Measurement not_solved = measurements[1];
  not_solved.soak.solve.max_newton_steps = 1;
  not_solved.soak.solve.max_rounds = 1;
  measurements.push_back(without);
  measurements.push_back(not_solved);
  const Calibration c = calibrate(measurements, freed(shifts()), first_edition(),
                                  without_cross_validation());
  const MeasurementOutcome& silver = c.measurements[measurements.size() - 2];
  CHECK(silver.weight == 0.0);
  CHECK(silver.left_out == c.evaluations);
  CHECK(silver.reason == "silver in the matrix does not exist in this state");
  const MeasurementOutcome& failed = c.measurements.back();
  CHECK(failed.weight == 0.0);
  CHECK(failed.left_out == c.evaluations);
  CHECK_FALSE(failed.reason.empty());
  for (std::size_t j = 0; j < c.numbers.size(); ++j)
    CHECK(c.numbers[j] == plain.numbers[j]);
  CHECK(c.brief().find("on 16 of 18 measurements") != std::string::npos);
  CHECK(c.full().find("LEFT OUT") != std::string::npos);

  const Calibration none = calibrate({without}, freed(shifts()), first_edition(),
                                     without_cross_validation());
  CHECK(none.status == CalibrationStatus::nothing_usable);
  CHECK(none.reason == "no measurement could be computed with the file as it is");
  CHECK_FALSE(none.usable());
  CHECK(none.layer.empty());
}

TEST_CASE("what is held back is compared and not fitted to") {
  auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02);
  for (Measurement& m : measurements) m.held_back = m.steel == "T1";
  const Calibration c = calibrate(measurements, freed(shifts()), first_edition());
  CHECK(c.rms_before(true) > 1.0);
  CHECK(c.rms_after(true) < c.rms_before(true));
  for (Measurement& m : measurements)
    if (m.held_back) m.value *= 3.0;
  const Calibration other = calibrate(measurements, freed(shifts()), first_edition());
  for (std::size_t j = 0; j < c.numbers.size(); ++j)
    CHECK(c.numbers[j] == other.numbers[j]);
  CHECK(other.rms_after(true) > 50.0);
  REQUIRE(c.steels.size() == 3);
  for (const LeftOutSteel& steel : c.steels) CHECK(steel.steel != "T1");
}

TEST_CASE("leaving out one steel predicts it by the fit to the others") {
  auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02);
  const Calibration all = calibrate(measurements, freed(shifts()), first_edition());
  REQUIRE(all.steels.size() == 4);
  for (Measurement& m : measurements) m.held_back = m.steel == "M2";
  const Calibration without = calibrate(measurements, freed(shifts()), first_edition(),
                                        without_cross_validation());
  for (std::size_t i = 0; i < measurements.size(); ++i)
    if (measurements[i].held_back)
      CHECK(all.measurements[i].residual_left_out ==
            doctest::Approx(without.measurements[i].residual_after).epsilon(1e-3));
  CHECK(all.steels[0].steel == "M2");
  CHECK(all.steels[0].count == 8);
  CHECK(all.steels[0].predicted ==
        doctest::Approx(without.rms_after(true)).epsilon(1e-3));
}

TEST_CASE("the same to the last bit on any number of threads") {
  const auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02);
  CalibrationOptions serial, parallel;
  serial.threads = 1;
  parallel.threads = 3;
  const Calibration a =
      calibrate(measurements, freed(shifts()), first_edition(), serial);
  const Calibration b =
      calibrate(measurements, freed(shifts()), first_edition(), parallel);
  CHECK(a.numbers == b.numbers);
  CHECK(a.covariance == b.covariance);
  CHECK(a.measurements == b.measurements);
  CHECK(a.steels == b.steels);
  CHECK(a.layer == b.layer);
}

TEST_CASE("a calibration can be stopped") {
  const auto measurements = measured(shifted_set(shifts()), {1100.0}, 0.02);
  CalibrationOptions options;
  options.progress = [](std::size_t done) { return done < 2; };
  const Calibration c =
      calibrate(measurements, freed(shifts()), first_edition(), options);
  CHECK(c.status == CalibrationStatus::cancelled);
  CHECK_FALSE(c.usable());
  CHECK(c.brief().find("CANCELLED, stopped by the caller") != std::string::npos);
  options.progress = nullptr;
  options.most_evaluations = 2;
  const Calibration few =
      calibrate(measurements, freed(shifts()), first_edition(), options);
  CHECK(few.status == CalibrationStatus::not_converged);
  CHECK_FALSE(few.usable());
}

TEST_CASE("ten numbers on forty measurements: how long it takes") {
  std::vector<Shift> ten = shifts();
  for (const int i : {17, 33, 34, 57, 58, 60, 61})
    ten.push_back({"/phases/austenite/energy/" + std::to_string(i) + "/terms/1",
                   i % 2 == 0 ? 1000.0 : -1000.0});
  auto forty = measured(shifted_set(ten), {950.0, 1050.0, 1150.0}, 0.02);
  forty.erase(forty.begin() + 40, forty.end());
  const auto start = std::chrono::steady_clock::now();
  const Calibration c = calibrate(forty, freed(ten, 3000.0), first_edition());
  const double seconds =
      std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  CHECK(c.status == CalibrationStatus::converged);
  CHECK(c.rms_after() < c.rms_before());
  MESSAGE("10 numbers, 40 measurements, cross-validation over "
          << c.steels.size() << " steels: " << seconds << " s");
}
