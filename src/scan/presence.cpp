#include "scan/presence.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

constexpr double kSmallest = 1e-14;   ///< instead of 0
constexpr double kUsualScale = 1e-4;  ///< [mol per J/mol] where slopes tell nothing
constexpr double kNoMinimum = 1e3;    ///< D where the phase has no minimum [J/mol]

std::size_t count(const LineNode& node, const std::string& kind) {
  return static_cast<std::size_t>(
      std::count(node.kinds.begin(), node.kinds.end(), kind));
}

bool is_present(const LineNode& node, const ChangedKind& changed) {
  return count(node, changed.kind) >= changed.more;
}

/// The smallest set of the kind.
std::size_t smallest(const LineNode& node, const std::string& kind) {
  std::size_t found = kNoMatch;
  for (std::size_t i = 0; i < node.kinds.size(); ++i)
    if (node.kinds[i] == kind &&
        (found == kNoMatch ||
         node.result.present[i].amount < node.result.present[found].amount))
      found = i;
  return found;
}

/// The absent minimum of the kind that is nearest to the plane.
std::size_t nearest(const LineNode& node, const std::string& kind) {
  std::size_t found = kNoMatch;
  for (std::size_t i = 0; i < node.absent_kinds.size(); ++i)
    if (node.absent_kinds[i] == kind &&
        (found == kNoMatch ||
         node.result.absent[i].driving_force > node.result.absent[found].driving_force))
      found = i;
  return found;
}

}  // namespace

std::optional<ChangedKind> changed_kind(const LineNode& a, const LineNode& b) {
  for (const LineNode* node : {&a, &b})
    for (const std::string& kind : node->kinds)
      if (count(a, kind) != count(b, kind))
        return ChangedKind{kind, std::max(count(a, kind), count(b, kind))};
  return std::nullopt;
}

double presence_scale(const LineNode& a, const LineNode& b,
                      const ChangedKind& changed) {
  const bool in_a = is_present(a, changed);
  const LineNode& with = in_a ? a : b;
  const LineNode& without = in_a ? b : a;
  const std::size_t i = smallest(with, changed.kind);
  const std::size_t j = nearest(without, changed.kind);
  if (!with.slopes || !without.slopes || i == kNoMatch || j == kNoMatch)
    return kUsualScale;
  const double scale = std::abs(with.slopes->amount[i] / without.slopes->d[j]);
  return std::isfinite(scale) && scale > 0.0 ? scale : kUsualScale;
}

double presence(const LineNode& node, const ChangedKind& changed, double scale) {
  if (is_present(node, changed)) {
    const std::size_t i = smallest(node, changed.kind);
    return std::max(node.result.present[i].amount, kSmallest);
  }
  const std::size_t j = nearest(node, changed.kind);
  const double d = j == kNoMatch ? kNoMinimum : -node.result.absent[j].driving_force;
  return -std::max(scale * d, kSmallest);
}

}  // namespace gibbsteel::internal
