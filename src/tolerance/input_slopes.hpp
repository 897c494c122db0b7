#pragma once
/// Derivatives of a quantity with respect to what scatters.

#include <string>

#include "gibbsteel/sensitivities.hpp"
#include "gibbsteel/tolerance.hpp"

namespace gibbsteel::internal {

/// Built once per steel and temperature. When the calculation with derivatives is not
/// usable every slope is NaN.
class InputSlopes {
 public:
  InputSlopes(const Steel& steel, Temperature t,
              const std::vector<TolerancedInput>& inputs, const SoakOptions& options,
              SegregatedCarbon carbon);

  /// [unit of the quantity per unit of the input]; NaN when not known.
  double of(const Quantity& quantity, const TolerancedInput& input) const;
  /// True when a phase change is so close that a slope holds on one side only.
  bool one_sided() const noexcept { return one_sided_; }
  /// Why slopes are one-sided or not known; else empty.
  std::string remark() const;

 private:
  double of_element(const Quantity& quantity, const std::string& symbol) const;
  double of_dilution(const Quantity& quantity) const;
  double of_alloy_content(const Quantity& quantity) const;
  double of_segregation(const Quantity& quantity) const;

  Steel steel_;
  SegregatedCarbon carbon_;
  Sensitivities known_;
  bool one_sided_ = false;
};

}  // namespace gibbsteel::internal
