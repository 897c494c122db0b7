#pragma once
/// Derivatives of every number of a state with respect to one input.

#include <string>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel {

/// What a slope is taken with respect to.
struct Input {
  enum class Kind {
    temperature,  ///< per K, at constant composition
    element,      ///< per wt% of `name`, balance Fe
    parameter,    ///< per unit of one number of the parameter file
  };
  Kind kind = Kind::temperature;
  /// "temperature", an element symbol, or the place of the number in the file.
  std::string name;
  std::string unit;  ///< of the input: "K", "wt%", "J/mol", ...
  bool operator==(const Input&) const = default;
};

/// d(state)/d(input). Every number stands in the place that it has in the State, with
/// the unit of that number per unit of the input. Occurrences are in the order of the
/// state's; their names, kinds and roles are repeated.
struct StateSlope {
  Input input;
  std::vector<Occurrence> occurrences;
  Matrix matrix;
  double carbide_volume_percent = Occurrence::kUnknown;
  double carbide_mass_percent = Occurrence::kUnknown;
  double carbon_activity = Occurrence::kUnknown;
  double gibbs_energy = Occurrence::kUnknown;
  double density = Occurrence::kUnknown;
  NamedValues chemical_potential;
  NamedValues driving_force;
  /// True within the stated distance of a phase change: the slope holds on the side of
  /// the phases that the state has.
  bool one_sided = false;
  std::string remark;  ///< why, when one-sided or not available; else empty
};

/// The state a small step along a slope away: every number plus step times its slope.
/// Meant for differences of functions of a state, not as a prediction.
State shifted(const State& state, const StateSlope& slope, double step);

}  // namespace gibbsteel
