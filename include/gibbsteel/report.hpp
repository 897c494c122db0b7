#pragma once
/// One page that a practitioner can file with a heat: certificate as given, what was
/// not modelled and what was bound, temperature and basis, carbides, matrix, estimates
/// with bands, how the numbers were found, file edition, warnings, cautions. Numbers
/// are text here, with the digits of every other printed result.

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/sweep.hpp"

namespace gibbsteel {

/// An estimate with its band, as a line of a report.
struct ReportEstimate {
  std::string label;   ///< "martensite start"
  double value = 0.0;  ///< NaN prints as n/a, also the bounds
  double low = 0.0;
  double high = 0.0;
  std::string unit;    ///< "C"; empty for a pure number
  std::string source;  ///< where the equation comes from
  int digits = 0;      ///< places behind the point
};

/// Sentences, then a table.
struct ReportSection {
  std::string title;
  std::vector<std::string> lines;
  /// The first row holds the column headings, the first column the row labels; empty
  /// when there is no table. A row may be shorter than the headings.
  std::vector<std::vector<std::string>> table;
  bool operator==(const ReportSection&) const = default;
};

struct Report {
  std::string title;
  /// Empty when every result is usable and inside the validity of the parameter file;
  /// otherwise says which is not, and why.
  std::string flag;
  std::vector<ReportSection> sections;
  std::vector<std::string> warnings;  ///< "[code] text", for a sweep with temperatures
  std::string caution;

  std::string brief() const;  ///< one line
  std::string text() const;   ///< the page, 78 columns where the tables allow it
  bool operator==(const Report&) const = default;
};

/// The place of estimates that follow from the matrix; no section when empty.
Report report(const State& state, std::span<const ReportEstimate> estimates = {});

/// At most 13 soaks, evenly picked, are tabulated, and the page says so. A soak that is
/// not usable or outside validity is named in the flag, picked or not.
Report report(const Sweep& sweep);

ReportSection estimates_section(std::span<const ReportEstimate> estimates);

/// Empty; or "NOT USABLE: ...", or "OUTSIDE VALIDITY of the parameter file: ..." with
/// what is outside (warnings 301 and 302).
std::string result_flag(const State& state);

/// How many soaks are not usable or outside validity, and at which temperatures; empty
/// when none.
std::string result_flag(const Sweep& sweep);

/// What a table or page needs to be traced to its data, as (label, value): library
/// version, parameter file with edition, its hash, volume basis, caution.
std::vector<std::pair<std::string, std::string>> provenance(const State& state);

}  // namespace gibbsteel
