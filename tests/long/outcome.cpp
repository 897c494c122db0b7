#include "long/outcome.hpp"

#include <algorithm>
#include <ctime>
#include <iterator>

namespace gibbsteel::long_run {
namespace {

template <class T>
void append(std::vector<T>& to, std::vector<T>&& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()),
            std::make_move_iterator(from.end()));
}

void add_counts(std::map<std::string, long>& to,
                const std::map<std::string, long>& from) {
  for (const auto& [name, count] : from) to[name] += count;
}

}  // namespace

void Outcome::add(Outcome&& other) {
  for (std::size_t d = 0; d < kDraws; ++d) {
    by_draw[d].solved += other.by_draw[d].solved;
    by_draw[d].converged += other.by_draw[d].converged;
    by_draw[d].certified += other.by_draw[d].certified;
    add_counts(by_draw[d].flagged, other.by_draw[d].flagged);
  }
  append(solves, std::move(other.solves));
  append(flagged, std::move(other.flagged));
  append(wrong, std::move(other.wrong));
  append(proof_seconds, std::move(other.proof_seconds));
  worst_balance = std::max(worst_balance, other.worst_balance);
  worst_gap = std::max(worst_gap, other.worst_gap);
  for (const auto& [name, judge] : other.judges) {
    judges[name].asked += judge.asked;
    judges[name].closest = std::min(judges[name].closest, judge.closest);
  }
  add_counts(proofs, other.proofs);
  same_bits += other.same_bits;
  phase_changes += other.phase_changes;
}

double thread_seconds() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

bool count(const Equilibrium& result, std::size_t part, std::size_t member, Draw draw,
           std::size_t elements, double seconds, Outcome& outcome) {
  const SolveReport& report = result.report;
  outcome.solves.push_back({part, member, seconds, report.rounds, report.newton_steps,
                            report.columns, report.evaluations, elements,
                            result.present.size()});
  Tally& tally = outcome.by_draw[static_cast<std::size_t>(draw)];
  ++tally.solved;
  if (report.status == SolveStatus::converged) ++tally.converged;
  if (report.certificate != Certificate::none) ++tally.certified;
  if (report.usable()) return true;
  ++tally.flagged[report.reason];
  outcome.flagged.push_back({part, member, report.reason, 0.0});
  return false;
}

}  // namespace gibbsteel::long_run
