/// What a calibration does to the published measurements, and measurements that are
/// only compared. Measurements of the shop are invented.

#include <doctest/doctest.h>

#include <cmath>

#include "calibration_helpers.hpp"
#include "gibbsteel/hardening_quantities.hpp"
#include "gibbsteel/measurement_file.hpp"
#include "gibbsteel/timed_soak.hpp"
#include "internal/text_table.hpp"

using namespace gibbsteel;
using namespace calibration_helpers;

namespace {

const NamedValues kHeat{{"C", 0.56}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0},
                        {"V", 1.0},  {"Mn", 0.3}, {"Si", 0.3}};

Measurement of_heat(double celsius, const Quantity& quantity, double value,
                    double uncertainty) {
  return {"heat 7411", kHeat, Temperature::celsius(celsius),
          quantity,    value, uncertainty};
}

/// More carbon in the matrix than the file computes, and less carbide.
std::vector<Measurement> shop() {
  return {of_heat(1050, quantities::matrix("C"), 0.42, 0.015),
          of_heat(1100, quantities::matrix("C"), 0.47, 0.015),
          of_heat(1150, quantities::matrix("C"), 0.52, 0.015),
          of_heat(1050, quantities::carbide_volume_percent(), 2.3, 0.3),
          of_heat(1100, quantities::carbide_volume_percent(), 1.4, 0.3)};
}

CalibrationOptions without_cross_validation() {
  CalibrationOptions options;
  options.cross_validate = false;
  return options;
}

/// Soaked one by one.
std::size_t met(const SharedParameters& set) {
  std::size_t count = 0;
  for (const RecordedMeasurement& recorded : published_measurements()) {
    const Measurement& m = recorded.measurement;
    const Steel steel(m.weight_percent, {m.steel, set, false});
    const double value = m.quantity.value(steel.soak(m.temperature, m.soak));
    count += std::abs(value - m.value) <= m.uncertainty;
  }
  return count;
}

/// Those of M2 about the matrix.
std::vector<Measurement> some_published() {
  std::vector<Measurement> chosen;
  for (const RecordedMeasurement& recorded : published_measurements())
    if (recorded.measurement.record.starts_with("hss/M2-H-matrix"))
      chosen.push_back(recorded.measurement);
  return chosen;
}

}  // namespace

TEST_CASE("a fit to one heat that spoils others says so") {
  const Calibration c = calibrate(shop(), stated_numbers(*default_parameters()));
  REQUIRE(c.status == CalibrationStatus::converged);
  CHECK(c.rms_after() < 0.5 * c.rms_before());
  const PublishedCheck& check = c.published;
  CHECK(check.count == published_measurements().size());
  CHECK(check.met_before == met(default_parameters()));
  CHECK(check.met_after == met(c.parameters));
  CHECK(check.met_after < check.met_before);
  CHECK(check.worse());
  CHECK(check.fitted_to == 0);
  CHECK(check.others_met_before == check.met_before);
  CHECK(check.others_met_after == check.met_after);
  const std::string line =
      "published measurements met: " + std::to_string(check.met_before) + " before, " +
      std::to_string(check.met_after) + " after, of 137";
  CHECK(check.brief() == line);
  CHECK(c.brief().ends_with("; " + line));
  CHECK(c.full().find("! fewer published measurements are met than before: the numbers "
                      "that suit\n  these steels suit others less. Add those of "
                      "published_measurements() to the\n  fit, or give smaller prior "
                      "standard deviations.\n") != std::string::npos);
}

TEST_CASE("published measurements in the fit are no test of it") {
  auto measurements = shop();
  for (Measurement& m : some_published()) measurements.push_back(m);
  measurements.back().held_back = true;
  const Calibration c = calibrate(measurements, stated_numbers(*default_parameters()),
                                  nullptr, without_cross_validation());
  const PublishedCheck& check = c.published;
  CHECK(check.fitted_to == 4);
  CHECK(check.others() == check.count - 4);
  CHECK(check.brief().find("; of the 133 not fitted to: ") != std::string::npos);
  // Which of the others are met can be read from the four.
  std::size_t before = 0, after = 0;
  for (std::size_t i = shop().size(); i + 1 < c.measurements.size(); ++i) {
    before += std::abs(c.measurements[i].residual_before) <= 1.0;
    after += std::abs(c.measurements[i].residual_after) <= 1.0;
  }
  CHECK(check.others_met_before == check.met_before - before);
  CHECK(check.others_met_after == check.met_after - after);
}

TEST_CASE("what is worse, and the text when all were fitted to") {
  PublishedCheck check{137, 82, 69, 0, 82, 69};
  CHECK(check.worse());
  check = {137, 82, 84, 100, 20, 19};
  CHECK(check.worse());
  CHECK(check.brief() ==
        "published measurements met: 82 before, 84 after, of 137; of the 37 not fitted "
        "to: 20 before, 19 after");
  check = {137, 82, 81, 137, 0, 0};
  CHECK(check.worse());
  CHECK(check.brief() ==
        "published measurements met: 82 before, 81 after, of 137, all of them fitted "
        "to");
  CHECK_FALSE(PublishedCheck{137, 82, 82, 0, 82, 82}.worse());
  CHECK_FALSE(PublishedCheck{}.worse());
  CHECK(PublishedCheck{}.brief().empty());
}

TEST_CASE("counting can be left out, stopped, and does not change the fit") {
  const auto numbers = stated_numbers(*default_parameters());
  CalibrationOptions options = without_cross_validation();
  std::size_t calls = 0;
  options.progress = [&](std::size_t done) {
    calls = done;
    return true;
  };
  const Calibration counted = calibrate(shop(), numbers, nullptr, options);
  CHECK(calls == counted.evaluations + 2);
  options.check_published = false;
  const Calibration plain = calibrate(shop(), numbers, nullptr, options);
  CHECK(calls == plain.evaluations);
  CHECK(plain.published == PublishedCheck{});
  CHECK(plain.layer == counted.layer);
  CHECK(plain.full().find("published") == std::string::npos);
  options.check_published = true;
  options.progress = [&](std::size_t done) { return done <= plain.evaluations; };
  const Calibration stopped = calibrate(shop(), numbers, nullptr, options);
  CHECK(stopped.status == CalibrationStatus::cancelled);
  CHECK_FALSE(stopped.usable());
  CHECK(stopped.published == PublishedCheck{});
}

TEST_CASE("counts are the same on any number of threads") {
  const auto numbers = stated_numbers(*default_parameters());
  CalibrationOptions serial = without_cross_validation(), parallel = serial;
  serial.threads = 1;
  parallel.threads = 3;
  CHECK(calibrate(shop(), numbers, nullptr, serial).full() ==
        calibrate(shop(), numbers, nullptr, parallel).full());
}

TEST_CASE("numbers by what they are called, those stated by their place") {
  const auto stated = stated_numbers(*default_parameters());
  CHECK(stated.size() == 31);
  const Calibration by_place =
      calibrate(shop(), {stated[3]}, nullptr, without_cross_validation());
  const std::string text = by_place.numbers[0].text;
  CHECK(text == "austenite, energy on (Fe + W, vacancy) of order 0, power 1");
  const Calibration by_text =
      calibrate(shop(), {{text}}, nullptr, without_cross_validation());
  CHECK(by_text.numbers == by_place.numbers);
  CHECK(by_text.layer == by_place.layer);
}

TEST_CASE("without numbers measurements are compared with the file as it is") {
  auto measurements = shop();
  measurements[1].value = 0.44;
  measurements[4].held_back = true;
  const Measurement silver = of_heat(
      1100, {"silver", "wt%", [](const State&) { return std::nan(""); }}, 0.1, 0.1);
  measurements.push_back(silver);
  const Calibration c = calibrate(measurements, {});
  CHECK(c.status == CalibrationStatus::compared);
  CHECK(c.reason == "no number was free");
  CHECK_FALSE(c.usable());
  CHECK(c.layer.empty());
  CHECK(c.evaluations == 0);
  const State state = Steel(kHeat).soak(Temperature::celsius(1050));
  CHECK(c.measurements[0].before == state.matrix.weight_percent["C"]);
  CHECK(c.measurements[0].residual_before ==
        doctest::Approx((c.measurements[0].before - 0.42) / 0.015));
  CHECK(std::isnan(c.measurements[0].after));
  CHECK(c.measurements[5].reason == "silver does not exist in this state");
  CHECK(c.brief().starts_with(
      "6 measurements beside what is computed, no number was free: 1 of 5 met within "
      "their uncertainty, rms miss "));
  const std::string text = c.full();
  CHECK(text.find("measurement                           at  measured     +-  computed "
                  "  miss\n") != std::string::npos);
  CHECK(
      text.find("! heat 7411, silver at 1100 C not computed: silver does not exist in "
                "this\n  state\n") != std::string::npos);
  CHECK(text.find("weight") == std::string::npos);
}

TEST_CASE("cautions: estimates have an error of their own, minutes are no long hold") {
  const auto page = [](const Measurement& m) { return calibrate({m}, {}).full(); };
  const std::string hold = internal::wrapped(internal::kCaution, 78, 0);
  const std::string own = internal::wrapped(
      "Hardness, martensite start and retained austenite are estimates with an error "
      "of "
      "their own, see the bands of hardening(): within it a miss says nothing of the "
      "file, and a fit lets the energies take the blame.",
      78, 0);
  const std::string legend = "miss: computed less measured, in uncertainties.\n";
  const Quantity carbon = quantities::matrix("C");
  CHECK(page(of_heat(1100, carbon, 0.47, 0.015)).ends_with(legend + hold));
  CHECK(page(of_heat(1100, quantities::hardness_hrc(), 60, 0.5))
            .ends_with(legend + own + hold));
  const Measurement minutes{"bar",
                            {{"C", 1.0}, {"Cr", 1.45}, {"Mn", 0.35}, {"Si", 0.25}},
                            Temperature::celsius(845),
                            quantities::after_minutes(carbon, 30),
                            0.62,
                            0.05};
  CHECK(page(minutes).ends_with(legend +
                                internal::wrapped(internal::kTimedSoakCaution, 78, 0)));
}
