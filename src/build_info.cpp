#include "gibbsteel/build_info.hpp"

#include "gibbsteel/parameter_file.hpp"
#include "gibbsteel/version.hpp"

namespace gibbsteel {
namespace {

std::string compiler() {
#ifdef __clang__
  return "clang " __clang_version__;
#else
  return "g++ " __VERSION__;
#endif
}

}  // namespace

BuildInfo build_info() {
  BuildInfo info;
  info.version = kVersion;
  info.compiler = compiler();
  info.flags = GIBBSTEEL_BUILD_FLAGS;  // set for this file in src/CMakeLists.txt
  info.cxx_standard = __cplusplus;
#ifndef NDEBUG
  info.assertions = true;
#endif
  const SharedParameters set = default_parameters();
  info.parameters = set->title();
  info.parameters_hash = content_hash(*set);
  return info;
}

}  // namespace gibbsteel
