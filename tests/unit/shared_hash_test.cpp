/// The hash of a shared set is remembered, but never mixed up between sets.

#include <doctest/doctest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <atomic>
#include <memory>
#include <thread>
#include <vector>

#include "gibbsteel/parameter_file.hpp"
#include "internal/shared_hash.hpp"

using namespace gibbsteel;

namespace {

SharedParameters edition(const std::string& name) {
  auto set = std::make_shared<ParameterSet>(*default_parameters());
  set->files.front().edition = name;
  return set;
}

}  // namespace

TEST_CASE(
    "the remembered hash is that of the content, for more sets than are remembered") {
  std::vector<SharedParameters> sets{default_parameters()};
  for (int i = 0; i < 12; ++i) sets.push_back(edition("test " + std::to_string(i)));
  for (int round = 0; round < 2; ++round)
    for (const SharedParameters& set : sets)
      CHECK(internal::shared_hash(set) == content_hash(*set));
  CHECK(internal::shared_hash(sets[1]) != internal::shared_hash(sets[2]));
}

TEST_CASE("a set that is gone is not taken for a new one at the same place") {
  for (int i = 0; i < 12; ++i) {
    const SharedParameters set = edition("short-lived " + std::to_string(i));
    CHECK(internal::shared_hash(set) == content_hash(*set));
  }
}

TEST_CASE("a set is not kept alive") {
  std::weak_ptr<const ParameterSet> watched;
  {
    const SharedParameters set = edition("dropped");
    watched = set;
    internal::shared_hash(set);
  }
  CHECK(watched.expired());
}

TEST_CASE("a child made by fork does not wait for a lock of its parent's threads") {
  const SharedParameters set = default_parameters();
  const std::string expected = internal::shared_hash(set);
  std::atomic<bool> over{false};
  std::vector<std::jthread> threads;
  for (int k = 0; k < 2; ++k)
    threads.emplace_back([&] {
      while (!over) internal::shared_hash(set);
    });
  for (int k = 0; k < 50; ++k) {
    const pid_t child = fork();
    if (child == 0) {
      alarm(20);
      _exit(internal::shared_hash(set) == expected ? 0 : 1);
    }
    REQUIRE(child > 0);
    int status = -1;
    waitpid(child, &status, 0);
    CHECK(status == 0);
    if (status != 0) break;
  }
  over = true;
}
