#include "internal/quantity_warnings.hpp"

#include <algorithm>
#include <cmath>

#include "internal/family_borders.hpp"

namespace gibbsteel::internal {

void add_warnings(const Quantity& quantity, const State& state,
                  std::vector<Warning>& out) {
  for (const Warning& warning : quantity.warnings(state)) add_distinct(warning, out);
  if (quantity.by_family() && state.usable())
    add_distinct(near_border(state.analysis.modelled), out);
}

void add_new_code(const Warning& warning, std::vector<Warning>& out) {
  const auto is_same = [&](const Warning& known) { return known.code == warning.code; };
  if (std::none_of(out.begin(), out.end(), is_same)) out.push_back(warning);
}

std::vector<Warning> warnings_where_known(const Quantity& quantity,
                                          const std::vector<const State*>& states) {
  std::vector<Warning> all;
  for (const State* state : states)
    if (std::isfinite(quantity.value(*state))) add_warnings(quantity, *state, all);
  return all;
}

}  // namespace gibbsteel::internal
