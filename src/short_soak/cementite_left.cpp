#include "short_soak/cementite_left.hpp"

#include <algorithm>

#include "internal/annealed_carbides.hpp"

namespace gibbsteel::internal {
namespace {

bool is_interstitial(const std::string& symbol) {
  return symbol == "C" || symbol == "N";
}

double metals_in(const NamedValues& atoms) {
  double sum = 0.0;
  for (const auto& [symbol, amount] : atoms)
    if (!is_interstitial(symbol)) sum += amount;
  return sum;
}

std::size_t index_of_cementite(const std::vector<CarbideShare>& shares) {
  return static_cast<std::size_t>(
      std::find_if(shares.begin(), shares.end(), is_cementite) - shares.begin());
}

PhaseModel model_of(const Steel& steel, const Occurrence& o) {
  const ParameterSet& set = *steel.parameters();
  return {set, *set.find_phase(o.phase), steel.elements()};
}

}  // namespace

CementiteLeft::CementiteLeft(const State& state, const Steel& steel,
                             const std::vector<CarbideShare>& annealed)
    : parameters_(steel.parameters()),
      volume_(steel, state.matrix_phases().front()),
      steel_atoms_(state.analysis.mole_fractions(*steel.parameters())),
      shares_(annealed),
      left_(index_of_cementite(shares_)),
      cementite_(model_of(steel, shares_[left_].occurrences.front())) {
  for (const CarbideShare& share : shares_) {
    moles_.push_back(0.0);
    for (const Occurrence& o : share.occurrences)
      moles_.back() += 0.01 * o.mole_percent;
  }
  const Occurrence& o = shares_[left_].occurrences.front();
  for (const Constituent& c : cementite_.constituents())
    composition_.push_back(o.site_fractions[c.sublattice].fractions[c.name]);
  most_ = moles_[left_];
  metals_ = metals_in(o.atom_fraction);
  const auto balance = balance_moles(steel_atoms_, shares_, moles_, volume_);
  all_metals_ = metals_ * most_ + metals_in(balance.matrix);
}

std::vector<double> CementiteLeft::austenite_beside(double moles) {
  moles_[left_] = moles;
  const auto balance = balance_moles(steel_atoms_, shares_, moles_, volume_);
  if (!balance.possible || !(balance.matrix["C"] > 0.0)) return {};
  return volume_.site_fractions(balance.matrix_atom_fraction());
}

NamedValues CementiteLeft::matrix_weight_percent(double moles) {
  moles_[left_] = moles;
  const auto balance = balance_moles(steel_atoms_, shares_, moles_, volume_);
  return balance.possible ? balance.matrix_weight_percent(*parameters_) : NamedValues{};
}

std::vector<MeasuredCarbide> CementiteLeft::carbide() const {
  std::vector<MeasuredCarbide> list;
  for (const CarbideShare& share : shares_)
    list.push_back({share.occurrences.front().kind, share.volume_percent});
  return list;
}

}  // namespace gibbsteel::internal
