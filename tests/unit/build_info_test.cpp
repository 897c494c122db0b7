/// What a copy of the library says about how it was built.

#include <doctest/doctest.h>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

TEST_CASE("build info names version, compiler, flags and the compiled-in parameters") {
  const BuildInfo info = build_info();
  CHECK(info.version == kVersion);
  CHECK(info.compiler.find_first_of("0123456789") != std::string::npos);
  CHECK(info.flags.find("-ffp-contract=off") != std::string::npos);
  CHECK(info.flags.find('/') == std::string::npos);  // no folder of the machine
  CHECK(info.cxx_standard >= 202002L);
  CHECK(info.parameters == default_parameters()->title());
  CHECK(info.parameters_hash == content_hash(*default_parameters()));
}
