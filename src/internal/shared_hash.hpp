#pragma once
/// The content hash of a shared parameter set, computed once.

#include <string>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// content_hash(*set), remembered for the sets used last: it writes the whole set as
/// text, which takes milliseconds, and a screen makes thousands of steels from one set.
/// Safe from any number of threads, and in a child that fork() makes meanwhile.
std::string shared_hash(const SharedParameters& set);

}  // namespace gibbsteel::internal
