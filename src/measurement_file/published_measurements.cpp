#include "gibbsteel/measurement_file.hpp"
#include "parameter_file/embedded_file.hpp"

namespace gibbsteel {

const std::vector<RecordedMeasurement>& published_measurements() {
  static const std::vector<RecordedMeasurement> read = parse_measurements(
      parameter_file::embedded_published_measurements(), "published_measurements.json");
  return read;
}

RecordedMeasurement own_measurement(const Measurement& measurement) {
  return {measurement,
          measurement.record.empty() ? "own measurement" : measurement.record, ""};
}

}  // namespace gibbsteel
