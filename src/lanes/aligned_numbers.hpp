#pragma once
/// Memory that every vector of numbers may be read from: aligned to 64 bytes.

#include <cstddef>
#include <vector>

namespace gibbsteel::internal {

class AlignedNumbers {
 public:
  /// Room for `count` numbers; what is large enough stays.
  void reserve(std::size_t count) {
    const std::size_t chunks = (count + kPerChunk - 1) / kPerChunk;
    if (chunks_.size() < chunks) chunks_.resize(chunks);
  }
  /// Null where nothing was reserved.
  double* data() noexcept { return chunks_.empty() ? nullptr : chunks_[0].numbers; }
  const double* data() const noexcept {
    return chunks_.empty() ? nullptr : chunks_[0].numbers;
  }

 private:
  static constexpr std::size_t kPerChunk = 8;
  struct alignas(64) Chunk {
    double numbers[kPerChunk] = {};
  };
  std::vector<Chunk> chunks_;
};

}  // namespace gibbsteel::internal
