#pragma once
/// The fields of a ScreenTable, columns as bytes: a table may have millions of rows.
/// screen_folder.py restores a table from the same.

#include <string>
#include <tuple>
#include <vector>

#include "common.hpp"
#include "gibbsteel/screen_table.hpp"

namespace gibbsteel::python {

/// Code of a warning, first row that carries it, text.
using FirstWarning = std::tuple<std::string, std::size_t, std::string>;
std::vector<FirstWarning> first_warnings(const ScreenTable& table);

/// Key of a family of steels, first row that belongs to it.
using FirstOfFamily = std::tuple<std::string, std::size_t>;
std::vector<FirstOfFamily> first_of_families(const ScreenTable& table);

py::tuple screen_table_state(const ScreenTable& table);
/// @throws py::value_error
ScreenTable screen_table_from(const py::tuple& fields);

}  // namespace gibbsteel::python
