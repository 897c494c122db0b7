#pragma once
/// Measurements in files: the published ones that ship with the library, and those of a
/// shop. (JSON; the format is described in thermo_data/MEASUREMENTS.md.)

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/calibrate.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel {

/// A measurement and what is known of it.
struct RecordedMeasurement {
  /// For calibrate(). A published range is its middle with half of it as uncertainty.
  Measurement measurement;
  std::string source;        ///< citation
  std::string confidence;    ///< "high", "medium" or "low"; empty: nobody said
  bool from_memory = false;  ///< quoted from memory, not looked up again
  bool fitted_to = false;    ///< numbers of the shipped file were fitted to it
  std::string remark{};      ///< for instance why the shipped file misses it; or empty
};

/// Those of thermo_data/published_measurements.json, embedded at build time: soaked
/// steels with a stated temperature. Read once, then shared.
const std::vector<RecordedMeasurement>& published_measurements();

/// One of your own, for evidence(): its record, or "own measurement", is the source.
RecordedMeasurement own_measurement(const Measurement& measurement);

/// Reads such a file.
/// @throws DataError with every problem of the file
std::vector<RecordedMeasurement> load_measurements(const std::filesystem::path& file);

/// Room for 20 000 measurements.
FileLimits measurement_limits() noexcept;

/// The same from text; `file_name` is used in messages only.
std::vector<RecordedMeasurement> parse_measurements(
    std::string_view text, const std::string& file_name,
    const FileLimits& limits = measurement_limits());

}  // namespace gibbsteel
