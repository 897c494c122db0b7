#include "short_soak/particle_surface.hpp"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <limits>

#include "internal/annealed_carbides.hpp"
#include "short_soak/austenite_diffusion.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinite = std::numeric_limits<double>::infinity();
/// Speeds that are looked at, as parts of the slowest and of the fastest diffusion.
constexpr double kSlowest = 1e-7, kFastest = 1e7;

}  // namespace

double crowding(double share) {
  const double f = share;
  return (1.0 - 1.8 * std::cbrt(f) + f - 0.2 * f * f) / ((1.0 - f) * (1.0 - f));
}

ParticleSurface::ParticleSurface(const PhaseModel& cementite,
                                 const std::vector<double>& composition,
                                 const PhaseModel& austenite, Temperature t)
    : cementite_(cementite),
      austenite_(austenite),
      t_(t),
      at_(austenite),
      start_(composition) {
  for (std::size_t i = 0; i < start_.size(); ++i)
    (cementite_.constituents()[i].name == "C" ? carbon_sites_ : metal_sites_) =
        cementite_.sites(i);
  read_metals(composition);
  wanted_.resize(metals_.size());
}

void ParticleSurface::read_metals(const std::vector<double>& composition) {
  const auto& all = austenite_.constituents();
  const auto& of_cementite = cementite_.constituents();
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (all[i].sublattice == all[at_.carbon].sublattice) continue;
    Metal metal{i, 0, 0.0, 0.0};
    for (std::size_t k = 0; k < of_cementite.size(); ++k)
      if (of_cementite[k].name == all[i].name) {
        metal.cementite = k;
        metal.sites = composition[k];
      }
    if (all[i].name == "Fe")
      iron_ = metals_.size();
    else
      metal.diffusion = diffusion_of(all[i].name);
    metals_.push_back(metal);
  }
}

double ParticleSurface::diffusion_of(const std::string& element) {
  const auto found = diffusion_in_austenite(element, t_);
  if (!found)
    refuse_limit("state",
                 "holds " + element + ", whose diffusion in austenite is not known",
                 "leave it out of the steel, or take the short-soak limit");
  slowest_ = std::min(slowest_, *found);
  fastest_ = std::max(fastest_, *found);
  return *found;
}

Dissolving ParticleSurface::regime(const std::vector<double>& mean, double share) {
  mean_ = y_ = mean;
  tie_ = start_;
  crowding_ = crowding(share);
  potential_ = carbon_potential(austenite_, t_, mean_);
  const double none = excess(0.0);
  if (std::isnan(none)) return Dissolving::unknown;
  if (none >= 0.0) return Dissolving::not_at_all;
  const double all = excess(kInfinite);
  if (std::isnan(all)) return Dissolving::unknown;
  return all <= 0.0 ? Dissolving::at_once : Dissolving::slowly;
}

double ParticleSurface::speed(const std::vector<double>& mean, double share) {
  switch (regime(mean, share)) {
    case Dissolving::unknown:
      return kNaN;
    case Dissolving::not_at_all:
      return 0.0;
    case Dissolving::at_once:
      return kInfinite;
    case Dissolving::slowly:
      break;
  }
  const double low = std::log(kSlowest * slowest_);
  const double high = std::log(kFastest * fastest_);
  const auto of_log = [&](double log_speed) { return excess(std::exp(log_speed)); };
  const double at_low = of_log(low), at_high = of_log(high);
  if (std::isnan(at_low) || std::isnan(at_high)) return kNaN;
  if (at_low >= 0.0) return std::exp(low);
  if (at_high <= 0.0) return kInfinite;
  std::uintmax_t steps = 100;
  const auto [a, b] = boost::math::tools::toms748_solve(
      of_log, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(36),
      steps);
  return std::exp(0.5 * (a + b));
}

/// Logarithm of the sum of the site fractions of the cementite that would be in
/// equilibrium with the surface: 0 at the speed that is looked for, below 0 when
/// cementite cannot stand there.
double ParticleSurface::excess(double speed) {
  set_surface(speed);
  if (!match_carbon()) return kNaN;
  return std::log(sum_of_tie());
}

/// Eq. (B6) solved for the metals at the surface; iron is the rest.
void ParticleSurface::set_surface(double speed) {
  double iron = 1.0;
  for (std::size_t k = 0; k < metals_.size(); ++k) {
    if (k == iron_) continue;
    const Metal& m = metals_[k];
    const double away = m.diffusion / crowding_;
    double& y = y_[m.austenite];
    y = std::isinf(speed)
            ? m.sites
            : (speed * m.sites + away * mean_[m.austenite]) / (speed + away);
    iron -= y;
  }
  y_[metals_[iron_].austenite] = iron;
}

/// Carbon at the surface has the potential that it has on the mean.
bool ParticleSurface::match_carbon() {
  constexpr double kAgreed = 1e-7;  // [J/mol]
  const double free = mean_[at_.carbon] + mean_[at_.vacancy];
  for (int i = 0; i < 60; ++i) {
    const PhaseDerivatives d = austenite_.evaluate(t_, y_);
    const double sites = austenite_.sites(at_.carbon);
    const double miss = potential_ - (d.dy[at_.carbon] - d.dy[at_.vacancy]) / sites;
    if (std::abs(miss) < kAgreed) {
      set_potentials(d);
      return true;
    }
    const std::size_t n = y_.size();
    const double slope = (d.dy2[at_.carbon * n + at_.carbon] -
                          2.0 * d.dy2[at_.carbon * n + at_.vacancy] +
                          d.dy2[at_.vacancy * n + at_.vacancy]) /
                         sites;
    const double y = y_[at_.carbon] / free;
    const double step = miss / (slope * free * y * (1.0 - y));
    if (!std::isfinite(step)) return false;
    const double odds = y / (1.0 - y) * std::exp(std::clamp(step, -2.0, 2.0));
    y_[at_.carbon] = free * odds / (1.0 + odds);
    y_[at_.vacancy] = free - y_[at_.carbon];
  }
  return false;
}

/// Left side of Eq. (B5) for each metal that cementite takes.
/// @param d  of the austenite at the surface
void ParticleSurface::set_potentials(const PhaseDerivatives& d) {
  double base = d.value + d.dy[at_.vacancy];
  for (std::size_t i = 0; i < y_.size(); ++i)
    if (y_[i] > 0.0) base -= y_[i] * d.dy[i];
  for (std::size_t k = 0; k < metals_.size(); ++k) {
    if (metals_[k].sites <= 0.0) continue;
    const double metal =
        (base + d.dy[metals_[k].austenite]) / austenite_.sites(metals_[k].austenite);
    wanted_[k] = metal_sites_ * metal + carbon_sites_ * potential_;
  }
}

/// Site fractions of cementite with those potentials, repeated until they agree; their
/// sum is 1 only when it can be in equilibrium.
double ParticleSurface::sum_of_tie() {
  constexpr double kAgreed = 1e-11;
  const double rt = metal_sites_ * kGasConstant * t_.in_kelvin();
  double sum = kNaN;
  std::vector<double> next = tie_;
  for (int i = 0; i < 200; ++i) {
    const PhaseDerivatives d = cementite_.evaluate(t_, tie_);
    double base = d.value;
    for (const Metal& m : metals_)
      if (m.sites > 0.0) base -= tie_[m.cementite] * d.dy[m.cementite];
    sum = 0.0;
    double moved = 0.0;
    for (std::size_t k = 0; k < metals_.size(); ++k) {
      const Metal& m = metals_[k];
      if (m.sites <= 0.0) continue;
      next[m.cementite] =
          tie_[m.cementite] * std::exp((wanted_[k] - base - d.dy[m.cementite]) / rt);
      sum += next[m.cementite];
    }
    for (const Metal& m : metals_) {
      if (m.sites <= 0.0) continue;
      next[m.cementite] /= sum;
      moved = std::max(moved, std::abs(next[m.cementite] - tie_[m.cementite]));
    }
    tie_ = next;
    if (moved < kAgreed) break;
  }
  return sum;
}

}  // namespace gibbsteel::internal
