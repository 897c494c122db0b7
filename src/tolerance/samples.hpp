#pragma once
/// Soaks of many heats out of the scatter, and what they have in common.

#include <functional>
#include <span>
#include <string>
#include <vector>

#include "gibbsteel/band.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel::internal {

/// Soak of one sample or corner. Throws nothing for numerical trouble: the state is
/// then not usable, or `trouble` says what is missing.
struct SampleSoak {
  State state;
  std::string trouble;        ///< empty when the state may be used
  SharedParameters set = {};  ///< when another than that of the steel
};

/// The soak at one point of the scatter, given as Band::inputs; safe to call from
/// several threads at once.
using SoakAt = std::function<SampleSoak(std::span<const double>)>;

/// Numbers of one soak that the caller asked for.
struct SampleNumbers {
  std::vector<double> values;      ///< as the quantities; NaN without a result
  std::vector<std::string> kinds;  ///< of the phases present
  std::string trouble;             ///< empty when the soak may be used
};

/// Soaks of all points, several at a time; the quantities are evaluated by the calling
/// thread, in order.
std::vector<SampleNumbers> numbers_at(const SoakAt& soak,
                                      const std::vector<std::vector<double>>& points,
                                      const std::vector<Quantity>& quantities,
                                      std::size_t threads);

/// How samples are drawn and soaked.
struct SamplePlan {
  SoakAt soak;
  std::function<std::vector<double>(std::size_t)> point;  ///< of a sample, by number
  std::size_t threads = 0;
  std::function<bool(std::size_t)> progress;
  bool more_to_come = false;  ///< after the samples: stopping at the last one counts
};

/// Names and nominal values of the quantities, room for the contributions, and the
/// phases of the nominal state.
void prepare_band(const std::vector<Quantity>& quantities, Band& band);

/// Draws and soaks the samples: fills sample_inputs, sample_values, samples, unusable,
/// phases and cancelled of the band, then its bands and shares.
void take_samples(const SamplePlan& plan, const std::vector<Quantity>& quantities,
                  Band& band);

}  // namespace gibbsteel::internal
