#pragma once
/// A Python object that C++ may copy and let go where the interpreter is not held.

#include <memory>

#include "common.hpp"

namespace gibbsteel::python {

/// Copies share one reference, counted on this side; the last one takes the interpreter
/// lock to give it back.
class SharedObject {
 public:
  explicit SharedObject(py::object object)
      : held_(new py::object(std::move(object)), [](py::object* held) {
          const py::gil_scoped_acquire hold;
          delete held;
        }) {}

  /// To be called or copied with the interpreter held.
  const py::object& operator*() const noexcept { return *held_; }

 private:
  std::shared_ptr<py::object> held_;
};

}  // namespace gibbsteel::python
