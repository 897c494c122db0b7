#include "internal/shared_hash.hpp"

#include <pthread.h>

#include <array>
#include <cstddef>
#include <mutex>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::internal {
namespace {

/// Does not keep the set alive: the memory of a set that nobody uses is free again.
struct Remembered {
  std::weak_ptr<const ParameterSet> set;
  std::string hash;
};

struct Memory {
  std::mutex mutex;
  std::array<Remembered, 8> latest;
  std::size_t next = 0;  ///< the one that is replaced next
};

Memory& memory();

void lock() { memory().mutex.lock(); }
void unlock() { memory().mutex.unlock(); }

/// A child that fork() makes while another thread holds the lock would wait for it for
/// ever: fork() takes it first.
Memory& memory() {
  static Memory shared;
  [[maybe_unused]] static const int registered = pthread_atfork(lock, unlock, unlock);
  return shared;
}

}  // namespace

std::string shared_hash(const SharedParameters& set) {
  {
    const std::lock_guard guard(memory().mutex);
    for (const Remembered& known : memory().latest)
      if (known.set.lock() == set) return known.hash;
  }
  std::string hash = content_hash(*set);
  const std::lock_guard guard(memory().mutex);
  memory().latest[memory().next] = {set, hash};
  memory().next = (memory().next + 1) % memory().latest.size();
  return hash;
}

}  // namespace gibbsteel::internal
