#pragma once
/// Compiled phases, once per set of candidate elements.

#include <map>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

#include "gibbsteel/phase_system.hpp"

namespace gibbsteel::internal {

/// Safe from any number of threads.
class SystemCache {
 public:
  SystemCache(SharedParameters parameters, std::vector<std::string> phases)
      : parameters_(std::move(parameters)), phases_(std::move(phases)) {}

  std::shared_ptr<const PhaseSystem> of(const std::vector<std::string>& elements);

 private:
  SharedParameters parameters_;
  std::vector<std::string> phases_;
  std::mutex mutex_;
  std::map<std::vector<std::string>, std::shared_ptr<const PhaseSystem>> known_;
};

}  // namespace gibbsteel::internal
