/// How the library and this module were built.

#include "common.hpp"
#include "gibbsteel/build_info.hpp"
#include "gibbsteel/version.hpp"

namespace gibbsteel::python {
namespace {

py::dict build_info_dict() {
  const BuildInfo build = build_info();
  py::dict info;
  info["version"] = build.version;
  info["compiler"] = build.compiler;
  info["flags"] = build.flags;
  info["cxx_standard"] = build.cxx_standard;
  info["assertions"] = build.assertions;
  info["pybind11"] = PYBIND11_TOSTRING(PYBIND11_VERSION_MAJOR) "." PYBIND11_TOSTRING(
      PYBIND11_VERSION_MINOR) "." PYBIND11_TOSTRING(PYBIND11_VERSION_PATCH);
  info["parameters"] = build.parameters;
  info["parameters_hash"] = build.parameters_hash;
  return info;
}

}  // namespace

void bind_build_info(py::module_& m) {
  m.attr("version") = kVersion;
  m.def("build_info", &build_info_dict);
}

}  // namespace gibbsteel::python
