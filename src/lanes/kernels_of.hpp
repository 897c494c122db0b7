#pragma once
/// The kernels of one number type.

#include "lanes/column_distances.hpp"
#include "lanes/descents.hpp"
#include "lanes/element_rows.hpp"
#include "lanes/energies.hpp"
#include "lanes/lane_kernels.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

template <class Real>
void descend(DescentTask& task) noexcept {
  Descents<Real>(task).run();
}

template <class Real>
constexpr LaneKernels kernels_of() noexcept {
  return {descend<Real>, energies<Real>, project_rows<Real>, add_row_products<Real>,
          column_distances<Real>};
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
