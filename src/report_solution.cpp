/// How well a result is solved, as a section of a report; see report.hpp.

#include <algorithm>
#include <cmath>

#include "internal/number_format.hpp"
#include "internal/report_sections.hpp"
#include "internal/result_text.hpp"

namespace gibbsteel::internal {
namespace {

constexpr const char* kTitle = "How well solved";

// Residuals below these say nothing more about a result, and are printed as these.
constexpr double kBalanceFloor = 1e-12;  ///< relative
constexpr double kPlaneFloor = 1e-8;     ///< [J/mol of atoms]

/// "1e-12": the value, rounded up to a power of ten, or the floor.
std::string at_most(double value, double floor) {
  if (std::isnan(value)) return "n/a";
  return scientific(std::max(floor, std::pow(10.0, std::ceil(std::log10(value)))), 0);
}

std::string balance_sentence(double residual) {
  return "element balance: closed to " + at_most(residual, kBalanceFloor) +
         " of each element";
}

std::string plane_sentence(double residual) {
  return "phases present: driving force within " + at_most(residual, kPlaneFloor) +
         " J/mol of atoms of zero, Eq. (E2)";
}

std::string absent_sentence(double lowest) {
  if (std::isnan(lowest)) return "phases absent: none was a candidate";
  return "phases absent: lowest lies " + fixed(std::max(lowest, 0.0), 1) +
         " J/mol of atoms above the plane of the phases present";
}

std::string condition_sentence(const SolveReport& report) {
  const std::string text =
      "condition number of the scaled equilibrium matrix, Eq. "
      "(N4): ";
  if (std::isnan(report.condition_number)) return text + "n/a";
  if (!std::isfinite(report.condition_number))
    return text + "infinite: amounts or potentials are not fixed, one answer is shown";
  const double kappa = report.condition_number;
  return text + (kappa < 1e4 ? fixed(kappa, 1) : scientific(kappa, 1)) +
         "; rounding costs amounts and potentials up to " +
         fixed(std::ceil(report.digits_lost()), 0) + " of 16 digits";
}

std::string certificate_sentence(const SolveReport& report) {
  const std::string text = "certificate: " + std::string(to_string(report.certificate));
  if (std::isnan(report.proven_gap)) return text + "; tested, not proven";
  return text + "; the Gibbs energy is at most " + significant(report.proven_gap, 2) +
         " J/mol of atoms above the lowest possible";
}

/// Fills the worst of two numbers; one that is not known gives way.
void take_worst(double& worst, double value, bool larger) {
  if (std::isnan(worst) || (larger ? value > worst : value < worst)) worst = value;
}

/// "certificates: 3 soaks many starts, 2 soaks proof"
std::string certificates_sentence(const Sweep& sweep) {
  std::string text;
  for (const Certificate each :
       {Certificate::none, Certificate::many_starts, Certificate::followed,
        Certificate::proof, Certificate::covered}) {
    const auto count = std::count_if(
        sweep.states.begin(), sweep.states.end(),
        [&](const State& s) { return s.solve_report.certificate == each; });
    if (count > 0)
      text += (text.empty() ? "certificates: " : ", ") + std::to_string(count) +
              (count == 1 ? " soak " : " soaks ") + std::string(to_string(each));
  }
  return text;
}

}  // namespace

ReportSection solution_section(const State& state, bool warned) {
  ReportSection section{kTitle, {solution_sentence(state)}, {}};
  const SolveReport& report = state.solve_report;
  if (state.solve_report.by_mass_balance())
    section.lines.push_back("no equilibrium was solved: no residuals, no certificate");
  else
    section.lines.insert(
        section.lines.end(),
        {balance_sentence(report.balance_residual),
         plane_sentence(report.present_residual), absent_sentence(report.lowest_absent),
         condition_sentence(report), certificate_sentence(report)});
  section.lines.push_back(last_digits_sentence(warned));
  return section;
}

ReportSection solution_section(const Sweep& sweep) {
  SolveReport worst;
  for (const State& state : sweep.states) {
    if (!state.usable()) continue;
    const SolveReport& report = state.solve_report;
    take_worst(worst.balance_residual, report.balance_residual, true);
    take_worst(worst.present_residual, report.present_residual, true);
    take_worst(worst.lowest_absent, report.lowest_absent, false);
    take_worst(worst.condition_number, report.condition_number, true);
  }
  return {kTitle,
          {"the worst of all usable soaks:", balance_sentence(worst.balance_residual),
           plane_sentence(worst.present_residual), absent_sentence(worst.lowest_absent),
           condition_sentence(worst), certificates_sentence(sweep),
           last_digits_sentence(!sweep.warnings().empty())},
          {}};
}

}  // namespace gibbsteel::internal
