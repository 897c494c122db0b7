#pragma once
/// The rows of one phase as the lanes take them.

#include <cstddef>

namespace gibbsteel::internal {

struct ElementRows {
  /// Numbers from one row to the next: every lane count divides it.
  static constexpr std::size_t stride_for(std::size_t elements) noexcept {
    return (elements + 7) / 8 * 8;
  }

  const double* lower = nullptr;  ///< factor L of the phase, see tangent_factor.hpp
  const double* basis = nullptr;  ///< sublattice directions, rows of n
  std::size_t n = 0, sublattices = 0, elements = 0, stride = 0;
  double* x = nullptr;  ///< n rows, aligned to 64 bytes; zero beyond the elements
};

}  // namespace gibbsteel::internal
