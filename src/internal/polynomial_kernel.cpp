#include "internal/polynomial_kernel.hpp"

#include "lanes/polynomial.hpp"

namespace gibbsteel::internal {

void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const double* y, const Accumulator& out) noexcept {
  *out.value += out.gradient ? one::add_polynomial(polynomial, coefficients, y,
                                                   {out.gradient, out.hessian, out.n})
                             : one::polynomial_value(polynomial, coefficients, y);
}

}  // namespace gibbsteel::internal
