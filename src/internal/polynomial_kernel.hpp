#pragma once
/// The polynomials in site fractions of Eq. (G1) to (G4): value, gradient and Hessian
/// on caller-owned memory. No allocation, no throw.

#include <array>
#include <cstdint>
#include <vector>

namespace gibbsteel::internal {

inline constexpr std::size_t kMaxConstituents = 64;  ///< per phase, see FileLimits
inline constexpr std::size_t kMaxSublattices = 6;
inline constexpr std::size_t kMaxOrder = 5;  ///< of a Redlich-Kister term

enum class Mixing : std::uint8_t { none, binary, ternary, reciprocal };

/// Terms that name the same constituents: their orders share one evaluation.
struct TermGroup {
  Mixing mixing = Mixing::none;
  std::uint8_t single_count = 0;
  std::uint8_t coefficient_count = 0;  ///< orders 0 .. count-1, consecutive
  std::uint32_t first_coefficient = 0;
  std::array<std::uint16_t, 4> mixed{};                 ///< 0, 2, 3 or 4 used
  std::array<std::uint16_t, kMaxSublattices> single{};  ///< one per other sublattice
};

struct Polynomial {
  std::vector<TermGroup> groups;
  std::uint32_t coefficient_count = 0;
};

/// Where results are added. Without a gradient there is no Hessian either.
/// The Hessian receives the upper triangle (row <= column) only.
struct Accumulator {
  double* value = nullptr;     ///< never null
  double* gradient = nullptr;  ///< length n, or null: not wanted
  double* hessian = nullptr;   ///< n x n, row by row, or null: not wanted
  std::size_t n = 0;
};

/// Adds sum over groups of L(T) P(y) and its derivatives.
/// @param coefficients  L at one temperature, length polynomial.coefficient_count
void add_polynomial(const Polynomial& polynomial, const double* coefficients,
                    const double* y, const Accumulator& out) noexcept;

}  // namespace gibbsteel::internal
