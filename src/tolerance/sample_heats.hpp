#pragma once
/// Soaks of many heats out of the scatter, and what they have in common.

#include <string>
#include <vector>

#include "tolerance/heat_soaks.hpp"

namespace gibbsteel::internal {

/// Numbers of one soak that the caller asked for.
struct HeatNumbers {
  std::vector<double> values;      ///< as the quantities; NaN without a result
  std::vector<std::string> kinds;  ///< of the phases present
  std::string trouble;             ///< empty when the soak may be used
};

/// Soaks of all points, several at a time; the quantities are evaluated by the calling
/// thread, in order.
std::vector<HeatNumbers> numbers_at(const HeatSoaks& heats,
                                    const std::vector<std::vector<double>>& points,
                                    const std::vector<Quantity>& quantities,
                                    std::size_t threads);

/// Draws and soaks the samples: fills sample_inputs, sample_values, samples, unusable,
/// phases and cancelled of the band.
void take_samples(const HeatSoaks& heats, const std::vector<Quantity>& quantities,
                  const ToleranceOptions& options, ToleranceBand& band);

/// Bands and shares of the samples that the band holds.
void summarize_samples(ToleranceBand& band);

}  // namespace gibbsteel::internal
