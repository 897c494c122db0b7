#include "gibbsteel/linearization.hpp"

#include <array>
#include <cmath>
#include <limits>

#include "internal/error_codes.hpp"
#include "minimizer/phase_minimum.hpp"
#include "minimizer/two_level_system.hpp"

namespace gibbsteel {
namespace {

constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

/// False for an equilibrium that cannot have come from this system.
bool fits(const PhaseSystem& system, const Equilibrium& result,
          std::span<const double> mole_fractions) {
  const std::size_t elements = system.elements().size();
  if (!result.report.usable() || mole_fractions.size() != elements ||
      result.chemical_potential.size() != elements)
    return false;
  for (const auto* list : {&result.present, &result.absent})
    for (const PhasePoint& point : *list)
      if (point.phase >= system.phases().size() ||
          point.y.size() != system.phases()[point.phase].constituents().size())
        return false;
  return true;
}

/// Moves a minimum of D per mole of atoms to full precision, on which Eq. (S3) rests:
/// its slope feels an error of y in first order, D itself only in second. Newton steps
/// at potentials raised by D, as in the certificate.
void sharpen(const internal::Candidate& candidate, double rt,
             const std::vector<double>& mu, internal::TangentStep& step,
             std::vector<double>& y) {
  constexpr int kMostSteps = 6;
  constexpr double kExact = 1e-10, kNear = 0.1;  // of a site fraction, relative
  std::array<double, internal::kMaxConstituents * internal::kMaxConstituents> hessian;
  const internal::CompiledPhase& phase = *candidate.phase;
  std::vector<double> gradient(y.size()), weights(y.size()), dy(y.size()), moved(y);
  for (int k = 0; k < kMostSteps; ++k) {
    double d = internal::gibbs_energy(phase, candidate.at, y.data(), gradient.data(),
                                      hessian.data());
    if (step.factor(phase, rt, y.data(), hessian.data()) > 0.0) return;
    internal::plane_weights(phase, mu, weights.data());
    for (std::size_t i = 0; i < y.size(); ++i) d -= weights[i] * y[i];
    d /= internal::atoms(phase, y.data());
    for (std::size_t i = 0; i < y.size(); ++i) {
      const double atoms = phase.constituents[i].element < 0 ? 0.0 : phase.sites[i];
      gradient[i] -= weights[i] + d * atoms;
    }
    step.newton_direction(gradient.data(), dy.data());
    double largest = 0.0;
    for (std::size_t i = 0; i < y.size(); ++i)
      largest = std::max(largest, std::abs(dy[i]) / y[i]);
    if (!(largest < kNear)) return;  // another minimum might be reached
    internal::update_fractions(phase, y.data(), dy.data(), 1.0, moved.data());
    y.swap(moved);
    if (largest < kExact) return;
  }
}

}  // namespace

struct Linearization::Parts {
  internal::Conditions conditions;
  std::vector<internal::PhaseSet> sets;
  internal::TwoLevelSystem system;
  std::vector<PhasePoint> absent;
  std::vector<double> mu;
  bool unique = false;

  std::size_t elements() const noexcept { return conditions.elements(); }
  Eigen::VectorXd right_side(const Disturbance& disturbance) const;
  void check(const Disturbance& disturbance) const;
  EquilibriumSlope none() const;
  void fill_present(const Disturbance& disturbance, const Eigen::VectorXd& change,
                    EquilibriumSlope& slope) const;
  void fill_absent(const Disturbance& disturbance, EquilibriumSlope& slope) const;
};

/// Right side of Eq. (S1).
Eigen::VectorXd Linearization::Parts::right_side(const Disturbance& d) const {
  std::vector<double> balance(elements(), 0.0);
  if (!d.overall.empty()) balance = d.overall;
  Eigen::VectorXd right(static_cast<Eigen::Index>(elements() + sets.size()));
  for (std::size_t f = 0; f < sets.size(); ++f) {
    const bool given = !d.present.empty();
    if (given && !d.present[f].dy.empty())
      system.points()[f].step.add_projected(sets[f].amount, d.present[f].dy.data(),
                                            balance.data());
    right[static_cast<Eigen::Index>(elements() + f)] = given ? d.present[f].value : 0.0;
  }
  for (std::size_t e = 0; e < elements(); ++e)
    right[static_cast<Eigen::Index>(e)] = balance[e];
  return right;
}

EquilibriumSlope Linearization::Parts::none() const {
  EquilibriumSlope slope;
  slope.chemical_potential.assign(elements(), kNone);
  for (const auto& set : sets)
    slope.present.push_back({kNone, std::vector<double>(set.y.size(), kNone)});
  slope.absent_driving_force.assign(absent.size(), kNone);
  slope.gibbs_energy = kNone;
  return slope;
}

/// Eq. (S2), and the part of Eq. (S4) that comes from the phases.
void Linearization::Parts::fill_present(const Disturbance& d,
                                        const Eigen::VectorXd& change,
                                        EquilibriumSlope& slope) const {
  for (std::size_t f = 0; f < sets.size(); ++f) {
    auto& point = slope.present.emplace_back();
    const std::size_t n = sets[f].y.size();
    point.amount = change[static_cast<Eigen::Index>(elements() + f)];
    point.y.resize(n);
    const std::vector<double> zero(n, 0.0);
    const bool given = !d.present.empty() && !d.present[f].dy.empty();
    system.points()[f].step.response_to(slope.chemical_potential.data(),
                                        given ? d.present[f].dy.data() : zero.data(),
                                        point.y.data());
    if (!d.present.empty()) slope.gibbs_energy += sets[f].amount * d.present[f].value;
  }
}

/// Eq. (S3), sign reversed.
void Linearization::Parts::fill_absent(const Disturbance& d,
                                       EquilibriumSlope& slope) const {
  std::vector<double> weights;
  for (std::size_t k = 0; k < absent.size(); ++k) {
    const auto& phase = *conditions.phases[absent[k].phase].phase;
    const auto& y = absent[k].y;
    weights.resize(y.size());
    internal::plane_weights(phase, slope.chemical_potential, weights.data());
    double force = d.absent.empty() ? 0.0 : -d.absent[k].value;
    for (std::size_t i = 0; i < y.size(); ++i) force += weights[i] * y[i];
    slope.absent_driving_force.push_back(force / internal::atoms(phase, y.data()));
  }
}

Linearization::Linearization(const PhaseSystem& system, const Equilibrium& result,
                             std::span<const double> mole_fractions)
    : parts_(std::make_unique<Parts>()) {
  if (!fits(system, result, mole_fractions))
    throw InputError({{std::string(codes::kNotLinearizable), "result",
                       "is not usable, or was not made with this system",
                       "give a usable equilibrium and the system it was made with"}});
  auto& p = *parts_;
  p.conditions = internal::conditions_of(system, result.temperature, mole_fractions);
  for (const PhasePoint& point : result.present) {
    auto& set = p.sets.emplace_back();
    set.phase = point.phase;
    set.amount = point.amount;
    set.y = point.y;
  }
  p.absent = result.absent;
  p.mu = result.chemical_potential;
  internal::TangentStep step(internal::kMaxConstituents, p.elements());
  for (PhasePoint& point : p.absent)
    sharpen(p.conditions.phases[point.phase], p.conditions.rt, p.mu, step, point.y);
  p.system.evaluate(p.conditions, p.sets);
  p.unique = p.system.factor(p.conditions, p.sets) && p.system.unique() &&
             result.report.unique;
}

Linearization::~Linearization() = default;
Linearization::Linearization(Linearization&&) noexcept = default;
Linearization& Linearization::operator=(Linearization&&) noexcept = default;

bool Linearization::unique() const noexcept { return parts_->unique; }

const std::vector<PhasePoint>& Linearization::absent() const noexcept {
  return parts_->absent;
}

/// A list of a disturbance is empty, or as long as what it disturbs.
void Linearization::Parts::check(const Disturbance& d) const {
  const auto fits = [](const std::vector<PhaseDisturbance>& list, std::size_t size) {
    return list.empty() || list.size() == size;
  };
  bool good = (d.overall.empty() || d.overall.size() == elements()) &&
              fits(d.present, sets.size()) && fits(d.absent, absent.size());
  for (std::size_t f = 0; good && f < d.present.size(); ++f)
    good = d.present[f].dy.empty() || d.present[f].dy.size() == sets[f].y.size();
  if (!good)
    throw InputError({{std::string(codes::kNotLinearizable), "disturbance",
                       "has a list of another length than the equilibrium",
                       "give one entry per element, phase and constituent, in their "
                       "order, or leave the list empty"}});
}

EquilibriumSlope Linearization::slope(const Disturbance& disturbance) const {
  const auto& p = *parts_;
  p.check(disturbance);
  if (!p.unique) return p.none();
  Eigen::VectorXd right = p.right_side(disturbance), change;
  p.system.solve(right, change);
  EquilibriumSlope slope;
  for (std::size_t e = 0; e < p.elements(); ++e) {
    slope.chemical_potential.push_back(change[static_cast<Eigen::Index>(e)]);
    if (!disturbance.overall.empty())
      slope.gibbs_energy += p.mu[e] * disturbance.overall[e];
  }
  p.fill_present(disturbance, change, slope);
  p.fill_absent(disturbance, slope);
  return slope;
}

EquilibriumSlope Linearization::per_kelvin() const {
  const auto& p = *parts_;
  Disturbance disturbance;
  const auto add = [&](std::size_t phase, const std::vector<double>& y,
                       std::vector<PhaseDisturbance>& list) {
    const auto& candidate = p.conditions.phases[phase];
    auto& d = list.emplace_back();
    d.dy.resize(y.size());
    d.value = internal::temperature_slopes(*candidate.phase, candidate.at, y.data(),
                                           d.dy.data())
                  .dt;
  };
  for (const auto& set : p.sets) add(set.phase, set.y, disturbance.present);
  for (const auto& point : p.absent) add(point.phase, point.y, disturbance.absent);
  return slope(disturbance);
}

EquilibriumSlope Linearization::along(std::span<const double> overall) const {
  Disturbance disturbance;
  disturbance.overall.assign(overall.begin(), overall.end());
  return slope(disturbance);
}

}  // namespace gibbsteel
