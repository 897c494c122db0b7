/// The hash of a shared set is remembered, but never mixed up between sets.

#include <doctest/doctest.h>

#include <memory>

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
