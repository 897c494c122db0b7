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
#include "internal/liquid_share.hpp"
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
    for (const CarbideShare& share : shares_) {
      moles_.push_back(0.0);
      for (const Occurrence& o : share.occurrences)
        moles_.back() += 0.01 * o.mole_percent;
    }
    const Occurrence& o = shares_[left_].occurrences.front();
    const PhaseModel model(set_, *set_.find_phase(o.phase), steel.elements());
    std::vector<double> y;
    for (const Constituent& c : model.constituents())
      y.push_back(o.site_fractions[c.sublattice].fractions[c.name]);
    stop_ = internal::cementite_stop(model, y, volume_.model(), temperature_);
  }

  /// Moles of atoms per mole of the steel; as many as were there when it gives up
  /// nothing.
  double solve() {
    const double most = moles_[left_];
    if (!stop_ || potential(0.0) <= *stop_) return 0.0;
    if (potential(most) >= *stop_) return most;
    std::uintmax_t steps = 200;
    const auto excess = [&](double moles) { return potential(moles) - *stop_; };
    const auto [low, high] = boost::math::tools::bisect(
        excess, 0.0, most, boost::math::tools::eps_tolerance<double>(46), steps);
    return 0.5 * (low + high);
  }

  /// Of carbon in the matrix [J/mol]; very low when the carbide holds all of it. The
  /// other carbides keep their moles.
  double potential(double moles) {
    constexpr double kVeryLow = -1e9;
    moles_[left_] = moles;
    const auto balance =
        internal::balance_moles(steel_atoms_, shares_, moles_, volume_);
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
  const ParameterSet& set_;
  Temperature temperature_;
  Occurrence matrix_;
  MatrixVolume volume_;
  NamedValues steel_atoms_;
  std::vector<CarbideShare> shares_;
  std::size_t left_;           ///< which of the shares is cementite
  std::vector<double> moles_;  ///< of atoms in each share per mole of the steel
  std::optional<double> stop_;
};

std::string text_of(const ShortSoak& soak) {
  const std::string carbon =
      soak.state.volume_percent_of(internal::kCementite) > 0.0
          ? "what carbon it can with its metals left in place"
          : "all of its carbon, though its metals were left in place";
  return "A short-soak limit, not an equilibrium: M3C has given up " + carbon +
         "; other carbide is as annealed at " + internal::degrees(soak.annealed_at) +
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

void check_state(const State& state) {
  const Occurrence matrix = state.matrix_phases().front();
  if (matrix.kind != "austenite")
    refuse_limit("state", "has a matrix of " + matrix.name,
                 "take a temperature at which it is austenite");
  if (internal::liquid_share(state).percent > 0.0)
    refuse_limit("state", "is partly molten", "take a temperature below the solidus");
}

}  // namespace

ShortSoak short_soak_limit(const State& state, const ShortSoakLimitOptions& options) {
  MeasuredCarbideOptions balance;
  balance.composition = CarbideSource::annealed;
  balance.unlisted = UnlistedCarbide::absent;
  balance.parameters = options.parameters ? options.parameters : default_parameters();
  balance.annealing = options.annealing;
  balance.annealing.basis = VolumeBasis::room;  // as that of the state
  auto& suppressed = balance.annealing.suppressed;
  suppressed.insert(suppressed.end(), state.suppressed.begin(), state.suppressed.end());
  internal::check_measured(state, {{internal::kCementite}},
                           internal::shared_hash(balance.parameters));
  check_state(state);
  const Steel steel(state.analysis.given,
                    {state.steel, balance.parameters, !state.analysis.bound.empty()});
  const State annealed =
      internal::annealed_state(steel, options.annealed_at, balance.annealing);
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
