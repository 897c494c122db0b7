#include "internal/parallel_for.hpp"

#include <algorithm>
#include <atomic>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace gibbsteel::internal {
namespace {

class Crew {
 public:
  Crew(std::size_t count, const std::function<void(std::size_t)>& task)
      : count_(count), task_(task) {}

  /// Takes tasks until none is left.
  void work() noexcept {
    for (std::size_t i = next_++; i < count_ && !failed_; i = next_++) {
      try {
        task_(i);
      } catch (...) {
        const std::lock_guard guard(mutex_);
        failed_ = true;
        if (!error_ || i < failed_task_) error_ = std::current_exception();
        failed_task_ = std::min(failed_task_, i);
      }
    }
  }

  void rethrow() const {
    if (error_) std::rethrow_exception(error_);
  }

 private:
  std::size_t count_;
  const std::function<void(std::size_t)>& task_;
  std::atomic<std::size_t> next_{0};
  std::atomic<bool> failed_{false};
  std::mutex mutex_;
  std::exception_ptr error_;
  std::size_t failed_task_ = static_cast<std::size_t>(-1);
};

}  // namespace

void parallel_for(std::size_t count, std::size_t threads,
                  const std::function<void(std::size_t)>& task) {
  if (threads == 0) threads = std::max(1u, std::thread::hardware_concurrency());
  Crew crew(count, task);
  {
    std::vector<std::jthread> helpers;
    for (std::size_t i = 1; i < std::min(threads, count); ++i)
      helpers.emplace_back([&crew] { crew.work(); });
    crew.work();
  }
  crew.rethrow();
}

}  // namespace gibbsteel::internal
