#pragma once
/// What stands behind the numbers of a soak: published measurements of the steels that
/// are most like it, and how the parameter set does on them.

#include <cstddef>
#include <optional>
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
  /// Where they are looked for; published_measurements() when not given.
  std::optional<std::vector<RecordedMeasurement>> measurements{};
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
};

/// One measured number, computed with the parameter set of the steel that was asked
/// about, by the long-hold limit.
struct EvidenceRow {
  std::string steel, record, source, confidence, remark;  ///< see RecordedMeasurement
  NamedValues weight_percent{};
  std::optional<std::vector<std::string>> phases{};  ///< the only ones that may form
  Temperature temperature = Temperature::kelvin(0.0);
  Distance distance{};
  std::string quantity, unit;
  double value = 0.0, uncertainty = 0.0;   ///< measured
  double computed = Occurrence::kUnknown;  ///< NaN where `reason` says why
  bool from_memory = false, fitted_to = false;
  std::string reason{};

  double miss() const noexcept { return (computed - value) / uncertainty; }
  bool met() const noexcept { return miss() >= -1.0 && miss() <= 1.0; }
  /// Martensite start, retained austenite or hardness: the chain of soak and estimate.
  bool by_hardening = false;
  bool operator==(const EvidenceRow&) const;  ///< two NaN are equal
};

/// Up to where a measurement is of a steel of the kind asked about, or of a related
/// one.
inline constexpr double kOfThisKind = 1.0, kRelated = 3.0;  ///< Eq. (V1)
inline constexpr double kFarthest = 1e300;

struct Evidence {
  std::string steel;  ///< its name
  MillAnalysis analysis;
  std::string parameters;  ///< title of the set
  Temperature temperature = Temperature::kelvin(0.0);
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;
  std::size_t measurements = 0;   ///< that were looked through
  std::vector<EvidenceRow> rows;  ///< nearest first, rows of one soak together

  Distance nearest() const;
  /// Rows that have a number, and those within the published uncertainty, up to a
  /// distance.
  std::size_t computed(double up_to = kFarthest) const;
  std::size_t met(double up_to = kFarthest) const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables by steel, remarks, sources, cautions
  bool operator==(const Evidence&) const = default;
};

/// @throws InputError gibbsteel.input.304 (most_soaks), .210 (temperature)
Evidence evidence(const Steel& steel, Temperature t,
                  const EvidenceOptions& options = {});

}  // namespace gibbsteel
