#include "minimizer/two_level_newton.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace gibbsteel::internal {
namespace {

constexpr double kLargestMove = 0.25;  ///< of a site fraction in one step
constexpr double kShrink = 0.1;        ///< an amount keeps at least this share
constexpr int kShrinkingStepsAllowed = 4;
constexpr double kAmountSlack = 1.2;      ///< moles of atoms a set may hold on the way
constexpr double kPlaneTolerance = 2e-8;  ///< [J/mol of atoms]
constexpr double kStepTolerance = 1e-6;   ///< relative; the next step is its square
constexpr double kTraceRatio = 2.5;    ///< balance off by more than this: Henry's law
constexpr double kDilute = 0.05;       ///< site fraction up to which it is applied
constexpr double kNegligible = 1e-30;  ///< site fraction that no test looks at

/// Scales the site fractions of element e in all sets. @return false if not dilute
bool scale_dilute(const Conditions& conditions, std::vector<PhaseSet>& sets, int e,
                  double ratio) {
  const auto each = [&](const auto& action) {
    for (PhaseSet& set : sets) {
      const auto& constituents = conditions.phases[set.phase].phase->constituents;
      for (std::size_t i = 0; i < set.y.size(); ++i)
        if (constituents[i].element == e) action(set.y[i]);
    }
  };
  bool dilute = true;
  each([&](double y) { dilute = dilute && y * std::max(1.0, ratio) < kDilute; });
  if (dilute) each([&](double& y) { y *= ratio; });
  return dilute;
}

/// Trace elements whose balance is far off are brought to balance by Henry's law: all
/// their site fractions by one factor, the chemical potential by R T times its
/// logarithm.
void balance_traces(const Conditions& conditions, std::vector<PhaseSet>& sets,
                    std::vector<double>& mu, std::vector<double>& held) {
  held.assign(conditions.elements(), 0.0);
  for (const PhaseSet& set : sets)
    add_atoms(*conditions.phases[set.phase].phase, set.y.data(), set.amount,
              held.data());
  bool scaled = false;
  for (std::size_t e = 0; e < held.size(); ++e) {
    const double ratio = conditions.overall[e] / held[e];
    if (!std::isfinite(ratio) || (ratio < kTraceRatio && ratio > 1.0 / kTraceRatio))
      continue;
    if (!scale_dilute(conditions, sets, static_cast<int>(e), ratio)) continue;
    mu[e] += conditions.rt * std::log(ratio);
    scaled = true;
  }
  for (PhaseSet& set : sets) {
    if (!scaled) break;
    const std::vector<double> no_change(set.y.size(), 0.0), y = set.y;
    update_fractions(*conditions.phases[set.phase].phase, y.data(), no_change.data(),
                     0.0, set.y.data());
  }
}

class Newton {
 public:
  Newton(Conditions& conditions, std::vector<PhaseSet>& sets, std::vector<double>& mu,
         NewtonMemory& memory)
      : conditions_(conditions),
        sets_(sets),
        mu_(mu),
        e_(conditions.elements()),
        memory_(memory),
        system_(memory.system),
        change_(memory.change) {}

  void evaluate() {
    balance_traces(conditions_, sets_, mu_, memory_.balance);
    system_.evaluate(conditions_, sets_);
  }
  /// The last step was so small that its square is no step at all.
  bool has_settled() const noexcept { return largest_change_ < kStepTolerance; }
  /// Only energies are looked at: the Hessians are those of the last step.
  bool is_converged(double balance_tolerance, Refinement& result);
  void residuals(Refinement& result) const;
  /// @return false when no finite step exists
  bool solve(Refinement& result);
  void take_step();

 private:
  Eigen::Index rows() const { return static_cast<Eigen::Index>(e_ + sets_.size()); }
  void fill_right_side();
  double largest_move();
  double amount_bound(std::size_t f) const;
  void remove_vanished();

  Conditions& conditions_;
  std::vector<PhaseSet>& sets_;
  std::vector<double>& mu_;
  std::size_t e_;
  NewtonMemory& memory_;
  TwoLevelSystem& system_;
  Eigen::VectorXd& change_;
  double largest_change_ = 1.0;
};

void Newton::residuals(Refinement& result) const {
  const auto points = system_.points();
  result.balance = result.plane = 0.0;
  for (std::size_t e = 0; e < e_; ++e) {
    double sum = 0.0;
    for (std::size_t f = 0; f < sets_.size(); ++f)
      sum += sets_[f].amount * points[f].formula[e];
    result.balance =
        std::max(result.balance, std::abs(sum / conditions_.overall[e] - 1.0));
  }
  result.unstable.clear();
  for (std::size_t f = 0; f < points.size(); ++f)
    if (points[f].unstable) result.unstable.push_back(f);
  for (const SetPoint& p : points)
    result.plane = std::max(result.plane, std::abs(p.d(mu_)) / p.atoms);
}

bool Newton::is_converged(double balance_tolerance, Refinement& result) {
  system_.evaluate_energies(conditions_, sets_);
  residuals(result);
  result.converged =
      result.balance < balance_tolerance && result.plane < kPlaneTolerance;
  return result.converged;
}

void Newton::fill_right_side() {
  system_.excess_over(conditions_, sets_, mu_);
  std::vector<double>& balance = memory_.balance;
  balance = conditions_.overall;
  for (std::size_t f = 0; f < sets_.size(); ++f) {
    const SetPoint& p = system_.points()[f];
    p.step.add_projected(sets_[f].amount, p.excess.data(), balance.data());
    for (std::size_t e = 0; e < e_; ++e) balance[e] -= sets_[f].amount * p.formula[e];
  }
  Eigen::VectorXd& right = memory_.right;
  right.resize(rows());
  for (std::size_t a = 0; a < e_; ++a) right[static_cast<Eigen::Index>(a)] = balance[a];
  for (std::size_t f = 0; f < sets_.size(); ++f)
    right[static_cast<Eigen::Index>(e_ + f)] = system_.points()[f].d(mu_);
}

bool Newton::solve(Refinement& result) {
  if (!system_.factor(conditions_, sets_)) return false;
  result.unique = system_.unique();
  fill_right_side();
  if (!memory_.right.allFinite()) return false;
  system_.solve(memory_.right, change_);
  return change_.allFinite();
}

/// Share of the step that keeps an amount below what the overall composition can feed.
double Newton::amount_bound(std::size_t f) const {
  const double n = sets_[f].amount;
  const double dn = change_[static_cast<Eigen::Index>(e_ + f)];
  double most = std::max(1.1 * n, kAmountSlack / system_.points()[f].atoms);
  return n + dn > most ? (most - n) / dn : 1.0;
}

/// Changes of all site fractions. @return the largest one
double Newton::largest_move() {
  memory_.dy.resize(sets_.size() * kMaxConstituents);
  double largest = 0.0;
  largest_change_ = 0.0;
  for (std::size_t e = 0; e < e_; ++e)
    largest_change_ =
        std::max(largest_change_,
                 std::abs(change_[static_cast<Eigen::Index>(e)]) / conditions_.rt);
  for (std::size_t f = 0; f < sets_.size(); ++f) {
    const SetPoint& p = system_.points()[f];
    double* dy = memory_.dy.data() + f * kMaxConstituents;
    p.step.response_to(change_.data(), p.excess.data(), dy);
    for (std::size_t i = 0; i < p.gradient.size(); ++i) {
      largest = std::max(largest, std::abs(dy[i]));
      if (sets_[f].y[i] > kNegligible)
        largest_change_ = std::max(largest_change_, std::abs(dy[i]) / sets_[f].y[i]);
    }
  }
  return largest;
}

void Newton::take_step() {
  const double largest = largest_move();
  double fraction = largest > kLargestMove ? kLargestMove / largest : 1.0;
  for (std::size_t f = 0; f < sets_.size(); ++f)
    fraction = std::min(fraction, amount_bound(f));
  for (std::size_t e = 0; e < e_; ++e)
    mu_[e] += fraction * change_[static_cast<Eigen::Index>(e)];
  for (std::size_t f = 0; f < sets_.size(); ++f) {
    PhaseSet& set = sets_[f];
    std::array<double, kMaxConstituents> moved;
    update_fractions(*conditions_.phases[set.phase].phase, set.y.data(),
                     memory_.dy.data() + f * kMaxConstituents, fraction, moved.data());
    std::copy_n(moved.begin(), set.y.size(), set.y.begin());
    const double dn = fraction * change_[static_cast<Eigen::Index>(e_ + f)];
    const bool shrinks = set.amount + dn < kShrink * set.amount;
    if (shrinks && set.shrinking_steps == 0) {
      set.vanishing_share = -set.amount / dn;
      set.amount_before = set.amount;
    }
    set.amount = shrinks ? kShrink * set.amount : set.amount + dn;
    set.shrinking_steps = shrinks ? set.shrinking_steps + 1 : 0;
  }
  remove_vanished();
}

/// Removes one set that keeps shrinking: the one that would have vanished first. The
/// others get their amounts back, for without it they may stay.
void Newton::remove_vanished() {
  std::size_t first = sets_.size();
  for (std::size_t f = 0; f < sets_.size() && sets_.size() > 1; ++f)
    if (sets_[f].shrinking_steps >= kShrinkingStepsAllowed &&
        (first == sets_.size() ||
         sets_[f].vanishing_share < sets_[first].vanishing_share))
      first = f;
  const std::size_t before = sets_.size();
  if (first < before) {
    for (PhaseSet& set : sets_) {
      if (set.shrinking_steps == 0) continue;
      set.amount = set.amount_before;
      set.shrinking_steps = 0;
    }
    sets_.erase(sets_.begin() + static_cast<std::ptrdiff_t>(first));
  }
  merge_close_sets(sets_);
  if (sets_.size() != before) largest_change_ = 1.0;
}

}  // namespace

Refinement refine(Conditions& conditions, int most_steps, double balance_tolerance,
                  std::vector<PhaseSet>& sets, std::vector<double>& mu,
                  NewtonMemory& memory) {
  Refinement result;
  Newton newton(conditions, sets, mu, memory);
  for (; result.steps < most_steps; ++result.steps) {
    if (newton.has_settled() && newton.is_converged(balance_tolerance, result))
      return result;
    newton.evaluate();
    newton.residuals(result);
    if (!newton.solve(result)) return result;
    newton.take_step();
  }
  return result;
}

Refinement refine(Conditions& conditions, int most_steps, double balance_tolerance,
                  std::vector<PhaseSet>& sets, std::vector<double>& mu) {
  NewtonMemory memory;
  return refine(conditions, most_steps, balance_tolerance, sets, mu, memory);
}

double last_step(Conditions& conditions, double balance_tolerance,
                 std::vector<PhaseSet>& sets, std::vector<double>& mu,
                 Refinement& refined, NewtonMemory& memory) {
  auto next_sets = sets;
  auto next_mu = mu;
  Newton newton(conditions, next_sets, next_mu, memory);
  Refinement next = refined;
  newton.evaluate();
  if (!newton.solve(next)) return std::numeric_limits<double>::infinity();
  const double condition = memory.system.condition_number();
  if (!next.unique) return condition;
  newton.take_step();
  if (next_sets.size() == sets.size() && newton.has_settled() &&
      newton.is_converged(balance_tolerance, next) && next.balance <= refined.balance) {
    sets = std::move(next_sets);
    mu = std::move(next_mu);
    refined = next;
  }
  return condition;
}

double condition_number(Conditions& conditions, const std::vector<PhaseSet>& sets,
                        NewtonMemory& memory) {
  memory.system.evaluate(conditions, sets);
  return memory.system.condition_number(conditions, sets);
}

double total_energy(const Conditions& conditions, const std::vector<PhaseSet>& sets) {
  double sum = 0.0;
  for (const PhaseSet& set : sets) {
    const Candidate& candidate = conditions.phases[set.phase];
    sum += set.amount * gibbs_energy(*candidate.phase, candidate.at, set.y.data());
  }
  return sum;
}

}  // namespace gibbsteel::internal
