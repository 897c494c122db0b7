/// SolveOptions and SolveReport.

#include "common.hpp"
#include "gibbsteel/minimizer.hpp"
#include "pickling.hpp"

namespace gibbsteel::python {
namespace {

py::tuple report_state(const SolveReport& r) {
  return py::make_tuple(static_cast<int>(r.status), static_cast<int>(r.certificate),
                        r.reason, r.rounds, r.newton_steps, r.columns, r.evaluations,
                        r.balance_residual, r.present_residual, r.lowest_absent,
                        r.seconds, r.unique, r.proven_gap, r.proof_boxes, r.proof,
                        r.condition_number);
}

SolveReport report_from(const py::tuple& t) {
  SolveReport r;
  r.status = enumerator(t[0], SolveStatus::timed_soak);
  r.certificate = enumerator(t[1], Certificate::followed);
  r.reason = t[2].cast<std::string>();
  r.rounds = t[3].cast<int>();
  r.newton_steps = t[4].cast<int>();
  r.columns = t[5].cast<int>();
  r.evaluations = t[6].cast<int>();
  r.balance_residual = t[7].cast<double>();
  r.present_residual = t[8].cast<double>();
  r.lowest_absent = t[9].cast<double>();
  r.seconds = t[10].cast<double>();
  r.unique = t[11].cast<bool>();
  r.proven_gap = t[12].cast<double>();
  r.proof_boxes = t[13].cast<long>();
  r.proof = t[14].cast<std::string>();
  r.condition_number = t[15].cast<double>();
  return r;
}

Certificate certificate_of(const std::string& word) {
  for (const Certificate c : {Certificate::many_starts, Certificate::proof})
    if (word == to_string(c)) return c;
  throw InputError({{"gibbsteel.input.232", "certify", "is '" + word + "'",
                     "choose 'many starts' or 'proof'"}});
}

SolveOptions make_options(int max_rounds, int max_newton_steps, int starts_per_phase,
                          double balance_tolerance, double stability_tolerance,
                          const std::string& certify, double proof_gap,
                          long proof_boxes, double proof_seconds) {
  SolveOptions o;
  o.certify = certificate_of(certify);
  o.proof_gap = proof_gap;
  o.proof_boxes = proof_boxes;
  o.proof_seconds = proof_seconds;
  o.max_rounds = max_rounds;
  o.max_newton_steps = max_newton_steps;
  o.starts_per_phase = starts_per_phase;
  o.balance_tolerance = balance_tolerance;
  o.stability_tolerance = stability_tolerance;
  if (auto problems = o.problems(); !problems.empty())
    throw InputError(std::move(problems));
  return o;
}

py::tuple options_state(const SolveOptions& o) {
  return py::make_tuple(o.max_rounds, o.max_newton_steps, o.starts_per_phase,
                        o.balance_tolerance, o.stability_tolerance,
                        std::string(to_string(o.certify)), o.proof_gap, o.proof_boxes,
                        o.proof_seconds);
}

py::str options_repr(const SolveOptions& o) {
  return py::str(
             "SolveOptions(max_rounds={}, max_newton_steps={}, starts_per_phase={}, "
             "balance_tolerance={:g}, stability_tolerance={:g}, certify='{}', "
             "proof_gap={:g}, proof_boxes={}, proof_seconds={:g})")
      .format(*options_state(o));
}

using OptionsClass = py::class_<SolveOptions>;

void bind_option_fields(OptionsClass& options) {
  options
      .def_readonly("max_rounds", &SolveOptions::max_rounds,
                    "Certificate rounds that may add phases, >= 1.")
      .def_readonly("max_newton_steps", &SolveOptions::max_newton_steps,
                    "Most Newton steps of a refinement, >= 1.")
      .def_readonly("starts_per_phase", &SolveOptions::starts_per_phase,
                    "Mutually distant starts of the certificate in each phase, >= 1.")
      .def_readonly("balance_tolerance", &SolveOptions::balance_tolerance,
                    "Largest element balance error, relative, in (0, 1e-6].")
      .def_readonly(
          "stability_tolerance", &SolveOptions::stability_tolerance,
          "How far below the plane still counts as on it [J/mol of atoms], > 0.")
      .def_property_readonly(
          "certify",
          [](const SolveOptions& o) { return std::string(to_string(o.certify)); },
          "Certificate to aim at: 'many starts' or 'proof'.")
      .def_readonly("proof_gap", &SolveOptions::proof_gap,
                    "Gap at which a proof is done [J/mol of atoms].")
      .def_readonly("proof_boxes", &SolveOptions::proof_boxes,
                    "Most boxes of a proof in each phase, >= 1.")
      .def_readonly("proof_seconds", &SolveOptions::proof_seconds,
                    "Most time for all proofs [s], > 0.");
}

void bind_options(py::module_& m) {
  const SolveOptions standard;
  OptionsClass options(m, "SolveOptions", "Settings of the minimizer.");
  bind_option_fields(options);
  options
      .def(py::init(&make_options), py::kw_only(),
           py::arg("max_rounds") = standard.max_rounds,
           py::arg("max_newton_steps") = standard.max_newton_steps,
           py::arg("starts_per_phase") = standard.starts_per_phase,
           py::arg("balance_tolerance") = standard.balance_tolerance,
           py::arg("stability_tolerance") = standard.stability_tolerance,
           py::arg("certify") = std::string(to_string(standard.certify)),
           py::arg("proof_gap") = standard.proof_gap,
           py::arg("proof_boxes") = standard.proof_boxes,
           py::arg("proof_seconds") = standard.proof_seconds)
      .def(
          "__eq__", [](const SolveOptions& a, const SolveOptions& b) { return a == b; },
          py::is_operator())
      .def("__repr__", &options_repr)
      .def(tagged_pickle(&options_state, [](const py::tuple& t) {
        return make_options(t[0].cast<int>(), t[1].cast<int>(), t[2].cast<int>(),
                            t[3].cast<double>(), t[4].cast<double>(),
                            t[5].cast<std::string>(), t[6].cast<double>(),
                            t[7].cast<long>(), t[8].cast<double>());
      }));
}

using ReportClass = py::class_<SolveReport>;

void bind_course(ReportClass& report) {
  report
      .def_property_readonly(
          "status",
          [](const SolveReport& r) { return std::string(to_string(r.status)); },
          "'converged', 'iteration limit', 'stalled', 'infeasible', 'not run', "
          "'measured', 'short-soak limit' or 'timed soak'.")
      .def_property_readonly(
          "certificate",
          [](const SolveReport& r) { return std::string(to_string(r.certificate)); },
          "'proof', 'covered', 'many starts', 'followed' or 'none'.")
      .def_property_readonly("usable", &SolveReport::usable,
                             "True when every number may be used.")
      .def_readonly("reason", &SolveReport::reason, "One sentence.")
      .def_readonly("rounds", &SolveReport::rounds, "Certificate rounds.")
      .def_readonly("newton_steps", &SolveReport::newton_steps, "Of all rounds.")
      .def_readonly("columns", &SolveReport::columns, "Of the linear program.")
      .def_readonly("evaluations", &SolveReport::evaluations,
                    "Of a phase with its Hessian.")
      .def_readonly("seconds", &SolveReport::seconds, "Wall time [s].");
}

void bind_quality(ReportClass& report) {
  report
      .def_readonly("balance_residual", &SolveReport::balance_residual,
                    "Largest relative element balance error; NaN when not computed.")
      .def_readonly("present_residual", &SolveReport::present_residual,
                    "Largest |D| of a present set [J/mol of atoms].")
      .def_readonly("lowest_absent", &SolveReport::lowest_absent,
                    "Lowest D found of all others [J/mol of atoms].")
      .def_readonly("unique", &SolveReport::unique,
                    "False when the equilibrium leaves amounts or potentials free.")
      .def_readonly("condition_number", &SolveReport::condition_number,
                    "Largest over smallest singular value of the scaled equilibrium "
                    "matrix at the solution, Eq. (N4); infinite when not `unique`.")
      .def_property_readonly("digits_lost", &SolveReport::digits_lost,
                             "Digits of amounts and potentials that rounding may cost, "
                             "of 16: log10 of condition_number.")
      .def_readonly("proven_gap", &SolveReport::proven_gap,
                    "The Gibbs energy is proven to be no more than this above the "
                    "lowest possible one [J/mol of atoms]; NaN without a proof.")
      .def_readonly("proof_boxes", &SolveReport::proof_boxes,
                    "Boxes that the proof examined.")
      .def_readonly("proof", &SolveReport::proof,
                    "How far the proof got; empty when it was not asked for.");
}

}  // namespace

void bind_solve(py::module_& m) {
  bind_options(m);
  ReportClass report(m, "SolveReport", "How a minimization went.");
  bind_course(report);
  bind_quality(report);
  report
      .def("__repr__",
           [](const SolveReport& r) { return "<SolveReport: " + r.brief() + ">"; })
      .def("__str__", &SolveReport::full)
      .def(tagged_pickle(&report_state, &report_from));
}

}  // namespace gibbsteel::python
