#include "internal/distinct_warnings.hpp"

#include <algorithm>

#include "internal/liquid_share.hpp"

namespace gibbsteel::internal {
namespace {

/// A warning that was seen, and the liquid of the states that carry it.
struct Entry {
  SeenWarning seen;
  KindShare least, most;
};

bool tells_of_liquid(const Warning& warning, const KindShare& liquid) {
  return warning.code == "gibbsteel.warning.315" && liquid.partly();
}

bool is_same(const Entry& entry, const Warning& warning, const KindShare& liquid) {
  if (tells_of_liquid(warning, liquid) && entry.least.partly())
    return entry.seen.warning.code == warning.code &&
           entry.least.by_mass == liquid.by_mass;
  return entry.seen.warning == warning;
}

void widen(const KindShare& liquid, Entry& entry) {
  if (liquid.percent < entry.least.percent) entry.least = liquid;
  if (liquid.percent > entry.most.percent) entry.most = liquid;
  entry.seen.warning = melting_warning(entry.least, entry.most);
}

void add(const State& state, std::size_t index, std::vector<Entry>& all) {
  const KindShare liquid = liquid_share(state);
  for (const Warning& warning : state.warnings) {
    const auto known = std::find_if(all.begin(), all.end(), [&](const Entry& entry) {
      return is_same(entry, warning, liquid);
    });
    if (known == all.end()) {
      all.push_back({{warning, index, index, 1}, liquid, liquid});
      continue;
    }
    known->seen.last = index;
    ++known->seen.count;
    if (tells_of_liquid(warning, liquid)) widen(liquid, *known);
  }
}

}  // namespace

std::vector<SeenWarning> seen_warnings(const std::vector<const State*>& states) {
  std::vector<Entry> all;
  for (std::size_t i = 0; i < states.size(); ++i) add(*states[i], i, all);
  std::vector<SeenWarning> seen;
  for (Entry& entry : all) seen.push_back(std::move(entry.seen));
  return seen;
}

std::vector<Warning> distinct_warnings(const std::vector<const State*>& states) {
  std::vector<Warning> all;
  for (SeenWarning& seen : seen_warnings(states))
    all.push_back(std::move(seen.warning));
  return all;
}

}  // namespace gibbsteel::internal
