#include <optional>
#include <string>
#include <utility>

#include "gibbsteel/measurement_file.hpp"
#include "measurement_file/measurement_reader.hpp"
#include "parameter_file/file_format.hpp"
#include "parameter_file/file_text.hpp"

namespace gibbsteel {

using namespace measurement_file;

FileLimits measurement_limits() noexcept {
  FileLimits limits;
  limits.bytes = 32u << 20;
  limits.values = 1'000'000;
  return limits;
}

std::vector<RecordedMeasurement> parse_measurements(std::string_view text,
                                                    const std::string& file_name,
                                                    const FileLimits& limits) {
  Problems problems(file_name, limits.problems_reported);
  std::vector<RecordedMeasurement> measurements;
  const std::optional<JsonNode> root =
      parameter_file::parse_json(text, limits, problems);
  if (root && parameter_file::has_format(*root, kFileKind, problems))
    measurements = read_measurements(*root, problems);
  problems.throw_if_any();
  return measurements;
}

std::vector<RecordedMeasurement> load_measurements(const std::filesystem::path& file) {
  const FileLimits limits = measurement_limits();
  const std::string text = parameter_file::file_text(file, kFileKind, limits);
  return parse_measurements(text, file.filename().string(), limits);
}

}  // namespace gibbsteel
