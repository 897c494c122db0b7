#pragma once
/// Everything the library knows about the elements and phases, as read from parameter
/// files: plain data, no numerics. Energies are J/mol of formula units, temperatures K,
/// volumes cm3/mol of formula units. Read and written by parameter_file.hpp; immutable
/// once shared, so any number of threads may use one set.

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "gibbsteel/expression.hpp"

namespace gibbsteel {

/// Name that stands for an empty site; never an element.
inline constexpr std::string_view kVacancy = "vacancy";

enum class Kind { published, recalled, estimated };
enum class Confidence { unstated, high, medium, low };
enum class Role { matrix, carbide, other };

std::string_view to_string(Kind) noexcept;
std::string_view to_string(Confidence) noexcept;
std::string_view to_string(Role) noexcept;

/// Where a number comes from.
struct Provenance {
  std::string source;  ///< key into ParameterSet::sources
  Kind kind = Kind::estimated;
  Confidence confidence = Confidence::unstated;
  std::string note;  ///< may be empty
  std::string file;  ///< name of the file that set it (layering); not written back
  bool operator==(const Provenance&) const = default;
};

struct CurvePiece {
  double up_to = 0.0;  ///< [K], exclusive upper end (the last one inclusive)
  Expression value;
  bool operator==(const CurvePiece&) const = default;
};

/// A named function of T; pieces follow one another upwards from `from`.
struct Curve {
  std::string name;
  double from = 298.15;  ///< [K]
  std::vector<CurvePiece> pieces;
  Provenance provenance;
  bool operator==(const Curve&) const = default;
};

/// Contribution to an energy, a Curie temperature or a magnetic moment.
/// `on` has one entry per sublattice, each naming one constituent, or two or three that
/// mix there. See phase_model.hpp for what is multiplied with what.
struct Term {
  std::vector<std::vector<std::string>> on;
  std::optional<int> order;  ///< of the Redlich-Kister term; absent for end members
  Expression value;
  Provenance provenance;
  bool operator==(const Term&) const = default;
};

struct VolumeTerm {
  std::vector<std::string> on;      ///< one constituent per sublattice
  double cm3_per_mol = 0.0;         ///< per mole of formula units
  double standard_deviation = 0.0;  ///< [cm3/mol]; 0 where the file states none
  Provenance provenance;            ///< `source` is empty where the file states none
  bool operator==(const VolumeTerm&) const = default;
};

/// Molar volume linear in the end members, at one temperature.
struct VolumeData {
  double at = 298.15;                      ///< [K]
  std::optional<double> linear_expansion;  ///< [1/K], around `at`
  std::vector<VolumeTerm> terms;
  std::string note;  ///< may be empty
  std::string file;
  bool operator==(const VolumeData&) const = default;
};

struct Sublattice {
  double sites = 0.0;  ///< per formula unit, > 0
  std::vector<std::string> constituents;
  bool operator==(const Sublattice&) const = default;
};

/// Under which name a second kind of occurrence of the same model is reported.
struct SecondOccurrence {
  std::string name;
  Role role = Role::carbide;
  std::size_t sublattice = 0;             ///< index from 0 (the file counts from 1)
  std::vector<std::string> constituents;  ///< their site fractions are added
  double site_fraction_above = 0.5;
  bool operator==(const SecondOccurrence&) const = default;
};

struct Magnetism {
  double structure_factor = 0.28;
  double negative_value_divisor = 1.0;
  bool operator==(const Magnetism&) const = default;
};

struct Phase {
  std::string name;
  Role role = Role::other;
  std::string lattice;
  std::vector<Sublattice> sublattices;
  std::optional<SecondOccurrence> second_occurrence;
  std::optional<Magnetism> magnetism;
  std::vector<Term> energy;
  std::vector<Term> curie_temperature;  ///< [K]; constant in T
  std::vector<Term> magnetic_moment;    ///< [Bohr magnetons per site of sublattice 1]
  std::optional<VolumeData> room_volume;
  std::optional<VolumeData> hot_volume;
  std::string file;
  bool operator==(const Phase&) const = default;
};

struct Element {
  std::string symbol;
  double molar_mass = 0.0;  ///< [g/mol]
  std::string reference_curve;
  std::string file;
  bool operator==(const Element&) const = default;
};

struct Source {
  std::string key;
  std::string citation;
  std::vector<std::string> fitted_to_check_records;
  std::string file;
  bool operator==(const Source&) const = default;
};

/// Which list of terms of a phase.
enum class PhaseProperty { energy, curie_temperature, magnetic_moment };

std::string_view to_string(PhaseProperty) noexcept;

/// Names one coefficient of one term: everything as it stands in that term.
struct CoefficientName {
  std::string phase;
  PhaseProperty property = PhaseProperty::energy;
  std::vector<std::vector<std::string>> on;
  std::optional<int> order;
  TemperaturePower power;
  bool operator==(const CoefficientName&) const = default;
};

/// How two coefficients that have a standard deviation vary together, -1 to 1.
struct Correlation {
  CoefficientName first, second;
  double coefficient = 0.0;
  Provenance provenance;
  bool operator==(const Correlation&) const = default;
};

/// True when both are about the same two coefficients, in whatever order.
bool same_pair(const Correlation& a, const Correlation& b) noexcept;

/// Range of one element for which the parameters were chosen [weight percent].
struct ElementRange {
  std::string symbol;
  double low = 0.0;
  double high = 0.0;
  bool operator==(const ElementRange&) const = default;
};

/// How a solidus was found: measured; melting never seen up to it; melting seen at it.
enum class SolidusSense { measured, at_least, at_most };

std::string_view to_string(SolidusSense) noexcept;

/// Measured start of melting of one steel: a bound on soaking temperatures, the only
/// one where the file has no liquid.
struct SolidusBound {
  std::string steel;  ///< AISI / EN designation
  std::vector<std::pair<std::string, double>> weight_percent;
  double celsius = 0.0;
  double uncertainty = 0.0;  ///< [C]
  SolidusSense sense = SolidusSense::measured;
  Provenance provenance;
  bool operator==(const SolidusBound&) const = default;
};

/// One file that contributed to a set, lowest layer first.
struct FileRecord {
  std::string name;
  std::string title;
  std::string edition;
  std::string licence;
  bool operator==(const FileRecord&) const = default;
};

struct ParameterSet {
  std::vector<FileRecord> files;
  std::string reference_state;
  double lowest_temperature = 0.0;   ///< [K], validity
  double highest_temperature = 0.0;  ///< [K], validity
  std::vector<ElementRange> validity;
  std::vector<Source> sources;
  std::vector<Element> elements;
  std::vector<Curve> curves;
  std::vector<Phase> phases;
  std::vector<Correlation> correlations;  ///< 0 between all that are not named
  std::vector<SolidusBound> solidus_bounds;

  /// nullptr where there is none of that name.
  const Element* find_element(std::string_view symbol) const noexcept;
  const Curve* find_curve(std::string_view name) const noexcept;
  const Phase* find_phase(std::string_view name) const noexcept;
  const Source* find_source(std::string_view key) const noexcept;
  const ElementRange* find_range(std::string_view symbol) const noexcept;
  const Term* find_term(const CoefficientName& name) const noexcept;
  const TemperatureTerm* find_coefficient(const CoefficientName& name) const noexcept;

  /// "Tool steels ... (edition 2026-11-25)", layers joined with " + ".
  std::string title() const;

  bool operator==(const ParameterSet&) const = default;
};

using SharedParameters = std::shared_ptr<const ParameterSet>;

}  // namespace gibbsteel
