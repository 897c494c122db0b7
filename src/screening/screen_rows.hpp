#pragma once
/// Rows of a screen: from a composition to a problem, from an equilibrium to numbers.

#include <mutex>

#include "gibbsteel/screen.hpp"
#include "screening/solve_block.hpp"
#include "screening/system_cache.hpp"

namespace gibbsteel::internal {

/// What all blocks of a screen share. Safe from any number of threads.
class ScreenRows {
 public:
  /// @pre input and options were checked and outlive this
  ScreenRows(const ScreenInput& input, const ScreenOptions& options);

  std::size_t rows() const noexcept { return rows_; }
  /// Columns and provenance, without rows.
  const ScreenTable& blank() const noexcept { return blank_table_; }
  /// Solves block number `block` and writes those of its rows that `table` has.
  /// @throws StopScreen when a quantity does
  void solve(std::size_t block, ScreenTable& table);

 private:
  struct Prepared;  ///< a block: what is known of its rows before they are solved
  Prepared prepare(std::size_t block);
  void write_conditions(std::size_t block, ScreenTable& table) const;
  void write(const RowProblem& problem, const MillAnalysis& analysis,
             const Equilibrium& result, ScreenTable& table);
  void note(const State& state, std::size_t at, ScreenTable& table) const;
  void add_quantity_warnings(State& state) const;
  void write_quantities(const State& state, std::size_t at, ScreenTable& table) const;

  const ScreenInput& input_;
  const ScreenOptions& options_;
  std::size_t rows_;
  bool by_family_ = false;  ///< a quantity rests on the family of the steel
  SystemCache systems_;
  mutable std::mutex warnings_;  ///< of a table: threads share their lists
  State blank_state_;
  ScreenTable blank_table_;
};

}  // namespace gibbsteel::internal
