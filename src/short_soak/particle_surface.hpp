#pragma once
/// The surface of a cementite sphere that dissolves in austenite: Eqs. (B5) and (B6) of
/// timed_soak.hpp.

#include <vector>

#include "internal/cementite_stop.hpp"
#include "short_soak/shrinking_spheres.hpp"

namespace gibbsteel::internal {

class ParticleSurface {
 public:
  /// @param composition  site fractions of the cementite, as cementite.constituents()
  /// @throws InputError gibbsteel.input.284 (a metal without a diffusion coefficient)
  ParticleSurface(const PhaseModel& cementite, const std::vector<double>& composition,
                  const PhaseModel& austenite, Temperature t);

  /// -r dr/dt [m2/s]: 0 where the cementite does not dissolve, infinite where metals
  /// need not move for it (carbon alone decides), NaN when the potentials cannot be
  /// had.
  /// @param mean   site fractions of the austenite, as austenite.constituents()
  /// @param share  of the metal atoms in the cementite, from 0 to below 1
  double speed(const std::vector<double>& mean, double share);
  /// Which of these it is, without the search.
  Dissolving regime(const std::vector<double>& mean, double share);

 private:
  struct Metal {
    std::size_t austenite;  ///< constituent
    std::size_t cementite;  ///< constituent, when `sites` is above 0
    double sites;           ///< fraction on the metal sites of the cementite
    double diffusion;       ///< [m2/s]; of iron, which is the rest, not used
  };
  void read_metals(const std::vector<double>& composition);
  double diffusion_of(const std::string& element);
  double excess(double speed);
  void set_surface(double speed);
  bool match_carbon();
  void set_potentials(const PhaseDerivatives& d);
  double sum_of_tie();

  const PhaseModel& cementite_;
  const PhaseModel& austenite_;
  Temperature t_;
  std::vector<Metal> metals_;
  std::size_t iron_ = 0;                           ///< which of the metals
  double slowest_ = 1.0, fastest_ = 0.0;           ///< diffusion of a metal [m2/s]
  Interstitials at_;                               ///< in the austenite
  double metal_sites_ = 0.0, carbon_sites_ = 0.0;  ///< of the cementite
  std::vector<double> start_;                      ///< site fractions of the cementite
  std::vector<double> mean_, y_, tie_, wanted_;
  double potential_ = 0.0;  ///< of carbon [J/mol]
  double crowding_ = 1.0;   ///< g of Eq. (B6)
};

/// g(f) of Eq. (B6): what neighbours at a mean distance take off the way of diffusion.
double crowding(double share);

}  // namespace gibbsteel::internal
