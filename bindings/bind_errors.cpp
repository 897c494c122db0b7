/// Problem, and C++ exceptions as the Python classes of gibbsteel.errors.

#include "common.hpp"
#include "gibbsteel/errors.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

void raise(const char* name, const Error& error) {
  const py::object type = py::module_::import("gibbsteel.errors").attr(name);
  const py::object instance = type(py::cast(error.problems()));
  PyErr_SetObject(type.ptr(), instance.ptr());
}

}  // namespace

void bind_errors(py::module_& m) {
  py::class_<Problem>(m, "Problem", "One thing wrong with a file or an argument.")
      .def(py::init([](std::string code, std::string place, std::string what,
                       std::string remedy) {
             return Problem{std::move(code), std::move(place), std::move(what),
                            std::move(remedy)};
           }),
           py::arg("code"), py::arg("place"), py::arg("what"), py::arg("remedy"))
      .def_readonly("code", &Problem::code, "Stable code.")
      .def_readonly("place", &Problem::place, "File and JSON pointer, or argument.")
      .def_readonly("what", &Problem::what, "What is wrong.")
      .def_readonly("remedy", &Problem::remedy, "What would be right.")
      .def("__str__", &Problem::text)
      .def("__repr__", [](const Problem& p) { return "<Problem " + p.text() + ">"; })
      .def(
          "__eq__", [](const Problem& a, const Problem& b) { return a == b; },
          py::is_operator())
      .def(tagged_pickle(
          [](const Problem& p) {
            return py::make_tuple(p.code, p.place, p.what, p.remedy);
          },
          [](const py::tuple& t) {
            return Problem{t[0].cast<std::string>(), t[1].cast<std::string>(),
                           t[2].cast<std::string>(), t[3].cast<std::string>()};
          }));
  py::register_exception_translator([](std::exception_ptr pointer) {
    try {
      if (pointer) std::rethrow_exception(pointer);
    } catch (const DataError& error) {
      raise("DataError", error);
    } catch (const InputError& error) {
      raise("InputError", error);
    }
  });
}

}  // namespace gibbsteel::python
