/// Marks of pickles, see pickling.hpp, and their check for what is rebuilt in Python.

#include <charconv>
#include <optional>

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

constexpr std::string_view kLibrary = "gibbsteel ";

[[noreturn]] void refuse(const char* code, std::string_view class_name,
                         std::string what, std::string remedy) {
  throw InputError({{code, "pickle of " + std::string(class_name), std::move(what),
                     std::move(remedy)}});
}

/// The number behind "gibbsteel State "; nothing when the mark is another one.
std::optional<int> format_of(const py::handle& mark, std::string_view class_name) {
  if (!py::isinstance<py::str>(mark)) return std::nullopt;
  const auto text = mark.cast<std::string>();
  const std::string front = std::string(kLibrary) + std::string(class_name) + " ";
  if (text.rfind(front, 0) != 0) return std::nullopt;
  int format = 0;
  const char* const end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data() + front.size(), end, format);
  if (error != std::errc() || stop != end || format < 1) return std::nullopt;
  return format;
}

}  // namespace

py::str pickle_mark(std::string_view class_name, int format) {
  const std::string text =
      std::string(kLibrary) + std::string(class_name) + " " + std::to_string(format);
  return py::reinterpret_steal<py::str>(PyUnicode_InternFromString(text.c_str()));
}

void check_pickle_mark(const py::handle& mark, std::string_view class_name,
                       int newest) {
  const std::optional<int> format = format_of(mark, class_name);
  if (!format)
    refuse("gibbsteel.input.256", class_name,
           "does not carry the mark of this class: it was not written by gibbsteel, or "
           "by a version before pickles were marked",
           "make the value again from its steel");
  if (*format > newest)
    refuse("gibbsteel.input.257", class_name,
           "is of format " + std::to_string(*format) + ", written by a later version",
           "read it with that version; this one knows formats up to " +
               std::to_string(newest));
}

void refuse_damaged(std::string_view class_name) {
  refuse("gibbsteel.input.258", class_name,
         "is damaged: its fields are not those of the class",
         "make the value again from its steel");
}

py::tuple pickle_fields(const py::object& state, std::string_view class_name,
                        int newest) {
  const bool pair = py::isinstance<py::tuple>(state) && py::len(state) == 2;
  check_pickle_mark(pair ? py::object(state[py::int_(0)]) : py::none(), class_name,
                    newest);
  const py::object fields = state[py::int_(1)];
  if (!py::isinstance<py::tuple>(fields)) refuse_damaged(class_name);
  return py::reinterpret_borrow<py::tuple>(fields);
}

int pickle_format(const py::object& state, std::string_view class_name) {
  return format_of(state[py::int_(0)], class_name).value_or(1);
}

void bind_pickling(py::module_& m) {
  m.def("_pickle_mark", &pickle_mark, py::arg("class_name"), py::arg("format"));
  m.def(
      "_check_pickle_mark",
      [](const py::object& mark, const std::string& class_name, int newest) {
        check_pickle_mark(mark, class_name, newest);
      },
      py::arg("mark"), py::arg("class_name"), py::arg("newest"));
  m.def(
      "_refuse_damaged_pickle",
      [](const std::string& class_name) { refuse_damaged(class_name); },
      py::arg("class_name"));
}

}  // namespace gibbsteel::python
