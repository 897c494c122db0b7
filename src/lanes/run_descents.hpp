#pragma once
/// Descents in as many lanes as the machine has and the starts can fill. The results do
/// not depend on the number of lanes, to the bit.

#include <span>
#include <vector>

#include "lanes/task.hpp"

#if defined(__x86_64__) && (defined(__GNUC__) || defined(__clang__))
#define GIBBSTEEL_WIDE_LANES
#endif

namespace gibbsteel::internal {

/// One start after the other, two at once (on every machine), four with AVX2, eight
/// with AVX-512.
void descend_one(DescentTask& task) noexcept;
void descend_two(DescentTask& task) noexcept;
void descend_four(DescentTask& task) noexcept;
void descend_eight(DescentTask& task) noexcept;

/// Lanes that this machine has: 2, 4 or 8.
std::size_t widest_lanes() noexcept;

/// Memory for descents: grows to the largest phase it is used for, and stays.
class DescentMemory {
 public:
  DescentMemory() = default;
  /// Reserves for phases of up to `constituents`.
  explicit DescentMemory(std::size_t constituents) { reserve(constituents, 8); }
  void reserve(std::size_t constituents, std::size_t lanes);
  double* data() noexcept { return chunks_.data()->numbers; }

 private:
  struct alignas(64) Chunk {
    double numbers[8];
  };
  std::vector<Chunk> chunks_;
};

/// @param most_lanes  no more than these, for tests; results are the same
void run_descents(DescentTask& task, DescentMemory& memory,
                  std::size_t most_lanes = widest_lanes());

}  // namespace gibbsteel::internal
