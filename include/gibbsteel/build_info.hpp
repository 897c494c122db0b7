#pragma once
/// How this copy of the library was built, for tracing a result or a fault to it.

#include <string>

namespace gibbsteel {

struct BuildInfo {
  std::string version;          ///< of the library, "major.minor.patch"
  std::string compiler;         ///< name and version
  std::string flags;            ///< of the compiler, as far as they may change numbers
  long cxx_standard = 0;        ///< value of __cplusplus
  bool assertions = false;      ///< assert() is on
  std::string parameters;       ///< title and edition of default_parameters()
  std::string parameters_hash;  ///< content_hash of it
};

/// Reads default_parameters() on the first call.
BuildInfo build_info();

}  // namespace gibbsteel
