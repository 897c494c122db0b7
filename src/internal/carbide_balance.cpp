#include "internal/carbide_balance.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/volumes.hpp"

namespace gibbsteel::internal {
namespace {

/// Below this an amount is a rounding error of a balance and no contradiction.
constexpr double kRounding = -1e-12;

struct Mean {
  double molar_volume = 0.0;
  NamedValues atom_fraction;
};

Mean mean_of(const CarbideShare& share) {
  Mean mean;
  double moles = 0.0;
  for (const Occurrence& o : share.occurrences) moles += o.mole_percent;
  for (const Occurrence& o : share.occurrences) {
    const double part = o.mole_percent / moles;
    mean.molar_volume += part * o.molar_volume;
    for (const auto& [symbol, fraction] : o.atom_fraction)
      mean.atom_fraction.set(symbol, mean.atom_fraction[symbol] + part * fraction);
  }
  return mean;
}

/// The whole balance for one value of the matrix volume.
CarbideBalance balance_once(const NamedValues& steel,
                            const std::vector<CarbideShare>& shares,
                            const std::vector<Mean>& means, double matrix_volume) {
  CarbideBalance result;
  result.matrix_volume = matrix_volume;
  double inverse = 0.0, fractions = 0.0;
  for (std::size_t k = 0; k < shares.size(); ++k) {
    const double fraction = 0.01 * shares[k].volume_percent;
    inverse += fraction / means[k].molar_volume;
    fractions += fraction;
  }
  const double volume = 1.0 / (inverse + (1.0 - fractions) / matrix_volume);
  result.matrix_moles = 1.0;
  result.matrix = steel;
  for (std::size_t k = 0; k < shares.size(); ++k) {
    const double moles =
        0.01 * shares[k].volume_percent * volume / means[k].molar_volume;
    result.moles.push_back(moles);
    result.matrix_moles -= moles;
    for (const auto& [symbol, fraction] : means[k].atom_fraction)
      result.matrix.set(symbol, result.matrix[symbol] - moles * fraction);
  }
  for (const auto& [symbol, amount] : result.matrix)
    result.possible = result.possible && amount >= kRounding;
  return result;
}

}  // namespace

MatrixVolume::MatrixVolume(const Steel& steel, const Occurrence& matrix)
    : phase_(steel.parameters()->find_phase(matrix.phase)),
      model_(*steel.parameters(), *phase_, steel.elements()),
      fallback_(matrix.molar_volume) {}

std::vector<double> MatrixVolume::site_fractions(const NamedValues& atoms) const {
  const auto& all = model_.constituents();
  std::vector<double> moles(phase_->sublattices.size(), 0.0);
  std::vector<bool> open(moles.size(), false);
  NamedValues seen;
  for (const Constituent& c : all) {
    if (c.element < 0) {
      open[c.sublattice] = true;
      continue;
    }
    if (seen.contains(c.name)) return {};
    seen.set(c.name, 1.0);
    moles[c.sublattice] += atoms[c.name];
  }
  const auto full = std::find(open.begin(), open.end(), false);
  if (full == open.end()) return {};
  const auto s = static_cast<std::size_t>(full - open.begin());
  const double formula_units = moles[s] / phase_->sublattices[s].sites;
  std::vector<double> y;
  for (const Constituent& c : all) {
    const double sites = formula_units * phase_->sublattices[c.sublattice].sites;
    y.push_back(
        (c.element < 0 ? std::max(sites - moles[c.sublattice], 0.0) : atoms[c.name]) /
        sites);
  }
  return y;
}

double MatrixVolume::molar_volume(const NamedValues& atom_fraction) const {
  const std::vector<double> y = site_fractions(atom_fraction);
  if (y.empty()) return fallback_;
  const auto volume =
      formula_volume(*phase_, model_, y, VolumeBasis::room, Temperature::kelvin(0.0));
  double atoms = 0.0;
  for (std::size_t i = 0; i < y.size(); ++i)
    if (model_.constituents()[i].element >= 0) atoms += model_.sites(i) * y[i];
  return volume ? *volume / atoms : fallback_;
}

NamedValues CarbideBalance::matrix_atom_fraction() const {
  NamedValues fractions;
  for (const auto& [symbol, amount] : matrix)
    fractions.set(symbol, std::max(amount, 0.0) / matrix_moles);
  return fractions;
}

NamedValues CarbideBalance::matrix_weight_percent(const ParameterSet& set) const {
  NamedValues percents;
  double mass = 0.0;
  for (const auto& [symbol, amount] : matrix)
    mass += amount * set.find_element(symbol)->molar_mass;
  for (const auto& [symbol, amount] : matrix)
    percents.set(symbol, 100.0 * amount * set.find_element(symbol)->molar_mass / mass);
  return percents;
}

CarbideBalance balance_carbides(const NamedValues& steel_atom_fraction,
                                const std::vector<CarbideShare>& shares,
                                const MatrixVolume& matrix,
                                double matrix_volume_start) {
  // The matrix volume moves by parts in a thousand: a handful of repeats is exact.
  constexpr int kMostRepeats = 50;
  constexpr double kAgreed = 1e-14;
  std::vector<Mean> means;
  for (const CarbideShare& share : shares) means.push_back(mean_of(share));
  double volume = matrix_volume_start;
  for (int i = 0;; ++i) {
    CarbideBalance result = balance_once(steel_atom_fraction, shares, means, volume);
    const double next = matrix.molar_volume(result.matrix_atom_fraction());
    if (std::abs(next - volume) <= kAgreed * volume || i == kMostRepeats) return result;
    volume = next;
  }
}

CarbideBalance balance_moles(const NamedValues& steel_atom_fraction,
                             std::vector<CarbideShare>& shares,
                             const std::vector<double>& moles,
                             const MatrixVolume& matrix) {
  CarbideBalance result;
  result.moles = moles;
  result.matrix_moles = 1.0;
  result.matrix = steel_atom_fraction;
  double volume = 0.0;
  for (std::size_t k = 0; k < shares.size(); ++k) {
    const Mean mean = mean_of(shares[k]);
    result.matrix_moles -= moles[k];
    volume += moles[k] * mean.molar_volume;
    for (const auto& [symbol, fraction] : mean.atom_fraction)
      result.matrix.set(symbol, result.matrix[symbol] - moles[k] * fraction);
  }
  for (const auto& [symbol, amount] : result.matrix)
    result.possible = result.possible && amount >= kRounding;
  if (!result.possible) return result;
  result.matrix_volume = matrix.molar_volume(result.matrix_atom_fraction());
  volume += result.matrix_moles * result.matrix_volume;
  for (std::size_t k = 0; k < shares.size(); ++k)
    shares[k].volume_percent =
        100.0 * moles[k] * mean_of(shares[k]).molar_volume / volume;
  return result;
}

}  // namespace gibbsteel::internal
