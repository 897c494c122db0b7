#pragma once
/// How much cementite of an annealed steel is left, and the austenite beside it; the
/// other carbides as annealed. short_soak_limit.hpp, timed_soak.hpp

#include <vector>

#include "gibbsteel/measured_carbide.hpp"
#include "internal/carbide_balance.hpp"

namespace gibbsteel::internal {

class CementiteLeft {
 public:
  /// @param state     a long hold with one matrix phase, austenite
  /// @param annealed  shares of the annealed condition, cementite among them
  CementiteLeft(const State& state, const Steel& steel,
                const std::vector<CarbideShare>& annealed);

  /// Moles of atoms in the annealed cementite per mole of the steel.
  double most() const noexcept { return most_; }
  /// Of all metal atoms in cementite and austenite, those in so much cementite.
  double share(double moles) const noexcept { return metals_ * moles / all_metals_; }
  double moles_at(double share) const noexcept { return share * all_metals_ / metals_; }

  /// Site fractions of the austenite beside so many moles of cementite, as
  /// austenite().constituents(); empty when the carbide would hold more of an element
  /// than the steel does.
  std::vector<double> austenite_beside(double moles);
  /// Of the austenite beside so many moles [wt%]; empty as austenite_beside().
  NamedValues matrix_weight_percent(double moles);
  /// As carbide volumes with what was given to austenite_beside() last.
  std::vector<MeasuredCarbide> carbide() const;

  const PhaseModel& austenite() const noexcept { return volume_.model(); }
  const PhaseModel& cementite() const noexcept { return cementite_; }
  /// Site fractions of the annealed cementite, as cementite().constituents().
  const std::vector<double>& composition() const noexcept { return composition_; }

 private:
  SharedParameters parameters_;
  MatrixVolume volume_;
  NamedValues steel_atoms_;
  std::vector<CarbideShare> shares_;
  std::size_t left_;           ///< which of the shares is cementite
  std::vector<double> moles_;  ///< of atoms in each share per mole of the steel
  PhaseModel cementite_;
  std::vector<double> composition_;
  double most_ = 0.0;
  double metals_ = 0.0;      ///< moles of metal per mole of cementite
  double all_metals_ = 0.0;  ///< in cementite and austenite, per mole of the steel
};

}  // namespace gibbsteel::internal
