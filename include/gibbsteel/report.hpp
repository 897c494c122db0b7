#pragma once
/// One page that a practitioner can file with a heat: certificate as given, what was
/// not modelled and what was bound, temperature and basis, carbides, matrix, estimates
/// with bands, how the numbers were found, file edition, warnings, cautions. Numbers
/// are text here, with the digits of every other printed result.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/hardening.hpp"
#include "gibbsteel/measured_carbide.hpp"
#include "gibbsteel/sweep.hpp"

namespace gibbsteel {

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

/// With the estimates of a quench, see hardening(); no such section where the state is
/// not usable. The state of a short soak does not hold the band of its matrix: the page
/// says so.
/// @throws InputError as hardening()
Report report(const State& state, const HardeningOptions& quench = {});

/// The page of its state, with the carbide as counted or computed, and the matrix with
/// its band beside the long hold. @throws InputError as hardening()
Report report(const ShortSoak& soak, const HardeningOptions& quench = {});

/// At most 13 soaks, evenly picked, are tabulated, and the page says so; estimates are
/// those of the picked ones. A soak that is not usable or outside validity is named in
/// the flag, picked or not.
/// @throws InputError as hardening()
Report report(const Sweep& sweep, const HardeningOptions& quench = {});

/// "punch heat 7 at 1120 C (2048 F), long-hold limit"
std::string result_title(const State& state);

/// Empty; or "NOT USABLE: ...", or "OUTSIDE VALIDITY of the parameter file: ..." with
/// what is outside (warnings 301 and 302).
std::string result_flag(const State& state);

/// How many soaks are not usable or outside validity, and at which temperatures; empty
/// when none.
std::string result_flag(const Sweep& sweep);

/// What a table or page needs to be traced to its data, as (label, value): library
/// version, parameter file with edition, its hash, volume basis, caution.
std::vector<std::pair<std::string, std::string>> provenance(const State& state);
/// The same of a result of long holds that keeps no state, from the title and the hash
/// of its parameter set; without a basis where it has no volumes.
std::vector<std::pair<std::string, std::string>> provenance(
    const std::string& parameters, const std::string& parameters_hash,
    std::optional<VolumeBasis> basis = std::nullopt);
/// The same of hardening estimates, without a basis.
std::vector<std::pair<std::string, std::string>> provenance(
    const HardeningEstimates& estimates);

}  // namespace gibbsteel
