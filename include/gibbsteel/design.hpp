#pragma once
/// A composition that meets several targets at once: least squares over the weight
/// percents of several elements, balance Fe, inside bounds.
///
///   minimize  sum over equal targets of ((q - wanted) / scale)^2
///   subject to  q <= wanted  or  q >= wanted  for the others, and the bounds   Eq.
///   (D1)
///
/// By sequential quadratic programming with exact slopes (Kraft, ACM Trans. Math.
/// Softw. 20 (1994) 262, from memory) from several starts; where targets can only be
/// met as a compromise, then by linear approximations without slopes (Powell 1994, from
/// memory), which also work at a bend. Where no composition
/// satisfies all inequalities, their violations join the sum and the nearest one is
/// shown. Numbers of a state bend where phases change and are flat where a carbide is
/// absent: a better composition than the one shown cannot be ruled out, and is stated
/// as such. Every result is soaked again.

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "gibbsteel/composition_for.hpp"
#include "gibbsteel/makeable.hpp"
#include "gibbsteel/quantity.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

enum class TargetSense { equal, at_least, at_most };
std::string_view to_string(TargetSense) noexcept;

/// One number of a soak and what it shall be.
struct DesignTarget {
  Quantity quantity;
  Temperature temperature;
  TargetSense sense = TargetSense::equal;
  double wanted = 0.0;
  /// How far off still counts as met, in the unit of the quantity: above 0 where it
  /// shall be equal. 0 for a limit: kept to within what the search resolves, a
  /// thousandth of the usual tolerance.
  double tolerance = 0.0;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  /// 1 % of the wanted value, at least 0.005: this library's own choice.
  static double usual_tolerance(double wanted) noexcept;
  /// What a deviation is weighed by: the tolerance; where that is 0, the usual one.
  double scale() const noexcept;
};

/// The matrix of a state as targets: every element but Fe, at its temperature.
/// @param elements  these only, when not empty
/// @throws InputError gibbsteel.input.260 (no usable matrix), .269 (an element that is
///         not in it)
std::vector<DesignTarget> matrix_targets(const State& state,
                                         const std::vector<std::string>& elements = {});

/// An element that may be changed.
struct DesignElement {
  std::string symbol;
  WeightPercentRange range;  ///< bounds [wt%]
  bool operator==(const DesignElement&) const = default;
};

struct DesignOptions {
  int starts = 6;  ///< besides the steel itself, in [0, 1000]
  /// Compositions from which the starts are chosen, the most promising first, in [0,
  /// 100000].
  int candidates = 24;
  int most_steps = 80;  ///< compositions tried per start, in [5, 100000]
  /// Of the result; a rounded composition is what the targets are judged by. Where the
  /// nearest one breaks a limit, one within a step or two that keeps it is taken.
  MakeableSteps makeable = MakeableSteps::none();
  SoakOptions soak;
  /// Called after each soak of the search with the number done; return false to stop.
  std::function<bool(std::size_t)> progress;
};

/// Only ever appended.
enum class DesignStatus {
  met,            ///< every target; what shall be equal, within its tolerance
  compromise,     ///< the inequalities hold, not every equality does
  infeasible,     ///< no composition was found that satisfies all inequalities
  not_converged,  ///< soaks without a usable result stood in the way
  stopped,        ///< by the caller: the best so far is shown, soaked again
};
std::string_view to_string(DesignStatus) noexcept;

/// How a target came out.
struct TargetOutcome {
  std::string name, unit;  ///< of the quantity
  Temperature temperature = Temperature::kelvin(0.0);
  TargetSense sense = TargetSense::equal;
  double wanted = 0.0, tolerance = 0.0;
  double value = Occurrence::kUnknown;  ///< of the final soak
  /// Value less wanted where the target is not met exactly; 0 for an inequality that
  /// holds. In the unit of the quantity.
  double miss = Occurrence::kUnknown;
  bool met = false;  ///< within the tolerance; see DesignTarget::tolerance
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts
  bool operator==(const TargetOutcome&) const = default;
};

/// An element of the result.
struct DesignedElement {
  std::string symbol;
  WeightPercentRange range;
  double weight_percent = 0.0;
  bool at_bound = false;  ///< the bound holds it back
  bool operator==(const DesignedElement&) const = default;
};

struct Design {
  DesignStatus status = DesignStatus::not_converged;
  Steel steel;  ///< the result
  std::vector<DesignedElement> elements;
  std::vector<TargetOutcome> targets;
  std::vector<State> states;  ///< final soaks, one per temperature of the targets
  std::size_t soaks = 0;
  int starts = 0;                   ///< that were followed
  std::string text;                 ///< one sentence: the answer, or why there is none
  bool by_family = false;           ///< as Quantity::by_family(), of any target
  std::vector<Warning> of_targets;  ///< Quantity::warnings() of the final soaks

  /// The distinct warnings of the final soaks and of the targets; with by_family also
  /// that the result is near a border of its family of steels (gibbsteel.warning.335),
  /// and where along an element, the others as in the result, the family changes
  /// (.357).
  std::vector<Warning> warnings() const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< composition, targets, warnings and cautions
};

/// @param start     elements that are not listed keep its weight percents
/// @param elements  at least one
/// @param targets   at least one
/// @throws InputError with every problem: gibbsteel.input.269 (elements, bounds,
///         targets, options), .340 (a wish that no state can have), .210 (temperature),
///         .261 (steps), .205, .206 (see Quantity::problems()); and as Steel::soak()
Design design(const Steel& start, const std::vector<DesignElement>& elements,
              const std::vector<DesignTarget>& targets,
              const DesignOptions& options = {});

}  // namespace gibbsteel
