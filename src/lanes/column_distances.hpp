#pragma once
/// D of all columns of a linear program at once, a lane each.

#include "lanes/column_blocks.hpp"
#include "lanes/real.hpp"

namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE {

/// energy - sum mu x of every column; `out` is aligned and has room for whole blocks.
template <class Real>
void column_distances(const ColumnBlocks& blocks, const double* mu,
                      double* out) noexcept {
  constexpr std::size_t kPart = ColumnBlocks::kColumns / LaneTraits<Real>::kCount;
  const Real* in = reinterpret_cast<const Real*>(blocks.numbers());
  Real* d = reinterpret_cast<Real*>(out);
  for (std::size_t b = 0; b < blocks.count(); ++b)
    for (std::size_t part = 0; part < kPart; ++part) {
      const Real* block = in + b * (blocks.elements() + 1) * kPart + part;
      Real sum = block[blocks.elements() * kPart];
      for (std::size_t e = 0; e < blocks.elements(); ++e)
        sum -= mu[e] * block[e * kPart];
      d[b * kPart + part] = sum;
    }
}

}  // namespace gibbsteel::internal::GIBBSTEEL_LANE_NAMESPACE
