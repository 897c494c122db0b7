#include "gibbsteel/trade_indices.hpp"

#include "internal/weight_percent_checks.hpp"

namespace gibbsteel {

TradeIndices trade_indices(const NamedValues& wt) {
  std::vector<Problem> problems;
  internal::check_weight_percents(wt, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  TradeIndices indices;
  indices.molybdenum_equivalent = wt["Mo"] + 0.5 * wt["W"];
  indices.carbon_balance =
      wt["C"] - 0.033 * wt["W"] - 0.063 * wt["Mo"] - 0.06 * wt["Cr"] - 0.2 * wt["V"];
  indices.pitting_index =
      wt["Cr"] + 3.3 * indices.molybdenum_equivalent + 16.0 * wt["N"];
  return indices;
}

}  // namespace gibbsteel
