#include <algorithm>
#include <string>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "message_text.hpp"
#include "term_key.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// Moves to the next end member, the last sublattice running fastest; false at the end.
bool advance(const Phase& phase, std::vector<std::size_t>& position) {
  for (std::size_t i = position.size(); i-- > 0;) {
    if (++position[i] < phase.sublattices[i].constituents.size()) return true;
    position[i] = 0;
  }
  return false;
}

}  // namespace

bool check_on(const Check& check, const Phase& phase,
              const std::vector<std::vector<std::string>>& on,
              const std::string& place) {
  if (on.size() != phase.sublattices.size()) {
    check.problems.add(
        codes::kWrongSiteCount, place,
        "has " + std::to_string(on.size()) + (on.size() == 1 ? " entry" : " entries"),
        "give one for each of the " + std::to_string(phase.sublattices.size()) +
            (phase.sublattices.size() == 1 ? " sublattice" : " sublattices"));
    return false;
  }
  bool fits = true;
  for (std::size_t i = 0; i < on.size(); ++i) {
    const auto& known = phase.sublattices[i].constituents;
    for (std::size_t j = 0; j < on[i].size(); ++j) {
      if (std::find(known.begin(), known.end(), on[i][j]) != known.end()) continue;
      fits = false;
      std::string where = place + "/" + std::to_string(i);
      if (on[i].size() > 1) where.append("/").append(std::to_string(j));
      check.problems.add(
          codes::kNotOnSublattice, where,
          in_quotes(on[i][j]) + " is not on sublattice " + std::to_string(i + 1),
          "give " + one_of(known));
    }
  }
  return fits;
}

void check_complete(const Check& check, const Phase& phase,
                    const std::unordered_set<std::string>& keys, std::string_view code,
                    const std::string& what, const std::string& place) {
  constexpr std::size_t kMostNamed = 5;
  double count = 1.0;
  for (const Sublattice& one : phase.sublattices) {
    count *= static_cast<double>(one.constituents.size());
  }
  if (count > static_cast<double>(check.limits.terms_per_phase)) {
    check.problems.add(codes::kBeyondLimit, place,
                       "the phase has more than " +
                           std::to_string(check.limits.terms_per_phase) +
                           " end members",
                       "describe it with fewer sublattices or constituents");
    return;
  }
  std::vector<std::size_t> position(phase.sublattices.size(), 0);
  std::size_t missing = 0;
  std::string named;
  do {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < position.size(); ++i) {
      names.push_back(phase.sublattices[i].constituents[position[i]]);
    }
    if (keys.contains(end_member_key(names))) continue;
    if (++missing <= kMostNamed) named += (named.empty() ? "" : ", ") + on_text(names);
  } while (advance(phase, position));
  if (missing == 0) return;
  if (missing > kMostNamed) {
    named += " and " + std::to_string(missing - kMostNamed) + " more";
  }
  check.problems.add(code, place, "no " + what + " is given for " + named,
                     "give one for every end member");
}

}  // namespace gibbsteel::parameter_file
