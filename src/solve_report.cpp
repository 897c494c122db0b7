/// Options and report of the minimizer as text; see minimizer.hpp.

#include <algorithm>
#include <cmath>

#include "gibbsteel/minimizer.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel {

std::string_view to_string(SolveStatus status) noexcept {
  switch (status) {
    case SolveStatus::not_run:
      return "not run";
    case SolveStatus::converged:
      return "converged";
    case SolveStatus::iteration_limit:
      return "iteration limit";
    case SolveStatus::stalled:
      return "stalled";
    case SolveStatus::infeasible:
      return "infeasible";
    case SolveStatus::measured:
      return "measured";
    case SolveStatus::short_soak_limit:
      return "short-soak limit";
    case SolveStatus::timed_soak:
      return "timed soak";
  }
  return "unknown";
}

std::string_view to_string(Certificate certificate) noexcept {
  switch (certificate) {
    case Certificate::none:
      return "none";
    case Certificate::many_starts:
      return "many starts";
    case Certificate::proof:
      return "proof";
    case Certificate::covered:
      return "covered";
    case Certificate::followed:
      return "followed";
  }
  return "unknown";
}

std::vector<Problem> SolveOptions::problems() const {
  std::vector<Problem> found;
  const auto require = [&](bool good, const char* name, double value,
                           const char* remedy) {
    if (!good)
      found.push_back(
          {"gibbsteel.input.232", name, "is " + internal::shortest(value), remedy});
  };
  require(max_rounds >= 1, "max_rounds", max_rounds, "give 1 or more");
  require(max_newton_steps >= 1, "max_newton_steps", max_newton_steps,
          "give 1 or more");
  require(starts_per_phase >= 1, "starts_per_phase", starts_per_phase,
          "give 1 or more");
  require(balance_tolerance > 0.0 && balance_tolerance <= 1e-6, "balance_tolerance",
          balance_tolerance, "give a number above 0, at most 1e-6");
  require(stability_tolerance > 0.0 && std::isfinite(stability_tolerance),
          "stability_tolerance", stability_tolerance,
          "give a number above 0 [J/mol of atoms]");
  require(proof_gap >= 2.0 * stability_tolerance && std::isfinite(proof_gap),
          "proof_gap", proof_gap,
          "give twice the stability_tolerance or more [J/mol of atoms]");
  require(proof_boxes >= 1, "proof_boxes", static_cast<double>(proof_boxes),
          "give 1 or more");
  require(proof_seconds > 0.0, "proof_seconds", proof_seconds,
          "give a number above 0 [s]");
  if (certify != Certificate::many_starts && certify != Certificate::proof)
    found.push_back({"gibbsteel.input.232", "certify",
                     "is '" + std::string(to_string(certify)) + "'",
                     "choose 'many starts' or 'proof'"});
  return found;
}

bool SolveReport::by_mass_balance() const noexcept {
  return status == SolveStatus::measured || status == SolveStatus::short_soak_limit ||
         status == SolveStatus::timed_soak;
}

bool SolveReport::usable() const noexcept {
  if (by_mass_balance()) return true;
  return status == SolveStatus::converged && certificate != Certificate::none;
}

double SolveReport::digits_lost() const noexcept {
  return std::log10(condition_number);
}

std::string SolveReport::brief() const {
  if (!usable())
    return "NOT USABLE: " + std::string(to_string(status)) + " (" + reason + ")";
  if (by_mass_balance()) return reason;
  const std::string text =
      "converged, certificate: " + std::string(to_string(certificate));
  if (std::isnan(lowest_absent)) return text + ", no other phase is a candidate";
  return text + ", nearest absent phase " +
         internal::fixed(std::max(lowest_absent, 0.0), 1) +
         " J/mol of atoms above the plane";
}

std::string SolveReport::full() const {
  const auto line = [](const char* name, const std::string& value) {
    std::string text = name;
    text.resize(34, ' ');
    return text + value + "\n";
  };
  std::string text;
  text += line("status", std::string(to_string(status)));
  text += line("certificate", std::string(to_string(certificate)));
  text += line("reason", reason);
  text += line("element balance, relative", internal::scientific(balance_residual, 1));
  text +=
      line("plane residual, J/mol of atoms", internal::scientific(present_residual, 1));
  text +=
      line("lowest absent D, J/mol of atoms", internal::scientific(lowest_absent, 3));
  text += line("condition number", internal::scientific(condition_number, 1));
  if (!proof.empty()) {
    text += line("proof", proof);
    text += line("proven gap, J/mol of atoms", internal::scientific(proven_gap, 1));
  }
  const bool known = usable();
  text += line("amounts and potentials",
               !known ? "not computed" : (unique ? "unique" : "not unique"));
  text += line("certificate rounds", std::to_string(rounds));
  text += line("Newton steps", std::to_string(newton_steps));
  text += line("columns", std::to_string(columns));
  text += line("phase evaluations", std::to_string(evaluations));
  text += line("time, ms", internal::fixed(1e3 * seconds, 2));
  return text;
}

}  // namespace gibbsteel
