#include "internal/cementite_stop.hpp"

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "gibbsteel/named_values.hpp"
#include "internal/annealed_carbides.hpp"

namespace gibbsteel::internal {
namespace {

/// Carbon on the interstitial sites of austenite that Eq. (B3) is looked for in. Beyond
/// one in three the austenite would be richer in carbon than the cementite.
constexpr double kLeast = 1e-9, kMost = 1.0 / 3.0;

double potential_of(const PhaseModel& model, const PhaseDerivatives& d,
                    const Interstitials& at) {
  return (d.dy[at.carbon] - d.dy[at.vacancy]) / model.sites(at.carbon);
}

/// Both phases with the same metals; carbon varies in the austenite.
class SameMetals {
 public:
  SameMetals(const PhaseModel& cementite, const std::vector<double>& y,
             const PhaseModel& austenite, Temperature t)
      : austenite_(austenite),
        at_(austenite),
        t_(t),
        energy_(cementite.evaluate(t, y).value),
        y_(austenite.constituents().size(), 0.0) {
    NamedValues metals;
    for (std::size_t i = 0; i < y.size(); ++i) {
      const Constituent& c = cementite.constituents()[i];
      const bool carbon = c.name == "C";
      (carbon ? carbon_sites_ : metal_sites_) = cementite.sites(i);
      if (!carbon && c.element >= 0) metals.set(c.name, y[i]);
    }
    for (std::size_t i = 0; i < y_.size(); ++i) {
      const Constituent& c = austenite.constituents()[i];
      if (c.sublattice == austenite.constituents()[at_.carbon].sublattice) continue;
      y_[i] = metals.contains(c.name) ? metals[c.name] : 0.0;
      austenite_sites_ = austenite.sites(i);
    }
  }

  /// Energy of the cementite above the austenite that would come of it [J/mol].
  double excess(double carbon) {
    const PhaseDerivatives d = at(carbon);
    const double mu = potential_of(austenite_, d, at_);
    const double interstitial = austenite_.sites(at_.carbon) * carbon;
    const double metals = (d.value - interstitial * mu) / austenite_sites_;
    return energy_ - metal_sites_ * metals - carbon_sites_ * mu;
  }

  double potential(double carbon) { return potential_of(austenite_, at(carbon), at_); }

 private:
  PhaseDerivatives at(double carbon) {
    y_[at_.carbon] = carbon;
    y_[at_.vacancy] = 1.0 - carbon;
    return austenite_.evaluate(t_, y_);
  }

  const PhaseModel& austenite_;
  Interstitials at_;
  Temperature t_;
  double energy_;
  double metal_sites_ = 0.0, carbon_sites_ = 0.0, austenite_sites_ = 1.0;
  std::vector<double> y_;
};

}  // namespace

Interstitials::Interstitials(const PhaseModel& model) {
  const auto& all = model.constituents();
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].name == "C") carbon = i;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (all[i].element < 0 && all[i].sublattice == all[carbon].sublattice) vacancy = i;
}

double carbon_potential(const PhaseModel& model, Temperature t,
                        const std::vector<double>& y) {
  return potential_of(model, model.evaluate(t, y), Interstitials(model));
}

std::optional<double> cementite_stop(const PhaseModel& cementite,
                                     const std::vector<double>& y,
                                     const PhaseModel& austenite, Temperature t) {
  SameMetals both(cementite, y, austenite, t);
  const auto excess = [&](double carbon) { return both.excess(carbon); };
  // It falls all the way: its slope with mu_C is (3 y_C - 1) by Gibbs and Duhem.
  const double most = excess(kMost), least = excess(kLeast);
  if (!std::isfinite(most) || !std::isfinite(least))
    refuse_limit("parameters", "give M3C or austenite no energy at these compositions",
                 "check the terms of the parameter file");
  if (most > 0.0) return std::nullopt;
  if (!(least > 0.0)) return both.potential(kLeast);
  std::uintmax_t steps = 100;
  const auto [low, high] = boost::math::tools::toms748_solve(
      excess, kLeast, kMost, least, most, boost::math::tools::eps_tolerance<double>(48),
      steps);
  return both.potential(0.5 * (low + high));
}

}  // namespace gibbsteel::internal
