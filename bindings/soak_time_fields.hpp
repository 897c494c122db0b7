#pragma once
/// The time of a timed soak as a field of a pickle.

#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include <optional>

#include "gibbsteel/state.hpp"

namespace gibbsteel::python {

namespace py = pybind11;

/// (minutes, micrometres, kelvin of annealing or None), or None.
inline py::object time_fields(const std::optional<SoakTime>& time) {
  if (!time) return py::none();
  std::optional<double> annealed;
  if (time->annealed_at) annealed = time->annealed_at->in_kelvin();
  return py::make_tuple(time->minutes, time->particle_micrometres, annealed);
}

inline std::optional<SoakTime> time_from(const py::object& fields) {
  if (fields.is_none()) return std::nullopt;
  const auto t = fields.cast<py::tuple>();
  if (t.size() != 3) throw py::value_error("number of fields");
  SoakTime time{t[0].cast<double>(), t[1].cast<double>()};
  // Both 0 for the limit.
  if (!(time.minutes >= 0.0 && time.particle_micrometres >= 0.0) ||
      (time.particle_micrometres > 0.0) != (time.minutes > 0.0))
    throw py::value_error("time of a soak");
  if (!t[2].is_none()) time.annealed_at = Temperature::kelvin(t[2].cast<double>());
  return time;
}

inline bool is_timed(const State& s) {
  return s.solve_report.status == SolveStatus::timed_soak;
}

/// Timed soaks have one; short-soak limits since format 3, of 0 minutes.
inline void check_time(const State& s) {
  const bool limit = s.solve_report.status == SolveStatus::short_soak_limit;
  if (!s.soak_time && !is_timed(s)) return;
  if (!s.soak_time || !(limit || is_timed(s)))
    throw py::value_error("time of a soak without one");
  if ((s.soak_time->minutes > 0.0) == limit) throw py::value_error("time of a soak");
}

}  // namespace gibbsteel::python
