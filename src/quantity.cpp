#include "gibbsteel/quantity.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "internal/kind_names.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/small_step.hpp"

namespace gibbsteel {
namespace {

/// Sum of `member` over all occurrences of a kind.
double sum_over(const std::vector<Occurrence>& occurrences, const std::string& kind,
                double Occurrence::*member) {
  double sum = 0.0;
  for (const Occurrence& o : occurrences)
    if (o.kind == kind) sum += o.*member;
  return sum;
}

/// From the matrix of a state or of its slope; not 0 where there is no matrix.
double in_matrix(const State& state, const Matrix& matrix, const std::string& element) {
  return state.matrix.weight_percent.empty() ? Occurrence::kUnknown
                                             : matrix.weight_percent[element];
}

/// As far as a state tells: it does not hold its parameter set.
void check_scope(const State& state, const Quantity& quantity) {
  for (const std::string& kind : quantity.scope().kinds)
    if (std::find(state.kinds.begin(), state.kinds.end(), kind) == state.kinds.end())
      throw InputError({internal::no_such_kind(state.kinds, kind, "kind")});
  for (const std::string& symbol : quantity.scope().elements)
    if (state.analysis.not_modelled.contains(symbol))
      throw InputError({{"gibbsteel.input.206", "quantity, " + quantity.name(),
                         symbol + " is not modelled by the parameter file",
                         "load a file that models it"}});
}

/// Percent of a steel or of a part of it.
Quantity::Scope percent_of(std::vector<std::string> elements,
                           std::vector<std::string> kinds) {
  for (const std::string& symbol : elements) internal::require_element(symbol);
  return {std::move(elements), std::move(kinds), 0.0, 100.0};
}

Quantity amount_of(const std::string& function, const std::string& kind,
                   const std::string& unit, double Occurrence::*member) {
  return {{function, {kind}},
          percent_of({}, {kind}),
          kind,
          unit,
          [kind, member](const State& state) {
            return sum_over(state.occurrences, kind, member);
          },
          [kind, member](const State&, const StateSlope& slope) {
            return sum_over(slope.occurrences, kind, member);
          }};
}

Quantity plain(const std::string& function, const std::string& name,
               const std::string& unit, double most, double State::*value,
               double StateSlope::*slope) {
  return {{function, {}},
          {{}, {}, 0.0, most},
          name,
          unit,
          [value](const State& state) { return state.*value; },
          [slope](const State&, const StateSlope& s) { return s.*slope; }};
}

}  // namespace

Quantity::Quantity(std::string name, std::string unit, Value value, Slope slope)
    : Quantity({}, {}, std::move(name), std::move(unit), std::move(value),
               std::move(slope)) {
  may_rest_on_more_ = !slope_;
}

Quantity::Quantity(Origin origin, Scope scope, std::string name, std::string unit,
                   Value value, Slope slope)
    : origin_(std::move(origin)),
      scope_(std::move(scope)),
      name_(std::move(name)),
      unit_(std::move(unit)),
      value_(std::move(value)),
      slope_(std::move(slope)) {}

Quantity Quantity::with_families() const {
  Quantity copy = *this;
  copy.by_family_ = true;
  return copy;
}

Quantity Quantity::with_warnings(Warnings warnings) const {
  Quantity copy = *this;
  copy.warnings_ = std::move(warnings);
  return copy;
}

Quantity Quantity::with_band(EndsOf ends) const {
  Quantity copy = *this;
  copy.ends_ = std::move(ends);
  return copy;
}

Quantity::Ends Quantity::band(const State& state) const {
  if (!ends_ || !state.usable()) return {};
  check_scope(state, *this);
  return ends_(state);
}

std::vector<Warning> Quantity::warnings(const State& state) const {
  return warnings_ && state.usable() ? warnings_(state) : std::vector<Warning>{};
}

Quantity Quantity::resting_on_more() const {
  Quantity copy = *this;
  copy.may_rest_on_more_ = true;
  return copy;
}

std::string Quantity::label() const {
  return unit_.empty() ? name_ : name_ + " [" + unit_ + "]";
}

double Quantity::value(const State& state) const {
  if (!state.usable()) return Occurrence::kUnknown;
  check_scope(state, *this);
  return value_(state);
}

double Quantity::slope(const State& state, const StateSlope& slope) const {
  if (!state.usable()) return Occurrence::kUnknown;
  if (slope_) return slope_(state, slope);
  const double moved = internal::small_step(state, slope, 1e-5);
  const double step = moved > 0.0 ? moved : 1.0;
  return (value_(shifted(state, slope, step)) - value_(shifted(state, slope, -step))) /
         (2.0 * step);
}

namespace quantities {

Quantity matrix(const std::string& element) {
  return {
      {"matrix", {element}},
      percent_of({element}, {}),
      element + " in the matrix",
      "wt%",
      [element](const State& state) { return in_matrix(state, state.matrix, element); },
      [element](const State& state, const StateSlope& slope) {
        return in_matrix(state, slope.matrix, element);
      }};
}

Quantity in_phase(const std::string& kind, const std::string& element) {
  // Occurrences stand in the same place of a state and of its slope.
  const auto in_first = [kind, element](const std::vector<Occurrence>& occurrences) {
    for (const Occurrence& o : occurrences)
      if (o.kind == kind) return o.weight_percent[element];
    return Occurrence::kUnknown;
  };
  return {{"in_phase", {kind, element}},
          percent_of({element}, {kind}),
          element + " in " + kind,
          "wt%",
          [in_first](const State& state) { return in_first(state.occurrences); },
          [in_first](const State&, const StateSlope& slope) {
            return in_first(slope.occurrences);
          }};
}

Quantity in_carbides(const std::string& element) {
  return {{"in_carbides", {element}},
          percent_of({element}, {}),
          element + " in the carbides",
          "wt%",
          [element](const State& state) {
            double mass = 0.0, of_element = 0.0;
            for (const Occurrence& o : state.carbides()) {
              mass += o.mass_percent;
              of_element += o.mass_percent * o.weight_percent[element];
            }
            return mass > 0.0 ? of_element / mass : Occurrence::kUnknown;
          },
          {}};
}

Quantity volume_percent(const std::string& kind) {
  return amount_of("volume_percent", kind, "vol%", &Occurrence::volume_percent);
}

Quantity mass_percent(const std::string& kind) {
  return amount_of("mass_percent", kind, "mass%", &Occurrence::mass_percent);
}

Quantity driving_force(const std::string& kind) {
  // A kind that is no candidate has none.
  const auto of_kind = [kind](const NamedValues& forces) {
    return forces.contains(kind) ? forces[kind] : Occurrence::kUnknown;
  };
  return {{"driving_force", {kind}},
          {{}, {kind}},
          "driving force of " + kind,
          "J/mol of atoms",
          [of_kind](const State& state) { return of_kind(state.driving_force); },
          [of_kind](const State&, const StateSlope& slope) {
            return of_kind(slope.driving_force);
          }};
}

Quantity carbide_volume_percent() {
  return plain("carbide_volume_percent", "carbide", "vol%", 100.0,
               &State::carbide_volume_percent, &StateSlope::carbide_volume_percent);
}

Quantity carbide_mass_percent() {
  return plain("carbide_mass_percent", "carbide", "mass%", 100.0,
               &State::carbide_mass_percent, &StateSlope::carbide_mass_percent);
}

Quantity carbon_activity() {
  return plain("carbon_activity", "carbon activity", "",
               std::numeric_limits<double>::infinity(), &State::carbon_activity,
               &StateSlope::carbon_activity);
}

}  // namespace quantities
}  // namespace gibbsteel
