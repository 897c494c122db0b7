#pragma once
/// From the axes of a section map to the plane of conditions that is searched.

#include <optional>

#include "gibbsteel/section_map.hpp"
#include "section/soak_plane.hpp"

namespace gibbsteel::internal {

inline constexpr double kLeastTemperatureTolerance = 0.001;  ///< [K]
inline constexpr double kLeastPercentTolerance = 1e-5;

/// One of `y_range` and `temperatures` is used.
struct SectionRequest {
  const Steel& steel;
  SweptElement x;
  std::optional<SweptElement> y;  ///< two elements ...
  Temperature low, high;          ///< ... at `low`; or against low to high
  const SectionOptions& options;

  /// Of both axes [wt%, and wt% or K].
  double width() const { return x.high - x.low; }
  double height() const;
  /// No more than a tenth of an axis: a field narrower than the tolerances is left out.
  double x_tolerance() const;
  double y_tolerance() const;
  /// Of the plane, in tolerances.
  PlanePoint extent() const;
  /// The steel at a point of the plane, and the temperature there.
  Steel steel_at(PlanePoint at) const;
  Temperature temperature_at(PlanePoint at) const;
};

/// @throws InputError gibbsteel.input.210, .250, .280, .281, .282: every problem
void check(const SectionRequest& request);

/// @throws InputError gibbsteel.input.283
SoakPlane soak_plane(const SectionRequest& request, const SoakOptions& soak);

}  // namespace gibbsteel::internal
