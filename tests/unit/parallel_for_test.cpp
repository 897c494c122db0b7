/// Independent tasks on several threads.

#include "internal/parallel_for.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <stdexcept>
#include <vector>

using gibbsteel::internal::parallel_for;

TEST_CASE("every task once, whatever the number of threads") {
  for (const std::size_t threads : {0u, 1u, 2u, 7u})
    for (const std::size_t count : {0u, 1u, 3u, 500u}) {
      CAPTURE(threads);
      CAPTURE(count);
      std::vector<std::atomic<int>> calls(count);
      parallel_for(count, threads, [&](std::size_t i) { ++calls[i]; });
      for (const auto& number : calls) CHECK(number == 1);
    }
}

TEST_CASE("an exception of a task reaches the caller after all threads are through") {
  for (const std::size_t threads : {1u, 4u}) {
    std::atomic<int> running{0};
    const auto task = [&](std::size_t i) {
      ++running;
      --running;
      if (i >= 10) throw std::runtime_error("task " + std::to_string(i));
    };
    CHECK_THROWS_AS(parallel_for(1000, threads, task), std::runtime_error);
    CHECK(running == 0);
  }
  CHECK_THROWS_WITH(parallel_for(5, 1,
                                 [](std::size_t i) {
                                   if (i == 3) throw std::runtime_error("task 3");
                                 }),
                    "task 3");
}
