#include "internal/liquid_share.hpp"

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::internal {

KindShare share_of(const State& state, const std::string& kind) {
  KindShare share;
  double volume = 0.0, mass = 0.0;
  std::size_t found = 0;
  for (const Occurrence& o : state.occurrences) {
    if (o.kind != kind) continue;
    ++found;
    volume += o.volume_percent;
    mass += o.mass_percent;
  }
  share.by_mass = std::isnan(volume);
  share.percent = share.by_mass ? mass : volume;
  share.nothing_else = found > 0 && found == state.occurrences.size();
  return share;
}

KindShare liquid_share(const State& state) { return share_of(state, kLiquid); }

std::string percent_text(const KindShare& share) {
  constexpr double kLeast = 0.1;
  const std::string unit = share.by_mass ? " wt%" : " vol%";
  if (share.percent < kLeast) return "less than " + fixed(kLeast, 1) + unit;
  if (share.partly() && share.percent > 100.0 - kLeast)
    return "more than " + fixed(100.0 - kLeast, 1) + unit;
  return fixed(share.percent, 1) + unit;
}

std::string melting_mark(const State& state) {
  const KindShare share = liquid_share(state);
  if (share.nothing_else) return ", molten";
  return share.percent > 0.0 ? ", partly molten" : "";
}

Warning melting_warning(const KindShare& least, const KindShare& most) {
  std::string text = "Molten: nothing solid is left.";
  if (!least.nothing_else) {
    const std::string low = percent_text(least), high = percent_text(most);
    text = "Partly molten: " + low + (low == high ? "" : " to " + high) +
           " of the steel is liquid; matrix and carbides are what is still solid. "
           "melting_range gives the solidus.";
  }
  return {"gibbsteel.warning.315", std::move(text)};
}

bool may_melt(const State& state) {
  const auto holds = [](const std::vector<std::string>& names) {
    return std::find(names.begin(), names.end(), kLiquid) != names.end();
  };
  return holds(state.kinds) && !holds(state.suppressed);
}

}  // namespace gibbsteel::internal
