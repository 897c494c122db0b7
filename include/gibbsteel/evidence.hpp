#pragma once
/// What stands behind the numbers of a soak: published measurements of the steels that
/// are most like it, and how the parameter set does on them.

#include <cstddef>
#include <string>
#include <vector>

#include "gibbsteel/measurement_file.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel {

/// How far a soak is from another one: the largest of
///
///   |dC| / max(0.15, C/10),  |dx| / max(0.5, x/5),  |dT| / 75                Eq. (V1)
///
/// C, x the larger weight percent of the two, of carbon and of any other element but
/// iron; T in C. Own choice: 1 is about as far as a steel of the same grade may be.
struct Distance {
  double value = 0.0;
  std::string by;  ///< what it is largest in: "Mo", or "temperature"; empty at 0
  bool operator==(const Distance&) const = default;
};

/// @param a, b  weight percents; elements not named count as 0
Distance distance(const NamedValues& a, Temperature at_a, const NamedValues& b,
                  Temperature at_b);

struct EvidenceOptions {
  /// Soaks of published steels to show, nearest first; 1 to 1000.
  std::size_t most_soaks = 5;
  /// Where they are looked for; published_measurements() when empty.
  std::vector<RecordedMeasurement> measurements{};
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
};

/// One measured number, computed with the parameter set of the steel that was asked
/// about, by the long-hold limit.
struct EvidenceRow {
  std::string steel, record, source, confidence, remark;  ///< see RecordedMeasurement
  NamedValues weight_percent{};
  Temperature temperature = Temperature::kelvin(0.0);
  Distance distance{};
  std::string quantity, unit;
  double value = 0.0, uncertainty = 0.0;   ///< measured
  double computed = Occurrence::kUnknown;  ///< NaN where `reason` says why
  bool from_memory = false, fitted_to = false;
  std::string reason{};

  double miss() const noexcept { return (computed - value) / uncertainty; }
  bool met() const noexcept { return miss() >= -1.0 && miss() <= 1.0; }
  bool operator==(const EvidenceRow&) const;  ///< two NaN are equal
};

struct Evidence {
  std::string steel;  ///< its name
  MillAnalysis analysis;
  std::string parameters;  ///< title of the set
  Temperature temperature = Temperature::kelvin(0.0);
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;
  std::size_t measurements = 0;   ///< that were looked through
  std::vector<EvidenceRow> rows;  ///< nearest first, rows of one soak together

  /// Up to 1: measured on a steel of this kind; up to 3: on a related one.
  Distance nearest() const;
  std::size_t computed() const;  ///< rows that have a number
  std::size_t met() const;       ///< of these, within the published uncertainty
  std::string brief() const;     ///< one line
  std::string full() const;      ///< tables by steel, remarks, sources, cautions
  bool operator==(const Evidence&) const = default;
};

/// @throws InputError gibbsteel.input.304 (most_soaks), .210 (temperature)
Evidence evidence(const Steel& steel, Temperature t,
                  const EvidenceOptions& options = {});

}  // namespace gibbsteel
