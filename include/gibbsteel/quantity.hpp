#pragma once
/// A number that every usable state has: what targets, comparisons, tolerance bands and
/// designs are about.

#include <functional>
#include <limits>
#include <string>
#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/parameter_set.hpp"
#include "gibbsteel/state_slope.hpp"

namespace gibbsteel {

class Quantity {
 public:
  using Value = std::function<double(const State&)>;
  using Slope = std::function<double(const State&, const StateSlope&)>;
  using Warnings = std::function<std::vector<Warning>(const State&)>;
  /// Of a band; NaN where there is none.
  struct Ends {
    double low = std::numeric_limits<double>::quiet_NaN();
    double high = std::numeric_limits<double>::quiet_NaN();
    bool operator==(const Ends&) const = default;
  };
  using EndsOf = std::function<Ends(const State&)>;

  /// @param name   for tables, "carbon in the matrix"
  /// @param unit   "wt%", "vol%", "" for a pure number
  /// @param value  from a usable state; NaN where it does not exist
  /// @param slope  its derivative, given the state's; when left out, a central
  ///               difference of `value` along the slope of the state is used
  Quantity(std::string name, std::string unit, Value value, Slope slope = {});

  /// The function of namespace quantities that made it, and what it was called with:
  /// enough to make it again elsewhere.
  struct Origin {
    std::string function;  ///< "matrix"; empty for any other quantity
    std::vector<std::string> arguments;
  };

  /// What it names and what it can be.
  struct Scope {
    std::vector<std::string> elements = {}, kinds = {};
    /// No state has a value outside.
    double least = -std::numeric_limits<double>::infinity();
    double most = std::numeric_limits<double>::infinity();
  };
  Quantity(Origin origin, Scope scope, std::string name, std::string unit, Value value,
           Slope slope);

  const std::string& name() const noexcept { return name_; }
  const std::string& unit() const noexcept { return unit_; }
  /// "carbon in the matrix [wt%]"
  std::string label() const;
  /// NaN when the state is not usable.
  /// @throws InputError gibbsteel.input.205 (a kind of phase that the parameter set of
  ///         the state lacks), .206 (an element that the state left out)
  double value(const State& state) const;
  const Origin& origin() const noexcept { return origin_; }
  const Scope& scope() const noexcept { return scope_; }
  /// Elements and kinds of phase that the parameter set lacks. Whatever soaks for a
  /// quantity asks first, and throws them as one InputError.
  std::vector<Problem> problems(const ParameterSet& set) const;
  const Value& function() const noexcept { return value_; }
  /// False: slope() is a difference of values.
  bool has_slope() const noexcept { return static_cast<bool>(slope_); }
  /// Whether it rests on equations of the family of the steel (hardening_family.hpp):
  /// it goes over to other numbers where a composition passes to another family.
  bool by_family() const noexcept { return by_family_; }
  /// This quantity, which rests on the family.
  Quantity with_families() const;
  double slope(const State& state, const StateSlope& slope) const;
  /// What to know about its value beside the warnings of the state; whatever takes a
  /// quantity hands it on. None when the state is not usable.
  std::vector<Warning> warnings(const State& state) const;
  /// This quantity, with such warnings.
  Quantity with_warnings(Warnings warnings) const;
  /// Whether its values come with a band: those of hardening estimates do.
  bool has_band() const noexcept { return static_cast<bool>(ends_); }
  /// Low and high as those of an Estimate; NaN where value() is, or without has_band().
  /// @throws InputError as value()
  Ends band(const State& state) const;
  /// This quantity, with a band.
  Quantity with_band(EndsOf ends) const;
  /// True: a function that was given without its slope, or made of one. It may rest on
  /// more than the state that it gets, for instance on a soak of another steel.
  bool may_rest_on_more() const noexcept { return may_rest_on_more_; }
  /// This quantity, which may.
  Quantity resting_on_more() const;

 private:
  Origin origin_;
  Scope scope_;
  std::string name_, unit_;
  Value value_;
  Slope slope_;
  Warnings warnings_;
  EndsOf ends_;
  bool by_family_ = false, may_rest_on_more_ = false;
};

/// Elements are symbols of the periodic table; a kind of phase is looked for in the
/// parameter set when the quantity is used.
/// @throws InputError gibbsteel.input.201 (no symbol of an element)
namespace quantities {

/// An element in all matrix phases together [wt%]; NaN where there is none (molten).
Quantity matrix(const std::string& element);
/// An element in a kind of phase [wt% of the phase]; of two occurrences the one with
/// the larger volume; NaN when absent.
Quantity in_phase(const std::string& kind, const std::string& element);
/// An element in all carbides together [wt% of them], as in the residue of an
/// electrolytic isolation; NaN without carbide.
Quantity in_carbides(const std::string& element);
/// A kind of carbide, all its occurrences [vol% or mass% of the steel]; 0 when absent.
Quantity volume_percent(const std::string& kind);
Quantity mass_percent(const std::string& kind);
/// How far a kind of phase is from forming [J/mol of atoms]: negative when absent, 0
/// when present; NaN when it is not allowed to form. Unlike an amount it has a slope
/// while the phase is absent.
Quantity driving_force(const std::string& kind);
/// All carbides together.
Quantity carbide_volume_percent();
Quantity carbide_mass_percent();
/// Relative to graphite.
Quantity carbon_activity();

}  // namespace quantities

}  // namespace gibbsteel
