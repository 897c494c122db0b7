#pragma once
/// What scatter does to the numbers of a state: the parts that a tolerance band
/// (tolerance.hpp) and a parameter band (parameter_band.hpp) have in common. Plain
/// data.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel {

/// One thing that scatters: an element, the furnace, segregation, or a number of the
/// parameter file.
struct TolerancedInput {
  std::string name;      ///< "C", "temperature", "segregation", place in the file
  std::string unit;      ///< "wt%", "C", "% of the alloy content"
  double nominal = 0.0;  ///< of the steel; temperature: as asked; segregation: 0
  /// Ends of the box of corners: the range, or two standard deviations.
  double low = 0.0, high = 0.0;
  /// Of the normal distribution that the user gave; 0 for a range (uniform).
  double given_deviation = 0.0;
  double mean = 0.0;                ///< of the distribution, cut included, Eq. (U2)
  double standard_deviation = 0.0;  ///< of the distribution, cut included
  /// "M6C, energy on (Fe, Mo, W, C), power 1"; empty unless a number of the file.
  std::string text{};
  bool operator==(const TolerancedInput&) const = default;
};

/// How much one input matters for one quantity.
struct Contribution {
  std::string input;  ///< as TolerancedInput::name
  /// Derivative of the quantity [its unit per unit of the input]; NaN when unknown.
  double slope = Occurrence::kUnknown;
  /// Slope times standard deviation of the input: the scatter it causes alone.
  double scatter = Occurrence::kUnknown;
  /// Of the first-order variance, 0 to 1.
  double share = Occurrence::kUnknown;
  /// Squared correlation of input and quantity over the samples, 0 to 1: the share of
  /// the true variance that goes linearly with this input. NaN without samples.
  double sampled_share = Occurrence::kUnknown;
};

/// From the derivatives at the nominal state, see Eq. (U1). NaN where unknown.
struct FirstOrderBand {
  double mean = Occurrence::kUnknown;
  double standard_deviation = Occurrence::kUnknown;
  double lowest = Occurrence::kUnknown;   ///< over the box, if all were linear
  double highest = Occurrence::kUnknown;  ///< over the box, if all were linear
  /// True when a derivative holds on one side only: a phase change is close by.
  bool one_sided = false;
  std::string remark;  ///< why, when one-sided or not known; else empty
};

/// From the samples. NaN without any.
struct SampledBand {
  std::size_t count = 0;  ///< samples that have this number
  double mean = Occurrence::kUnknown;
  double standard_deviation = Occurrence::kUnknown;
  double lowest = Occurrence::kUnknown;  ///< of the samples, not a bound
  double highest = Occurrence::kUnknown;
  std::vector<double> percentiles;  ///< as Band::percentiles, Eq. (U3)
};

/// A corner of the box, found by exchanging one coordinate at a time until no single
/// exchange improves it: a search, not a proof.
struct WorstCorner {
  double value = Occurrence::kUnknown;
  std::vector<double> inputs;  ///< as Band::inputs; empty when not searched
};

struct QuantityBand {
  std::string name, unit;
  double nominal = Occurrence::kUnknown;
  FirstOrderBand first_order;
  SampledBand sampled;
  WorstCorner lowest_corner, highest_corner;
  std::vector<Contribution> contributions;  ///< as Band::inputs

  std::string label() const;  ///< "C in the matrix [wt%]"
};

/// How often a kind of phase is there.
struct PhaseShare {
  std::string kind;
  bool nominal = false;  ///< present in the nominal state
  double share = 0.0;    ///< of the usable samples that hold it, 0 to 1
  bool operator==(const PhaseShare&) const = default;
};

/// A sample or corner that gave no result. It is counted and left out of the bands.
struct UnusableSample {
  std::vector<double> inputs;  ///< as Band::inputs
  std::string reason;
  bool operator==(const UnusableSample&) const = default;
};

/// What every band holds.
struct Band {
  State nominal;  ///< the steel as it is, at the temperature asked for
  std::vector<TolerancedInput> inputs;
  std::vector<double> percentiles;  ///< ascending, each in (0, 100)
  /// Empty when the nominal state is not usable: then nothing else was soaked.
  std::vector<QuantityBand> quantities;
  std::vector<PhaseShare> phases;  ///< of the nominal state, then of the samples
  std::size_t samples_asked = 0;
  std::size_t samples = 0;  ///< soaked, the unusable ones included
  bool cancelled = false;   ///< stopped by the caller: holds the part that is done
  std::vector<UnusableSample> unusable;  ///< samples
  /// Row by row: samples x inputs; as drawn.
  std::vector<double> sample_inputs;
  /// Row by row: samples x quantities; NaN for an unusable sample.
  std::vector<double> sample_values;
  std::vector<Warning> warnings;  ///< gibbsteel.warning.350 to .354

  /// By name ("C in the matrix") or label. @throws InputError gibbsteel.input.209
  const QuantityBand& at(std::string_view name) const;
  bool usable() const noexcept { return nominal.usable(); }
};

}  // namespace gibbsteel
