#pragma once
/// Pickles that say what they are: a pair of a mark and the fields of the value,
///
///   ("gibbsteel State 1", (...))
///
/// The mark names the class and the format of its fields. A pickle with another mark,
/// of a later format or with fields that cannot be read is refused with a code; it is
/// never misread. The promise to users stands in thermo_data/README.md.

#include <pybind11/pybind11.h>

#include <string>
#include <string_view>
#include <type_traits>
#include <utility>

namespace gibbsteel::python {

namespace py = pybind11;

/// "gibbsteel State 1"; one object for all values, so that a pickle holds it once.
py::str pickle_mark(std::string_view class_name, int format);

/// @throws InputError gibbsteel.input.256 (not the mark of this class), .257 (a format
///         above `newest`)
void check_pickle_mark(const py::handle& mark, std::string_view class_name, int newest);

/// @throws InputError gibbsteel.input.258
[[noreturn]] void refuse_damaged(std::string_view class_name);

/// The fields behind a mark that fits. @throws InputError as check_pickle_mark(), .258
py::tuple pickle_fields(const py::object& state, std::string_view class_name,
                        int newest);

/// The format in a mark that fits. @pre pickle_fields() took it
int pickle_format(const py::object& state, std::string_view class_name);

/// The enumerator with this number; enumerators are only ever appended.
/// @param last  the last one that this version knows
/// @throws py::value_error
template <typename Enum>
Enum enumerator(const py::handle& number, Enum last) {
  const int value = number.cast<int>();
  if (value < 0 || value > static_cast<int>(last))
    throw py::value_error("no enumerator with this number");
  return static_cast<Enum>(value);
}

/// In place of py::pickle().
/// @param get     the fields of a value as a tuple
/// @param set     the value from such a tuple, or from it and the format of the fields
/// @param newest  format of the fields. Raise it when fields are appended; `set` then
///                gives what an older, shorter tuple lacks its default.
template <typename Get, typename Set>
auto tagged_pickle(Get get, Set set, int newest = 1) {
  constexpr bool kByFormat = std::is_invocable_v<Set, const py::tuple&, int>;
  const auto made = [set](const py::tuple& fields, int format) {
    if constexpr (kByFormat)
      return set(fields, format);
    else
      return set(fields);
  };
  using Class = std::decay_t<decltype(made(py::tuple(), 1))>;
  const auto name = [] {
    return py::type::of<Class>().attr("__name__").template cast<std::string>();
  };
  return py::pickle(
      [get, newest, name](const Class& value) -> py::object {
        return py::make_tuple(pickle_mark(name(), newest), get(value));
      },
      [made, newest, name](const py::object& state) -> Class {
        const std::string class_name = name();
        const py::tuple fields = pickle_fields(state, class_name, newest);
        try {
          return made(fields, pickle_format(state, class_name));
        } catch (const py::builtin_exception&) {
          refuse_damaged(class_name);
        } catch (py::error_already_set& error) {
          if (!error.matches(PyExc_Exception)) throw;
          refuse_damaged(class_name);
        }
      });
}

}  // namespace gibbsteel::python
