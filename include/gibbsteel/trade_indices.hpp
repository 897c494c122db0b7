#pragma once
/// The trade's rules of thumb for an alloy content.

#include "gibbsteel/named_values.hpp"

namespace gibbsteel {

/// All from weight percents; an element that is not listed counts as 0.
struct TradeIndices {
  /// Mo + W/2, Eq. (H26): common practice, no source.
  double molybdenum_equivalent = 0.0;
  /// C - 0.033 W - 0.063 Mo - 0.06 Cr - 0.2 V, Eq. (H27): carbon left when all alloy
  /// has formed carbide. Common practice, no source.
  double carbon_balance = 0.0;
  /// Cr + 3.3 (Mo + W/2) + 16 N, Eq. (H28): resistance to pitting, of what is in
  /// solution. Common practice, no source.
  double pitting_index = 0.0;
  bool operator==(const TradeIndices&) const = default;
};

/// @throws InputError gibbsteel.input.201 to .204, with every problem
TradeIndices trade_indices(const NamedValues& weight_percent);

}  // namespace gibbsteel
