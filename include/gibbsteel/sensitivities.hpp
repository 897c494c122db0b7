#pragma once
/// Exact derivatives of every number of a state: to the temperature, to each element
/// (balance Fe), and to each number of the parameter file. An element is an input by
/// its weight percent w, with which the moles m change as
///
///   dm/dw = 1/M,  dm_Fe/dw = -1/M_Fe,  b = m / sum m                          Eq. (S5)
///
/// M molar masses, b the overall mole fractions; the rest is in linearization.hpp.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/state_slope.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

/// All numbers of a parameter set that can be inputs: coefficients of energies, Curie
/// temperatures, moments and curves, factors of curves, volumes, expansions. Named by
/// the JSON pointer of the number in the text that write_parameters() makes of the set
/// (for a set of one file, the place in that file).
std::vector<Input> parameter_inputs(const ParameterSet& set);

/// Which inputs; the temperature is always among them.
struct SensitivityOptions {
  /// Elements: all of the calculation but Fe when not given (none when the steel has no
  /// iron). The slope is per weight percent more of the element and as much Fe less,
  /// all others constant. With the elements that tramp elements bind, what is bound
  /// stays the same: the slope is that of the part that enters the calculation.
  std::optional<std::vector<std::string>> elements;
  /// Places of numbers of the parameter set, see parameter_inputs().
  std::vector<std::string> parameters;
  /// All of them, instead of the list.
  bool all_parameters = false;
};

/// A state and its slopes.
struct Sensitivities {
  /// Distance from a phase change at which a slope is called one-sided: such a step
  /// along it, either way, would make a phase vanish or appear. For a number of the
  /// parameter file: one millionth of it.
  static constexpr double kTemperatureStep = 0.1;  ///< [K]
  static constexpr double kElementStep = 0.001;    ///< [wt%]
  static constexpr double kParameterStep = 1e-6;   ///< relative

  State state;
  /// Temperature first, then elements, then parameters, in the order asked for. Empty
  /// when the state is not usable. All NaN, with a remark, where the equilibrium leaves
  /// amounts or potentials free (SolveReport::unique is false).
  std::vector<StateSlope> slopes;

  /// By the name of the input: "temperature", "C", "/phases/M6C/energy/3/terms/T".
  /// @throws InputError gibbsteel.input.209 naming what there is
  const StateSlope& at(std::string_view name) const;
  std::string brief() const;  ///< one line
  /// Table: carbides, matrix and carbon activity, and their slopes to temperature and
  /// elements; warnings and cautions.
  std::string full() const;
};

/// The same numbers of one slope.
std::string slope_text(const StateSlope& slope);

/// Soaks and differentiates: little more than the time of the soak for temperature and
/// elements.
///
/// Room-temperature volumes do not depend on the soak temperature at constant
/// composition, those on VolumeBasis::soak do. The slopes of a phase that is absent are
/// those of its nearest minimum.
/// @throws InputError as Steel::soak(), and with every unusable input:
///         gibbsteel.input.216 (Fe, an element that is absent, not modelled or none),
///         .217 (no such number in the parameter set), .218 (no iron to balance)
Sensitivities sensitivities(const Steel& steel, Temperature t,
                            const SoakOptions& options = {},
                            const SensitivityOptions& chosen = {});

}  // namespace gibbsteel
