#pragma once
/// A compiled steel as gibbsteel.Steel, and both ways through pickle.

#include "common.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel::python {

/// The Python half around a compiled steel.
inline py::object wrapped(const Steel& steel) {
  return py::module_::import("gibbsteel.steel")
      .attr("Steel")
      .attr("_wrapped")(py::cast(steel));
}

inline py::tuple pickled(const Steel& steel) {
  return py::make_tuple(steel.analysis().given, steel.name(),
                        std::const_pointer_cast<ParameterSet>(steel.parameters()),
                        steel.binds_tramp_elements());
}

inline Steel unpickled(const py::handle& handle) {
  const auto t = handle.cast<py::tuple>();
  return Steel(t[0].cast<NamedValues>(),
               {t[1].cast<std::string>(), t[2].cast<std::shared_ptr<ParameterSet>>(),
                t[3].cast<bool>()});
}

}  // namespace gibbsteel::python
