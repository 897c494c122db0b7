#pragma once
/// The polynomials of Eq. (G1) to (G4) over a box of site fractions: enclosures of
/// value, gradient and Hessian. Natural interval extension, term by term.

#include "internal/polynomial_kernel.hpp"
#include "proof/interval.hpp"

namespace gibbsteel::internal {

/// Where enclosures are added; as Accumulator, upper triangle of the Hessian.
struct IntervalAccumulator {
  Interval* value = nullptr;     ///< or null: not wanted
  Interval* gradient = nullptr;  ///< length n, or null: not wanted
  Interval* hessian = nullptr;   ///< n x n, row by row, or null: not wanted
  std::size_t n = 0;
};

/// @param coefficients  L at one temperature, taken as exact
/// @param y             box of site fractions, within [0, 1]
void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const Interval* y, const IntervalAccumulator& out) noexcept;

}  // namespace gibbsteel::internal
