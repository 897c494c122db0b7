#pragma once
/// What a number of the parameter set does to the phases of an equilibrium at fixed
/// potentials, amounts and site fractions.

#include <vector>

#include "gibbsteel/linearization.hpp"
#include "gibbsteel/volumes.hpp"
#include "internal/slope_of_state.hpp"
#include "internal/temperature_functions.hpp"
#include "parameter_file/parameter_numbers.hpp"

namespace gibbsteel::internal {

class ParameterSlopes {
 public:
  using Number = parameter_file::ParameterNumber;

  /// Keep both alive.
  ParameterSlopes(const PhaseSystem& system, const Equilibrium& result,
                  VolumeBasis basis);

  /// G_x and g_x of Eq. (S1) per unit of the number.
  Disturbance disturbance(const Number& number) const;
  DirectSlopes direct(const Number& number) const;

 private:
  std::vector<double> curve_changes(const Number& number) const;
  double scale_of(const Number& number, const Expression& expression) const;
  PhaseDisturbance of_curves(const PhasePoint& point,
                             const std::vector<double>& change) const;
  PhaseDisturbance of_term(const PhasePoint& point, const Number& number) const;
  double of_volume(const PhasePoint& point, const Number& number) const;
  bool owns(const Number& number, const PhasePoint& point) const;

  const PhaseSystem& system_;
  const Equilibrium& result_;
  VolumeBasis basis_;
  double kelvin_;
  std::vector<TemperatureValue> curves_;  ///< as ParameterSet::curves
};

}  // namespace gibbsteel::internal
