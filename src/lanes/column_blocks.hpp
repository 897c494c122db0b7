#pragma once
/// Compositions and energies of columns in blocks of eight, one number of eight columns
/// after another, as the lanes take them.

#include "lanes/aligned_numbers.hpp"

namespace gibbsteel::internal {

class ColumnBlocks {
 public:
  static constexpr std::size_t kColumns = 8;  ///< of a block

  explicit ColumnBlocks(std::size_t elements) : elements_(elements) {}

  /// @param composition  length elements
  void add(const double* composition, double energy) {
    const std::size_t lane = size_ % kColumns, rows = elements_ + 1;
    if (lane == 0) numbers_.reserve((count() + 1) * rows * kColumns);
    double* block = numbers_.data() + size_ / kColumns * rows * kColumns;
    for (std::size_t e = 0; e < elements_; ++e)
      block[e * kColumns + lane] = composition[e];
    block[elements_ * kColumns + lane] = energy;
    ++size_;
  }

  std::size_t elements() const noexcept { return elements_; }
  /// Blocks; what is beyond the last column is zero.
  std::size_t count() const noexcept { return (size_ + kColumns - 1) / kColumns; }
  /// Rows of a block: elements, then the energy.
  const double* numbers() const noexcept { return numbers_.data(); }

 private:
  std::size_t elements_, size_ = 0;
  AlignedNumbers numbers_;
};

}  // namespace gibbsteel::internal
