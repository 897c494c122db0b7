#include "screening/system_cache.hpp"

namespace gibbsteel::internal {
namespace {

/// A screen has few sets of elements. One that has many may not fill the memory.
constexpr std::size_t kMostKept = 64;

}  // namespace

std::shared_ptr<const PhaseSystem> SystemCache::of(
    const std::vector<std::string>& elements) {
  const std::lock_guard guard(mutex_);
  const auto found = known_.find(elements);
  if (found != known_.end()) return found->second;
  if (known_.size() >= kMostKept) known_.clear();
  auto made = std::make_shared<const PhaseSystem>(parameters_, elements, phases_);
  known_.emplace(elements, made);
  return made;
}

}  // namespace gibbsteel::internal
