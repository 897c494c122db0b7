#pragma once
/// Dicts whose missing names are refused with a way out; see gibbsteel/named.py.

#include "common.hpp"

namespace gibbsteel::python {

template <class... Arguments>
py::object named(const char* function, const Arguments&... arguments) {
  return py::module_::import("gibbsteel.named").attr(function)(arguments...);
}

/// A read-only property: numbers by element.
template <class Type, class... Options>
void def_by_element(py::class_<Type, Options...>& c, const char* name,
                    NamedValues Type::*values, const char* doc) {
  c.def_property_readonly(
      name,
      [name, values](const Type& x) { return named("by_element", x.*values, name); },
      doc);
}

}  // namespace gibbsteel::python
