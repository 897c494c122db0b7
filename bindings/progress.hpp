#pragma once
/// A Python callback as the progress function of long work.

#include <functional>

#include "shared_object.hpp"

namespace gibbsteel::python {

/// Asks the callback whether to go on.
inline bool wants_more(const py::object& callback, std::size_t done) {
  if (PyErr_CheckSignals() != 0) throw py::error_already_set();
  if (callback.is_none()) return true;
  const py::object answer = callback(done);
  return answer.is_none() || answer.cast<bool>();
}

/// Calls back with the interpreter held; false stops the work. An interrupt from the
/// keyboard stops it too, so that the part that is done is not lost.
inline std::function<bool(std::size_t)> progress_of(const py::object& callback) {
  return [callback = SharedObject(callback)](std::size_t done) {
    const py::gil_scoped_acquire hold;
    try {
      return wants_more(*callback, done);
    } catch (py::error_already_set& error) {
      if (!error.matches(PyExc_KeyboardInterrupt)) throw;
      return false;
    }
  };
}

}  // namespace gibbsteel::python
