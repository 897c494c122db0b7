#include "long/summary.hpp"

#include <algorithm>

#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel::long_run {
namespace {

using internal::fixed;
using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kSlowest = 10;

/// Of a sorted list; p in [0, 1].
double quantile(const std::vector<double>& sorted, double p) {
  if (sorted.empty()) return 0.0;
  return sorted[static_cast<std::size_t>(p * static_cast<double>(sorted.size() - 1))];
}

std::string times(std::vector<double> seconds) {
  std::sort(seconds.begin(), seconds.end());
  const auto ms = [&](double p) { return fixed(1e3 * quantile(seconds, p), 1); };
  return "median " + ms(0.5) + ", 99 % " + ms(0.99) + ", most " + ms(1.0) + " ms";
}

std::string counts(const Outcome& outcome, const std::string& unit) {
  Rows rows{{unit, "solved", "converged", "certified", "flagged"}};
  Tally all;
  const auto row = [&](const std::string& name, const Tally& t) {
    rows.push_back({name, std::to_string(t.solved), std::to_string(t.converged),
                    std::to_string(t.certified),
                    std::to_string(t.solved - t.certified)});
  };
  for (std::size_t d = 0; d < kDraws; ++d) {
    const Tally& tally = outcome.by_draw[d];
    if (tally.solved == 0) continue;
    row(to_string(static_cast<Draw>(d)), tally);
    all.solved += tally.solved;
    all.converged += tally.converged;
    all.certified += tally.certified;
    for (const auto& [reason, count] : tally.flagged) all.flagged[reason] += count;
  }
  row("all", all);
  std::string text = internal::text_table(rows);
  for (const auto& [reason, count] : all.flagged)
    text += "  flagged " + std::to_string(count) + ": " + reason + "\n";
  return text;
}

std::string judges(const Outcome& outcome) {
  Rows rows{{"judge", "asked", "closest call J/mol"}};
  for (const auto& [name, judge] : outcome.judges)
    rows.push_back(
        {name, std::to_string(judge.asked), internal::significant(judge.closest, 3)});
  std::string text = internal::text_table(rows);
  for (const auto& [name, number] : outcome.proofs)
    text += "  proofs, " + name + ": " + std::to_string(number) + "\n";
  return text;
}

std::string list(const char* title, const std::vector<Finding>& findings,
                 const Describe& describe) {
  std::string text = std::string(title) + ": " + std::to_string(findings.size()) + "\n";
  for (const Finding& finding : findings)
    text +=
        "  " + std::to_string(finding.part) + "." + std::to_string(finding.member) +
        " " + finding.what +
        (finding.depth == 0.0 ? ""
                              : " (" + internal::significant(finding.depth, 3) + ")") +
        ": " + describe(finding.part, finding.member) + "\n";
  return text;
}

/// How far the counts of a solve are above the usual ones.
class Reason {
 public:
  explicit Reason(const std::vector<Solve>& solves)
      : newton_(median(solves, &Solve::newton_steps)),
        columns_(median(solves, &Solve::columns)),
        evaluations_(median(solves, &Solve::evaluations)) {}

  std::string of(const Solve& s) const {
    const auto times = [](int count, double usual) {
      return std::to_string(count) + " (" + fixed(count / usual, 1) + "x)";
    };
    return "rounds " + std::to_string(s.rounds) + ", Newton steps " +
           times(s.newton_steps, newton_) + ", columns " + times(s.columns, columns_) +
           ", evaluations " + times(s.evaluations, evaluations_) + ", " +
           std::to_string(s.elements) + " elements, " + std::to_string(s.phases) +
           " phases";
  }

 private:
  static double median(const std::vector<Solve>& solves, int Solve::*count) {
    std::vector<double> counts;
    for (const Solve& solve : solves) counts.push_back(solve.*count);
    std::sort(counts.begin(), counts.end());
    return std::max(1.0, quantile(counts, 0.5));
  }
  double newton_, columns_, evaluations_;
};

/// The slowest of each part, so that one hard line does not fill the list.
std::string slowest(std::vector<Solve> solves, const Describe& describe) {
  const Reason reason(solves);
  std::stable_sort(solves.begin(), solves.end(), [](const Solve& a, const Solve& b) {
    return a.part != b.part ? a.part < b.part : a.seconds > b.seconds;
  });
  solves.erase(
      std::unique(solves.begin(), solves.end(),
                  [](const Solve& a, const Solve& b) { return a.part == b.part; }),
      solves.end());
  std::stable_sort(solves.begin(), solves.end(), [](const Solve& a, const Solve& b) {
    return a.seconds > b.seconds;
  });
  const std::size_t count = std::min(kSlowest, solves.size());
  std::string text =
      "slowest, one of each group or line (in brackets: times the median count):\n";
  for (std::size_t k = 0; k < count; ++k) {
    const Solve& s = solves[k];
    text += "  " + fixed(1e3 * s.seconds, 1) + " ms  " + std::to_string(s.part) + "." +
            std::to_string(s.member) + "  " + describe(s.part, s.member) + "\n      " +
            reason.of(s) + "\n";
  }
  return text;
}

}  // namespace

std::string summary(const Outcome& outcome, const std::string& unit,
                    const Describe& describe) {
  std::vector<double> seconds;
  for (const Solve& solve : outcome.solves) seconds.push_back(solve.seconds);
  std::string text = counts(outcome, unit) + "\n" + judges(outcome) + "\n";
  text += "worst element balance " + internal::scientific(outcome.worst_balance, 1) +
          ", worst |G - mu.x| " + internal::scientific(outcome.worst_gap, 1) +
          " J/mol\n";
  if (outcome.phase_changes > 0)
    text +=
        "phase changes between neighbours: " + std::to_string(outcome.phase_changes) +
        "\n";
  text += "processor time of a cold solve: " + times(std::move(seconds)) + "\n";
  if (!outcome.proof_seconds.empty())
    text += "processor time with proof: " + times(outcome.proof_seconds) + "\n";
  text += "\n" + list("silent wrong", outcome.wrong, describe);
  text += list("flagged", outcome.flagged, describe);
  return text + "\n" + slowest(outcome.solves, describe);
}

}  // namespace gibbsteel::long_run
