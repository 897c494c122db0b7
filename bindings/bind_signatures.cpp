/// Arguments of all compiled functions and classes, for help() and inspect.signature().
///
/// CPython reads them from the head of a docstring, "name(self, a, *, b=1)\n--\n\n",
/// and shows only what comes after it as the text. What can be passed stands in the
/// record that pybind11 keeps of a function.

#include <cstdlib>
#include <cstring>
#include <string_view>

#include "common.hpp"

namespace gibbsteel::python {
namespace {

using Record = py::detail::function_record;

/// Null when it is not compiled here.
Record* record_of(py::handle attribute) {
  const py::handle function = py::detail::get_function(attribute);
  if (!function || PyCFunction_Check(function.ptr()) == 0) return nullptr;
  const py::handle self = PyCFunction_GET_SELF(function.ptr());
  if (!self || !py::isinstance<py::capsule>(self)) return nullptr;
  return py::reinterpret_borrow<py::capsule>(self).get_pointer<Record>();
}

/// Of one function, and each argument has a name.
bool is_plain(const Record& f) {
  const std::size_t self = f.is_method ? 1 : 0;
  return f.next == nullptr && (f.args.size() == f.nargs || f.nargs == self);
}

/// As Python reads it back, which has no literal for these.
std::string default_text(const std::string& shown) {
  return shown == "nan" || shown == "inf" ? "math." + shown : shown;
}

/// From the argument `first` on, separated by commas.
std::string arguments(const Record& f, std::size_t first) {
  if (f.args.empty()) return f.is_method && first == 0 ? "self" : "";
  std::string text;
  for (std::size_t i = first; i < f.args.size(); ++i) {
    if (i > first) text += ", ";
    if (i == f.nargs_pos) text += "*, ";
    text += f.args[i].name;
    if (f.args[i].descr != nullptr) text += "=" + default_text(f.args[i].descr);
  }
  return text;
}

std::string docstring(const std::string& name, const std::string& arguments,
                      const char* text) {
  return name + "(" + arguments + ")\n--\n\n" + (text == nullptr ? "" : text);
}

void sign_function(const Record& f) {
  const char*& doc = f.def->ml_doc;
  const std::string text = docstring(f.name, arguments(f, 0), doc);
  std::free(const_cast<char*>(doc));
  doc = PYBIND11_COMPAT_STRDUP(text.c_str());
}

void sign_class(const py::handle& kind, const Record& constructor) {
  const char*& doc = reinterpret_cast<PyTypeObject*>(kind.ptr())->tp_doc;
  const std::string text =
      docstring(py::str(kind.attr("__name__")), arguments(constructor, 1), doc);
  // With what CPython frees it.
#if PY_VERSION_HEX < 0x030D0000
  void* copy = PyObject_Realloc(const_cast<char*>(doc), text.size() + 1);
#else
  void* copy = PyMem_Realloc(const_cast<char*>(doc), text.size() + 1);
#endif
  if (copy == nullptr) throw std::bad_alloc();
  doc = static_cast<char*>(std::memcpy(copy, text.c_str(), text.size() + 1));
}

void sign_members(const py::handle& kind) {
  for (const py::handle& name : kind.attr("__dict__")) {
    const Record* f = record_of(kind.attr(name));
    if (f == nullptr || !is_plain(*f)) continue;
    sign_function(*f);
    if (std::string_view(f->name) == "__init__") sign_class(kind, *f);
  }
}

}  // namespace

void bind_signatures(const py::module_& m) {
  for (const auto& [name, value] : m.attr("__dict__").cast<py::dict>()) {
    if (PyType_Check(value.ptr()) != 0) {
      sign_members(value);
    } else if (const Record* f = record_of(value); f != nullptr && is_plain(*f)) {
      sign_function(*f);
    }
  }
}

}  // namespace gibbsteel::python
