#pragma once
/// Steels, or soaks of one steel, side by side.

#include <span>
#include <string>
#include <vector>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// One number of every state that is compared.
struct ComparisonRow {
  std::string name;            ///< as Quantity::name(): "C in the matrix", "M6C"
  std::string unit;            ///< "wt%", "vol%", "" for a pure number
  std::vector<double> values;  ///< one per state; NaN where the state is not usable
  /// Ends of the band, one per state as `values`; both empty for what has none, see
  /// Quantity::has_band().
  std::vector<double> low, high;

  bool has_band() const noexcept { return !low.empty(); }

  std::string label() const;  ///< "C in the matrix [wt%]"
  bool operator==(const ComparisonRow&) const = default;
};

struct Comparison {
  std::vector<State> states;  ///< in the order given
  /// Carbides by kind and together, every element of the matrix, carbon activity, then
  /// the quantities that were asked for.
  std::vector<ComparisonRow> rows;
  bool by_family = false;  ///< as Quantity::by_family(), of any row
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
  /// Quantity::warnings() of the quantities that were asked for, one list per state.
  std::vector<std::vector<Warning>> of_quantities;

  /// Those of a state and of its quantities; with by_family also that its steel is near
  /// a border of its family (gibbsteel.warning.335), or that the steels are of several
  /// (.357).
  /// @pre i < states.size()
  std::vector<Warning> warnings_of(std::size_t i) const;
  std::vector<Warning> warnings() const;  ///< the distinct ones of all states
  /// By name. @throws InputError gibbsteel.input.209 naming what is there
  const ComparisonRow& row(std::string_view name) const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table: one column per state, warnings, cautions
};

/// @param states      at least one; long-hold limits and short soaks may be mixed
/// @param quantities  further rows, in this order
/// @throws InputError gibbsteel.input.267 (no state), and what a quantity throws
Comparison compare(std::span<const State> states,
                   std::span<const Quantity> quantities = {});

/// Every steel at every temperature, temperatures of one steel side by side.
/// @throws InputError gibbsteel.input.267 (no steel or no temperature), and as
///         Steel::soak(); .205, .206 (see Quantity::problems())
Comparison compare(std::span<const Steel> steels,
                   std::span<const Temperature> temperatures,
                   std::span<const Quantity> quantities = {},
                   const SoakOptions& options = {});

}  // namespace gibbsteel
