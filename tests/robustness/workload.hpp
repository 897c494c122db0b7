#pragma once
/// Jobs of every kind that threads may share a parameter set in, and the bits that each
/// of them gives.

#include <bit>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "gibbsteel/steel.hpp"

namespace gibbsteel::testing {

/// All bits of a result. Times are left out.
class Bits {
 public:
  void add(double number) { all_.push_back(std::bit_cast<std::uint64_t>(number)); }
  void add(const std::string& text);
  void add(const State& state);
  void add(const std::vector<State>& states);
  bool empty() const noexcept { return all_.empty(); }
  bool operator==(const Bits&) const = default;

 private:
  std::vector<std::uint64_t> all_;
};

struct Job {
  std::string name;
  std::function<Bits()> run;
};

/// A steel that is used by all jobs at once, and one of a set with invented standard
/// deviations.
Steel workload_steel();

/// Soaks, sweeps, proofs, phase changes, searches, slopes, bands, grids, maps, reports,
/// and reading and writing of parameter files. Some of them use threads themselves.
std::vector<Job> workload(const Steel& steel);

}  // namespace gibbsteel::testing
