#pragma once
/// The face of the library: a steel, and what a soak makes of it.

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/state.hpp"
#include "gibbsteel/sweep.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel {

struct SoakOptions {
  /// Graphite is suppressed by default: it does not form in the times of a soak.
  bool graphite = false;
  /// Candidate phases; all of the file when not given. Austenite and MC are one model:
  /// naming one allows both (likewise M2C and hexagonal matrix).
  std::optional<std::vector<std::string>> phases;
  /// Taken out of the candidates.
  std::vector<std::string> suppressed;
  VolumeBasis basis = VolumeBasis::room;
  SolveOptions solve;
  /// With the certificate `proof`, a sweep proves every so many-th soak and the last
  /// one; those between are covered by concavity where that can be shown with a gap of
  /// 5 J/mol of atoms or less (neighbours some kelvin apart, no phase change between),
  /// and proven one by one where not. >= 1
  int prove_every = 1;
  /// In which the temperatures of the call were given: texts show it beside C, and
  /// hints repeat the number in it. No influence on what is computed.
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;
};

struct SteelOptions {
  std::string name;
  SharedParameters parameters;       ///< default_parameters() when null
  bool bind_tramp_elements = false;  ///< see read_analysis()
};

class Steel {
 public:
  /// @param weight_percent  mill certificate, balance Fe; see read_analysis()
  explicit Steel(const NamedValues& weight_percent, SteelOptions options = {});

  const std::string& name() const noexcept { return name_; }
  const MillAnalysis& analysis() const noexcept { return analysis_; }
  const SharedParameters& parameters() const noexcept { return parameters_; }
  const std::string& parameters_hash() const noexcept { return hash_; }
  bool binds_tramp_elements() const noexcept { return bind_tramp_elements_; }
  /// Elements that enter the calculation, and their mole fractions (sum 1).
  const std::vector<std::string>& elements() const noexcept { return elements_; }
  const std::vector<double>& mole_fractions() const noexcept { return mole_fractions_; }

  /// The steel with these weight percents instead, balance Fe; a new element is added,
  /// the others keep theirs. A steel with a name gets that of a variant: "M2, 0.9 C".
  /// @throws InputError as the constructor
  Steel changed(const NamedValues& weight_percent, std::string name = {}) const;

  /// The same steel with another parameter set; default_parameters() when null.
  /// @throws InputError as the constructor
  Steel with_parameters(SharedParameters parameters) const;

  /// Equilibrium at one temperature. Warnings are on the state.
  /// @throws InputError gibbsteel.input.210 (temperature not finite or outside 300 K to
  ///         2500 K: wrong unit?), .205 (no such phase), .212 (one of two kinds of a
  ///         model suppressed), .232 (options)
  State soak(Temperature t, const SoakOptions& options = {}) const;

  /// Many soaks in the order given; equal to that many single soaks.
  /// @param progress  called after each soak with the number done; return false to
  /// stop:
  ///                  the sweep then holds what is done and says so
  Sweep sweep(std::span<const Temperature> temperatures,
              const SoakOptions& options = {},
              const std::function<bool(std::size_t)>& progress = {}) const;

  std::string brief() const;  ///< one line

 private:
  std::string name_;
  SharedParameters parameters_;
  std::string hash_;
  bool bind_tramp_elements_ = false;
  MillAnalysis analysis_;
  std::vector<std::string> elements_;
  std::vector<double> mole_fractions_;
};

}  // namespace gibbsteel
