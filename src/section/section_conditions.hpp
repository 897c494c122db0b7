#pragma once
/// From the axes of a section map to the plane of conditions that is searched.

#include <optional>

#include "gibbsteel/section_map.hpp"
#include "section/soak_plane.hpp"

namespace gibbsteel::internal {

/// One of `y_range` and `temperatures` is used.
struct SectionRequest {
  const Steel& steel;
  SweptElement x;
  std::optional<SweptElement> y;  ///< two elements ...
  Temperature low, high;          ///< ... at `low`; or against low to high
  const SectionOptions& options;

  /// Tolerances of both axes [wt%, and wt% or K].
  double x_tolerance() const { return options.percent_tolerance; }
  double y_tolerance() const {
    return y ? options.percent_tolerance : options.temperature_tolerance;
  }
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
