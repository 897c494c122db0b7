#pragma once
/// Ends a search from any depth. Thrown and caught inside the library: a caller sees a
/// result that says why it is not complete.

#include <string>

namespace gibbsteel::internal {

struct Stopped {
  std::string why;
};

/// Counts soaks. @throws Stopped at the limit, or when the caller wants no more
template <class Options>
void count_soak(const Options& options, std::size_t limit, std::size_t done) {
  if (options.progress && !options.progress(done)) throw Stopped{"cancelled"};
  if (done >= limit)
    throw Stopped{"the limit of " + std::to_string(limit) + " soaks was reached"};
}

}  // namespace gibbsteel::internal
