#pragma once
/// Descents in as many lanes as the machine has and the starts can fill.

#include "lanes/aligned_numbers.hpp"
#include "lanes/lane_kernels.hpp"

namespace gibbsteel::internal {

/// Memory for descents: grows to the largest phase it is used for, and stays.
class DescentMemory {
 public:
  DescentMemory() = default;
  /// Reserves for phases of up to `constituents`.
  explicit DescentMemory(std::size_t constituents) { reserve(constituents, 8); }
  void reserve(std::size_t constituents, std::size_t lanes);
  double* data() noexcept { return numbers_.data(); }

 private:
  AlignedNumbers numbers_;
};

/// @param most_lanes  no more than these, for tests; results are the same
void run_descents(DescentTask& task, DescentMemory& memory,
                  std::size_t most_lanes = widest_lanes());

}  // namespace gibbsteel::internal
