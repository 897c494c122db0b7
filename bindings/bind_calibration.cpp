/// Calibration and the call that makes it.

#include "arrays.hpp"
#include "common.hpp"
#include "gibbsteel/calibrate.hpp"
#include "gibbsteel/errors.hpp"
#include "pickling.hpp"
#include "progress.hpp"

namespace gibbsteel::python {
namespace {

/// pybind11 cannot hold a pointer to const.
using Holder = std::shared_ptr<ParameterSet>;

Loss loss_of(const std::string& name) {
  for (const Loss loss : {Loss::squares, Loss::huber, Loss::cauchy})
    if (name == to_string(loss)) return loss;
  throw InputError({{"gibbsteel.input.302", "loss", "is '" + name + "'",
                     "give 'squares', 'huber' or 'cauchy'"}});
}

Calibration run(const std::vector<Measurement>& measurements,
                const std::vector<std::pair<std::string, double>>& numbers,
                const Holder& on, const std::string& loss, double loss_scale,
                bool cross_validate, bool check_published, int most_evaluations,
                std::size_t threads, const py::object& callback,
                const std::string& file_name, const std::string& title,
                const std::string& edition, const std::string& licence,
                const std::map<std::string, double>& start) {
  std::vector<FreeNumber> free;
  for (const auto& [place, deviation] : numbers) {
    const auto found = start.find(place);
    free.push_back({place, deviation});
    if (found != start.end()) free.back().start = found->second;
  }
  CalibrationOptions options;
  options.loss = loss_of(loss);
  options.loss_scale = loss_scale;
  options.cross_validate = cross_validate;
  options.check_published = check_published;
  options.most_evaluations = most_evaluations;
  options.threads = threads;
  if (!callback.is_none()) options.progress = progress_of(callback);
  options.file_name = file_name;
  options.title = title;
  options.edition = edition;
  options.licence = licence;
  const py::gil_scoped_release release;
  return calibrate(measurements, free, on, options);
}

/// (place, 0: the deviation that the set states) of each.
std::vector<std::pair<std::string, double>> stated(const ParameterSet& set) {
  std::vector<std::pair<std::string, double>> numbers;
  for (const FreeNumber& number : stated_numbers(set))
    numbers.emplace_back(number.place, number.prior_deviation);
  return numbers;
}

py::tuple get_state(const Calibration& c) {
  return py::make_tuple(
      static_cast<int>(c.status), c.reason, static_cast<int>(c.loss), c.loss_scale,
      c.numbers, c.measurements, c.covariance, c.directions, c.steels, c.misfit_before,
      c.misfit_after, c.rounds, c.evaluations, c.layer, c.remarks,
      std::const_pointer_cast<ParameterSet>(c.parameters), c.below, c.published);
}

Calibration set_state(const py::tuple& t, int format) {
  Calibration c;
  c.status = enumerator(t[0], CalibrationStatus::compared);
  c.reason = t[1].cast<std::string>();
  c.loss = enumerator(t[2], Loss::cauchy);
  c.loss_scale = t[3].cast<double>();
  c.numbers = t[4].cast<std::vector<CalibratedNumber>>();
  c.measurements = t[5].cast<std::vector<MeasurementOutcome>>();
  c.covariance = t[6].cast<std::vector<double>>();
  c.directions = t[7].cast<std::vector<SeenDirection>>();
  c.steels = t[8].cast<std::vector<LeftOutSteel>>();
  c.misfit_before = t[9].cast<double>();
  c.misfit_after = t[10].cast<double>();
  c.rounds = t[11].cast<int>();
  c.evaluations = t[12].cast<std::size_t>();
  c.layer = t[13].cast<std::string>();
  c.remarks = t[14].cast<std::vector<std::string>>();
  c.parameters = t[15].cast<Holder>();
  c.below = t[16].cast<std::string>();
  if (format > 1) c.published = t[17].cast<PublishedCheck>();
  return c;
}

py::array_t<double> covariance(const Calibration& c) {
  const auto size =
      static_cast<py::ssize_t>(c.covariance.empty() ? 0 : c.numbers.size());
  return read_only(c.covariance, {size, size});
}

void bind_outcome(py::class_<Calibration>& c) {
  c.def_property_readonly(
       "status", [](const Calibration& x) { return std::string(to_string(x.status)); },
       "'converged', 'stalled', 'not converged', 'nothing usable', 'cancelled' or "
       "'compared' (no number was free).")
      .def_readonly("reason", &Calibration::reason,
                    "In one sentence, unless converged.")
      .def_property_readonly(
          "loss", [](const Calibration& x) { return std::string(to_string(x.loss)); },
          "'squares', 'huber' or 'cauchy'.")
      .def_readonly("loss_scale", &Calibration::loss_scale, "In uncertainties.")
      .def_readonly("numbers", &Calibration::numbers, "As asked for.")
      .def_readonly("measurements", &Calibration::measurements, "As given.")
      .def_property_readonly("covariance", &covariance,
                             "Array (numbers, numbers), in their units; empty without "
                             "a fit.")
      .def_readonly("directions", &Calibration::directions, "Best seen first.")
      .def_readonly("steels", &Calibration::steels, "Cross-validation.")
      .def_readonly("published", &Calibration::published,
                    "Published measurements met before and after; its count is 0 "
                    "without a layer, or when not asked for.")
      .def_readonly("misfit_before", &Calibration::misfit_before,
                    "Eq. (K1) with the file.")
      .def_readonly("misfit_after", &Calibration::misfit_after,
                    "Eq. (K1) with the layer.")
      .def_readonly("rounds", &Calibration::rounds, "Of reweighting.")
      .def_readonly("evaluations", &Calibration::evaluations,
                    "Of all soaks, in the fit.");
}

}  // namespace

void bind_calibration(py::module_& m) {
  py::class_<Calibration> c(m, "Calibration",
                            "Numbers of a parameter file fitted to measurements.");
  bind_outcome(c);
  c.def_readonly("layer", &Calibration::layer,
                 "A parameter file; empty when there is none.")
      .def_readonly("remarks", &Calibration::remarks, "On what the layer cannot hold.")
      .def_property_readonly(
          "parameters",
          [](const Calibration& x) {
            return std::const_pointer_cast<ParameterSet>(x.parameters);
          },
          "The file with the layer on it; None without a layer.")
      .def_readonly("below", &Calibration::below, "Title of the file calibrated.")
      .def_property_readonly("usable", &Calibration::usable, "There is a layer.")
      .def("rms_before", &Calibration::rms_before, py::arg("held_back") = false,
           "Root mean square of the misses, in uncertainties.")
      .def("rms_after", &Calibration::rms_after, py::arg("held_back") = false,
           "Root mean square of the misses, in uncertainties.")
      .def("__repr__", [](const Calibration& x) { return "<" + x.brief() + ">"; })
      .def("__str__", &Calibration::full)
      .def(tagged_pickle(&get_state, &set_state, 2));
  m.def("stated_numbers", &stated, py::arg("parameters"));
  const CalibrationOptions usual;
  m.def("calibrate", &run, py::arg("measurements"), py::arg("numbers"), py::arg("on"),
        py::kw_only(), py::arg("loss") = std::string(to_string(usual.loss)),
        py::arg("loss_scale") = usual.loss_scale,
        py::arg("cross_validate") = usual.cross_validate,
        py::arg("check_published") = usual.check_published,
        py::arg("most_evaluations") = usual.most_evaluations,
        py::arg("threads") = usual.threads, py::arg("progress") = py::none(),
        py::arg("file_name") = usual.file_name, py::arg("title") = usual.title,
        py::arg("edition") = usual.edition, py::arg("licence") = usual.licence,
        py::arg("start") = std::map<std::string, double>{});
}

}  // namespace gibbsteel::python
