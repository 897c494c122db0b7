#pragma once
/// Soaks of one heat out of the scatter: composition, furnace and place in the bar.

#include <span>

#include "gibbsteel/tolerance.hpp"
#include "tolerance/samples.hpp"

namespace gibbsteel::internal {

/// Safe to call from several threads at once.
class HeatSoaks {
 public:
  HeatSoaks(const Steel& steel, Temperature t, std::vector<TolerancedInput> inputs,
            SoakOptions options, SegregatedCarbon carbon);

  /// @param x  as inputs()
  SampleSoak at(std::span<const double> x) const;
  const std::vector<TolerancedInput>& inputs() const noexcept { return inputs_; }

 private:
  Steel steel_;
  Temperature temperature_;
  std::vector<TolerancedInput> inputs_;
  SoakOptions options_;
  SegregatedCarbon carbon_;
};

/// True for the elements that segregate with the alloy content: all but Fe and the
/// mobile interstitials C, N, B, O and H.
bool segregates(std::string_view symbol) noexcept;

}  // namespace gibbsteel::internal
