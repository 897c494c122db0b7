/// The layer that a calibration writes: it is a parameter file, reproduces the fit,
/// says where its numbers come from, and its covariance feeds parameter_band().

#include <doctest/doctest.h>

#include <cmath>

#include "calibration_helpers.hpp"
#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_band.hpp"
#include "gibbsteel/sensitivities.hpp"

using namespace gibbsteel;
using namespace calibration_helpers;

namespace {

CalibrationOptions quick() {
  CalibrationOptions options;
  options.cross_validate = false;
  options.title = "Three numbers for a test";
  options.file_name = "three.json";
  return options;
}

const Calibration& calibration() {
  static const Calibration kDone =
      calibrate(measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02),
                freed(shifts()), first_edition(), quick());
  return kDone;
}

}  // namespace

TEST_CASE("the layer read back gives the computed values to the last bit") {
  const Calibration& c = calibration();
  const auto set = parse_parameters(c.layer, "three.json", first_edition());
  CHECK(content_hash(*set) == content_hash(*c.parameters));
  const auto measurements = measured(shifted_set(shifts()), {1000.0, 1150.0}, 0.02);
  for (std::size_t i = 0; i < measurements.size(); ++i) {
    const Measurement& m = measurements[i];
    const Steel steel(m.weight_percent, {m.steel, set, false});
    CHECK(m.quantity.value(steel.soak(m.temperature)) == c.measurements[i].after);
  }
}

TEST_CASE("a term of the layer is estimated and says what it was fitted to") {
  const Calibration& c = calibration();
  const Term* term = nullptr;
  for (const auto& number : parameter_file::parameter_numbers(*c.parameters))
    if (number.place == shifts()[0].place)
      term = parameter_file::term_of(*c.parameters, number);
  REQUIRE(term);
  CHECK(term->provenance.kind == Kind::estimated);
  CHECK(term->provenance.source == "calibration");
  CHECK(term->provenance.file == "three.json");
  CHECK(
      term->provenance.note ==
      "power 1 was 85331 (source estimated; estimated, confidence low), prior +-10000 "
      "J/mol; felt by M2 (8), T1 (8)");
  CHECK(term->value.terms[0].coefficient == c.numbers[0].after);
  CHECK(term->value.terms[0].standard_deviation == c.numbers[0].deviation);
  const Source* source = c.parameters->find_source("calibration");
  REQUIRE(source);
  CHECK(source->citation ==
        "fitted by calibrate() to 32 measurements, loss huber, on " +
            first_edition()->title() + ": M2 (8), T1 (8), D2 (8), A2 (8)");
  CHECK(source->fitted_to_check_records.size() == 32);
  CHECK(source->fitted_to_check_records.front() == "M2/0");
}

TEST_CASE("the covariance feeds the band of a prediction, Eq. (K4) and (U5)") {
  const Calibration& c = calibration();
  CHECK(c.parameters->correlations.size() == 3);
  const Steel steel(heats()[0].weight_percent, {"M2", c.parameters, false});
  const Temperature t = Temperature::celsius(1200.0);
  const Quantity carbide = quantities::carbide_volume_percent();
  const ParameterBand band = parameter_band(steel, t, {carbide});
  SensitivityOptions chosen;
  for (const CalibratedNumber& n : c.numbers) chosen.parameters.push_back(n.place);
  const Sensitivities s = sensitivities(steel, t, {}, chosen);
  double variance = 0.0;
  const std::size_t size = c.numbers.size();
  for (std::size_t i = 0; i < size; ++i)
    for (std::size_t j = 0; j < size; ++j)
      variance += carbide.slope(s.state, s.at(c.numbers[i].place)) *
                  c.covariance[i * size + j] *
                  carbide.slope(s.state, s.at(c.numbers[j].place));
  CHECK(variance > 0.0);
  CHECK(band.quantities[0].first_order.standard_deviation ==
        doctest::Approx(std::sqrt(variance)).epsilon(1e-9));
}

TEST_CASE("a second calibration goes on from the first") {
  const Calibration& c = calibration();
  // No prior given: what the first one wrote.
  std::vector<FreeNumber> again;
  for (const Shift& shift : shifts()) again.push_back({shift.place});
  CalibrationOptions options = quick();
  options.file_name = "again.json";
  const Calibration second = calibrate(measured(shifted_set(shifts()), {1075.0}, 0.02),
                                       again, c.parameters, options);
  REQUIRE(second.usable());
  for (std::size_t j = 0; j < again.size(); ++j) {
    CHECK(second.numbers[j].before == c.numbers[j].after);
    CHECK(second.numbers[j].prior_deviation == c.numbers[j].deviation);
    CHECK(second.numbers[j].deviation < c.numbers[j].deviation);
  }
  CHECK(second.parameters->find_source("calibration 2") != nullptr);
  CHECK(second.parameters->files.back().name == "again.json");
}

TEST_CASE("volumes are written, their correlations are not, and that is said") {
  const std::vector<FreeNumber> volumes{
      {"/phases/M6C/room_volume/terms/14/cm3_per_mol", 1.0},
      {"/phases/M6C/room_volume/terms/20/cm3_per_mol", 1.0},
      {shifts()[0].place, 3000.0}};
  const Calibration c = calibrate(measured(shifted_set(shifts()), {1100.0}, 0.02),
                                  volumes, first_edition(), quick());
  REQUIRE(c.usable());
  REQUIRE(c.remarks.size() == 1);
  CHECK(c.remarks[0] ==
        "A file cannot state correlations of volumes: 3 correlations left out of the "
        "layer.");
  const VolumeTerm& volume = c.parameters->find_phase("M6C")->room_volume->terms[14];
  CHECK(volume.cm3_per_mol == c.numbers[0].after);
  CHECK(volume.standard_deviation == c.numbers[0].deviation);
  CHECK(volume.provenance.kind == Kind::estimated);
}

TEST_CASE("with many numbers the largest correlations are kept and stay possible") {
  std::vector<FreeNumber> many;
  for (const auto& number : parameter_file::parameter_numbers(*first_edition())) {
    const bool term = parameter_file::term_of(*first_edition(), number) != nullptr;
    if (term && number.place.find("/energy/") != std::string::npos &&
        number.place.ends_with("/terms/1") && many.size() < 60)
      many.push_back({number.place, 2000.0});
  }
  const Calibration c = calibrate(measured(shifted_set(shifts()), {1100.0}, 0.02), many,
                                  first_edition(), quick());
  REQUIRE(c.usable());
  CHECK(c.parameters->correlations.size() == FileLimits{}.correlations);
  REQUIRE(c.remarks.size() >= 1);
  CHECK(c.remarks[0].starts_with("A file holds at most 200 correlations: the "));
}

TEST_CASE("correlations of the layer and of what lies below fit in one file") {
  std::vector<FreeNumber> many;
  for (const auto& number : parameter_file::parameter_numbers(*default_parameters()))
    if (number.place.starts_with("/phases/austenite/energy/") &&
        number.place.ends_with("/terms/1") && many.size() < 30)
      many.push_back({number.place, 2000.0});
  const Calibration c = calibrate(measured(shifted_set(shifts()), {1100.0}, 0.02), many,
                                  nullptr, quick());
  REQUIRE(c.usable());
  CHECK(default_parameters()->correlations.size() > 50);
  CHECK(c.parameters->correlations.size() > default_parameters()->correlations.size());
  CHECK(c.parameters->correlations.size() <= FileLimits{}.correlations);
  const std::string text = write_parameters(*c.parameters);
  CHECK(write_parameters(*parse_parameters(text, "again.json")) == text);
}
