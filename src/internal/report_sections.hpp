#pragma once
/// Sections that the reports of a State and of a Sweep share.

#include "gibbsteel/report.hpp"

namespace gibbsteel::internal {

/// The analysis as given, what enters the calculation, what is left out or bound.
ReportSection certificate_section(const State& state);

/// Library version, parameter file and hash.
ReportSection origin_section(const State& state);

/// How well the numbers are solved: residuals, condition number, certificate.
/// @param warned  whether the page has warnings
ReportSection solution_section(const State& state, bool warned);
/// The same for the worst soak of a sweep.
ReportSection solution_section(const Sweep& sweep);

/// What a quench gives: estimates with bands, their equations, and why one is missing.
ReportSection estimates_section(const HardeningEstimates& estimates);
/// Of several soaks of one steel, without the table. @pre not empty
ReportSection estimates_heading(const std::vector<HardeningEstimates>& estimates);

/// What martensite start, retained austenite and hardness of soaks remark, but for
/// ranges, which warnings tell: once each with the temperatures that it holds for.
std::vector<std::string> estimate_remark_lines(
    const std::vector<const State*>& states,
    const std::vector<HardeningEstimates>& estimates, TemperatureUnit unit);

/// What estimates of soaks warn of beside the states themselves, one line per code with
/// the temperatures that it holds for; where numbers differ, the text of the first.
std::vector<std::string> estimate_warning_lines(
    const std::vector<const State*>& states,
    const std::vector<HardeningEstimates>& estimates, TemperatureUnit unit);

/// "phases not allowed to form: graphite"
std::string suppressed_sentence(const State& state);

}  // namespace gibbsteel::internal
