#pragma once
/// The kernels that work on several numbers at once, for the lanes that the machine
/// has. The results do not depend on the number of lanes, to the bit.

#include "lanes/column_blocks.hpp"
#include "lanes/descent_task.hpp"
#include "lanes/element_rows_task.hpp"
#include "lanes/energies_task.hpp"

#if defined(__x86_64__) && (defined(__GNUC__) || defined(__clang__))
#define GIBBSTEEL_WIDE_LANES
#endif

namespace gibbsteel::internal {

struct LaneKernels {
  void (*descend)(DescentTask&) noexcept;             ///< see descents.hpp
  void (*energies)(const EnergiesTask&) noexcept;     ///< see energies.hpp
  void (*project_rows)(const ElementRows&) noexcept;  ///< see element_rows.hpp
  void (*add_row_products)(const ElementRows&, double, double*) noexcept;
  /// See column_distances.hpp
  void (*column_distances)(const ColumnBlocks&, const double*, double*) noexcept;
};

/// One number, two (on every machine), four with AVX2, eight with AVX-512.
extern const LaneKernels kOneLane, kTwoLanes, kFourLanes, kEightLanes;

/// Lanes that this machine has: 2, 4 or 8.
std::size_t widest_lanes() noexcept;
/// @param lanes  1, 2, 4 or 8, no more than the machine has
const LaneKernels& lane_kernels(std::size_t lanes = widest_lanes()) noexcept;

}  // namespace gibbsteel::internal
