#include "gibbsteel/short_soak_limit.hpp"

#include <algorithm>
#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <cstdint>

#include "gibbsteel/errors.hpp"
#include "internal/annealed_carbides.hpp"
#include "internal/carbide_balance.hpp"
#include "internal/cementite_stop.hpp"
#include "internal/error_codes.hpp"
#include "internal/measured_checks.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/shared_hash.hpp"

namespace gibbsteel {
namespace {

using internal::CarbideShare;
using internal::is_cementite;
using internal::MatrixVolume;
using internal::refuse_limit;

/// How much cementite is left, the other carbides as annealed.
class Dissolution {
 public:
  Dissolution(const State& state, const Steel& steel,
              const std::vector<CarbideShare>& annealed)
      : set_(*steel.parameters()),
        temperature_(state.temperature),
        matrix_(state.matrix_phases().front()),
        volume_(steel, matrix_),
        steel_atoms_(state.analysis.mole_fractions(set_)),
        shares_(annealed),
        left_(static_cast<std::size_t>(
            std::find_if(shares_.begin(), shares_.end(), is_cementite) -
            shares_.begin())) {
    const Occurrence& o = shares_[left_].occurrences.front();
    const PhaseModel model(set_, *set_.find_phase(o.phase), steel.elements());
    std::vector<double> y;
    for (const Constituent& c : model.constituents())
      y.push_back(o.site_fractions[c.sublattice].fractions[c.name]);
    stop_ = internal::cementite_stop(model, y, volume_.model(), temperature_);
  }

  /// [vol%]; as much as was there when it gives up nothing.
  double solve() {
    const double most = shares_[left_].volume_percent;
    if (!stop_ || potential(0.0) <= *stop_) return 0.0;
    if (potential(most) >= *stop_) return most;
    std::uintmax_t steps = 200;
    const auto excess = [&](double percent) { return potential(percent) - *stop_; };
    const auto [low, high] = boost::math::tools::bisect(
        excess, 0.0, most, boost::math::tools::eps_tolerance<double>(46), steps);
    return 0.5 * (low + high);
  }

  /// Of carbon in the matrix [J/mol]; very low when the carbide holds all of it.
  double potential(double percent) {
    constexpr double kVeryLow = -1e9;
    shares_[left_].volume_percent = percent;
    const auto balance = keeping_the_others();
    if (!balance.possible || !(balance.matrix["C"] > 0.0)) return kVeryLow;
    const auto y = volume_.site_fractions(balance.matrix_atom_fraction());
    return internal::carbon_potential(volume_.model(), temperature_, y);
  }

  /// With the volumes of the last potential().
  std::vector<MeasuredCarbide> carbide() const {
    std::vector<MeasuredCarbide> list;
    for (const CarbideShare& share : shares_)
      list.push_back({share.occurrences.front().kind, share.volume_percent});
    return list;
  }

 private:
  /// The other carbides keep their moles, so their volume percents move a little while
  /// cementite goes.
  internal::CarbideBalance keeping_the_others() {
    constexpr int kRepeats = 8;
    for (int i = 0;; ++i) {
      auto balance = internal::balance_carbides(steel_atoms_, shares_, volume_,
                                                matrix_.molar_volume);
      if (i == kRepeats) return balance;
      for (std::size_t k = 0; k < shares_.size(); ++k)
        if (k != left_)
          shares_[k].volume_percent *= moles_of(shares_[k]) / balance.moles[k];
    }
  }

  static double moles_of(const CarbideShare& annealed) {
    double moles = 0.0;
    for (const Occurrence& o : annealed.occurrences) moles += 0.01 * o.mole_percent;
    return moles;
  }

  const ParameterSet& set_;
  Temperature temperature_;
  Occurrence matrix_;
  MatrixVolume volume_;
  NamedValues steel_atoms_;
  std::vector<CarbideShare> shares_;
  std::size_t left_;  ///< which of the shares is cementite
  std::optional<double> stop_;
};

std::string text_of(const ShortSoak& soak) {
  return "A short-soak limit, not an equilibrium: M3C has given up what carbon it can "
         "with its metals left in place; other carbide is as annealed at " +
         internal::degrees(soak.annealed_at) +
         ". As a rule a soak of minutes lies between this and the long-hold limit, "
         "nearer to the latter the hotter and longer it is; above about 900 C metals "
         "move within minutes too.";
}

/// What a count would be told, and what is told instead.
void replace_warnings(ShortSoak& soak) {
  auto& list = soak.state.warnings;
  list.erase(std::remove_if(list.begin(), list.end(),
                            [](const Warning& w) {
                              return w.code == "gibbsteel.warning.345" ||
                                     w.code == "gibbsteel.warning.348";
                            }),
             list.end());
  list.insert(list.begin(), {std::string(codes::kShortSoakLimit), text_of(soak)});
}

void describe(ShortSoak& soak, const State& long_hold, double potential) {
  SolveReport& report = soak.state.solve_report;
  report.status = SolveStatus::short_soak_limit;
  report.reason = "M3C by the short-soak limit, matrix by mass balance, no equilibrium";
  const double rt = kGasConstant * long_hold.temperature.in_kelvin();
  const double above = potential - long_hold.chemical_potential["C"];
  soak.state.carbon_activity = long_hold.carbon_activity * std::exp(above / rt);
  for (MatrixBand& band : soak.bands) {
    band.other_composition = band.value;
    band.low = std::min(band.value, band.long_hold);
    band.high = std::max(band.value, band.long_hold);
  }
  replace_warnings(soak);
}

/// Ferrite has to be gone, or carbon would not be the same everywhere in austenite.
void check_no_ferrite(const State& limit, const SharedParameters& parameters) {
  SoakOptions matrix;
  matrix.phases = {"austenite", "ferrite"};
  const Steel steel(limit.matrix.weight_percent, {"", parameters, false});
  const State found = steel.soak(limit.temperature, matrix);
  const std::string carbon = internal::fixed(limit.matrix.weight_percent["C"], 2);
  if (!found.usable())
    refuse_limit("state", "leaves a matrix that gives no usable result",
                 "change the temperature slightly");
  if (found.volume_percent_of("ferrite") > 0.0)
    refuse_limit(
        "state",
        "is too cold: a matrix with " + carbon + " wt% carbon would hold ferrite",
        "take a higher temperature");
}

void check_matrix(const State& state) {
  const Occurrence matrix = state.matrix_phases().front();
  if (matrix.kind != "austenite")
    refuse_limit("state", "has a matrix of " + matrix.name,
                 "take a temperature at which it is austenite");
  if (state.solve_report.by_mass_balance())
    refuse_limit("state", "is a mass balance, not the long-hold limit",
                 "give what steel.soak returns");
}

}  // namespace

ShortSoak short_soak_limit(const State& state, const ShortSoakLimitOptions& options) {
  MeasuredCarbideOptions balance;
  balance.composition = CarbideSource::annealed;
  balance.unlisted = UnlistedCarbide::absent;
  balance.parameters = options.parameters ? options.parameters : default_parameters();
  balance.annealing = options.annealing;
  internal::check_measured(state, {{internal::kCementite}},
                           internal::shared_hash(balance.parameters));
  check_matrix(state);
  const Steel steel(state.analysis.given,
                    {state.steel, balance.parameters, !state.analysis.bound.empty()});
  const State annealed = internal::annealed_state(steel, options);
  const auto shares = internal::annealed_carbides(annealed);
  internal::check_annealed(annealed, shares);
  balance.annealed_at = annealed.temperature;
  Dissolution dissolution(state, steel, shares);
  const double potential = dissolution.potential(dissolution.solve());
  ShortSoak soak = with_measured_carbide(state, dissolution.carbide(), balance);
  check_no_ferrite(soak.state, balance.parameters);
  describe(soak, state, potential);
  return soak;
}

}  // namespace gibbsteel
