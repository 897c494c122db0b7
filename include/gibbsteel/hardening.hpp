#pragma once
/// What quenching makes of a soaked steel: martensite start, retained austenite,
/// as-quenched hardness, grain limit. Estimates from the austenite of a state.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/estimate.hpp"
#include "gibbsteel/hardening_family.hpp"
#include "gibbsteel/property_equations.hpp"
#include "gibbsteel/state.hpp"
#include "gibbsteel/trade_indices.hpp"

namespace gibbsteel {

struct HardeningOptions {
  /// Coldest temperature that the steel reaches in the quench.
  Temperature coldest = Temperature::celsius(20.0);
  /// Key of a family; chosen by the composition of the steel when not given.
  std::optional<std::string> family;
  /// Keys in `equations`. When not given: (H12) with the family's offset, (H13) with
  /// its rate, (H18), (H22). An equation that is named is used as it stands, without
  /// offset.
  std::optional<std::string> martensite_start;
  std::optional<std::string> retained_austenite;
  std::optional<std::string> martensite_hardness;
  std::optional<std::string> grain_pinning;
  /// Mean diameter of the carbide particles [um]; without it there is no grain limit.
  std::optional<double> particle_diameter;
  /// At 700 C [C/h]; only (H19) reads it. The default is 10 C/s.
  double cooling_rate = 36000.0;
  PropertyEquations equations;
};

/// Plain data. Only austenite transforms: the equations get its composition, and other
/// matrix phases count as soft ferrite.
struct HardeningEstimates {
  std::string steel;  ///< name, may be empty
  MillAnalysis analysis;
  std::string parameters, parameters_hash;  ///< of the set of the soak
  std::string condition;  ///< "long-hold limit", "timed soak of 30 min"; of the soak
  Temperature soak = Temperature::kelvin(0.0);
  Temperature coldest = Temperature::kelvin(0.0);
  HardeningFamily family;
  bool family_chosen = false;  ///< true: named in the options
  /// By key, 0 to 1, largest first: more than one near a border, where estimates are
  /// means over the families by share (H29).
  NamedValues family_shares;
  NamedValues austenite;  ///< weight percent that the equations got
  double austenite_percent = Estimate::kUnknown;  ///< of the matrix, before the quench
  Estimate martensite_start;                      ///< [C]
  Estimate retained_austenite;                    ///< [vol% of the steel]
  Estimate retained_austenite_of_matrix;          ///< [vol% of the matrix]
  Estimate hardness_hv;                           ///< as quenched [HV]
  Estimate hardness_hrc;                          ///< as quenched [HRC]
  Estimate grain_diameter;                        ///< austenite grain limit [um]
  TradeIndices matrix_indices;                    ///< of all matrix phases together
  TradeIndices steel_indices;                     ///< of the whole certificate
  std::vector<Warning> warnings;

  std::string brief() const;  ///< one line
  std::string full() const;   ///< table with bands, equations, sources and cautions
  bool operator==(const HardeningEstimates&) const;
};

/// Estimates of what a quench from this state gives; see HardeningEstimates. A state
/// that is not usable, or without austenite, gives unknown estimates that say why.
///
/// As quenched means that all austenite that transforms becomes martensite: no
/// pearlite, no bainite. Section, quench and hardenability are not considered.
///
/// Hardness: martensite by carbon, mixed with retained austenite and carbide by
/// Eq. (H20). Large carbides add less than their share: at most 12 % by volume count,
/// and the value is the mean of counting them so and not counting them (own estimate).
/// Bands: the error of each equation, and the band of martensite start carried into
/// retained austenite and hardness. The error of the matrix composition itself is not
/// in them.
/// @throws InputError with every problem: gibbsteel.input.240 (no such equation), .242
///         (no such family), .243 (coldest temperature not finite, below -273.15 C or
///         not below the soak), .244 (particle diameter not > 0), .245 (cooling rate
///         not > 0)
HardeningEstimates hardening(const State& state, const HardeningOptions& options = {});

}  // namespace gibbsteel
