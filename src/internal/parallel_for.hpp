#pragma once
/// Independent tasks on several threads.

#include <cstddef>
#include <functional>

namespace gibbsteel::internal {

/// Calls task(0) ... task(count - 1), each once, in any order, and returns when all are
/// done. The tasks must not touch each other's results: then the outcome does not
/// depend on `threads`. @param threads  0: as many as the machine has cores; the
/// calling thread is one of them. An exception stops the hand-out of further tasks; the
/// one of the lowest task is thrown when all threads are through.
void parallel_for(std::size_t count, std::size_t threads,
                  const std::function<void(std::size_t)>& task);

}  // namespace gibbsteel::internal
