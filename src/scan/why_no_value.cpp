#include "scan/why_no_value.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

bool holds(const State& state, const std::string& kind) {
  return std::any_of(state.occurrences.begin(), state.occurrences.end(),
                     [&](const Occurrence& o) { return o.kind == kind; });
}

}  // namespace

std::string why_no_value(const Quantity& quantity, const State& state) {
  for (const std::string& kind : quantity.scope().kinds)
    if (!holds(state, kind)) return "no " + kind;
  return holds(state, "austenite") ? kNoValueThere : "no austenite";
}

std::string reason_text(const std::string& reason) {
  return reason == kNoValueThere ? "" : ": " + reason;
}

}  // namespace gibbsteel::internal
