#include "tolerance/input_slopes.hpp"

#include <algorithm>
#include <cmath>

#include "tolerance/heat_soaks.hpp"

namespace gibbsteel::internal {
namespace {

/// An element that scatters from zero upwards has its derivative at this trace instead,
/// where the state is the same [weight percent].
constexpr double kTrace = 1e-6;

Steel with_traces(const Steel& steel, const std::vector<TolerancedInput>& inputs) {
  NamedValues traces;
  for (const TolerancedInput& input : inputs)
    if (input.unit == "wt%" && input.nominal < kTrace) traces.set(input.name, kTrace);
  return traces.empty() ? steel : steel.changed(traces, steel.name());
}

}  // namespace

InputSlopes::InputSlopes(const Steel& steel, Temperature t,
                         const std::vector<TolerancedInput>& inputs,
                         const SoakOptions& options, SegregatedCarbon carbon)
    : steel_(with_traces(steel, inputs)),
      carbon_(carbon),
      known_(sensitivities(steel_, t, options)) {
  const auto used = [&](const StateSlope& slope) {
    return std::any_of(inputs.begin(), inputs.end(), [&](const TolerancedInput& input) {
      return input.name == slope.input.name || input.name == "segregation";
    });
  };
  for (const StateSlope& slope : known_.slopes)
    one_sided_ = one_sided_ || (slope.one_sided && used(slope));
}

std::string InputSlopes::remark() const {
  if (!known_.state.usable()) return known_.state.solve_report.brief();
  for (const StateSlope& slope : known_.slopes)
    if (!slope.remark.empty()) return slope.remark;
  return "";
}

double InputSlopes::of(const Quantity& quantity, const TolerancedInput& input) const {
  if (known_.slopes.empty()) return Occurrence::kUnknown;
  if (input.name == "segregation") return of_segregation(quantity);
  if (input.name == "temperature")
    return quantity.slope(known_.state, known_.at("temperature"));
  return of_element(quantity, input.name);
}

double InputSlopes::of_element(const Quantity& quantity,
                               const std::string& symbol) const {
  for (const StateSlope& slope : known_.slopes)
    if (slope.input.name == symbol) return quantity.slope(known_.state, slope);
  // Not modelled: what a tramp element binds is not differentiated.
  return steel_.binds_tramp_elements() ? Occurrence::kUnknown : of_dilution(quantity);
}

/// An element that is not modelled takes the place of Fe in the certificate only: the
/// other elements then make up more of what is calculated.
double InputSlopes::of_dilution(const Quantity& quantity) const {
  const NamedValues& modelled = steel_.analysis().modelled;
  double slope = 0.0;
  for (const StateSlope& known : known_.slopes)
    if (known.input.kind == Input::Kind::element)
      slope += modelled[known.input.name] / modelled.sum() *
               quantity.slope(known_.state, known);
  return slope;
}

/// Per percent of the content of every element that segregates, carbon as it is.
double InputSlopes::of_alloy_content(const Quantity& quantity) const {
  double slope = 0.0;
  for (const auto& [symbol, percent] : steel_.analysis().given)
    if (segregates(symbol) && percent > 0.0)
      slope += percent / 100.0 * of_element(quantity, symbol);
  return slope;
}

double InputSlopes::of_segregation(const Quantity& quantity) const {
  const double carbon = steel_.analysis().modelled["C"];
  double slope = of_alloy_content(quantity), carbon_per_percent = 0.0;
  if (carbon == 0.0) return slope;
  if (carbon_ == SegregatedCarbon::scaled) carbon_per_percent = carbon / 100.0;
  if (carbon_ == SegregatedCarbon::equal_activity) {
    const Quantity activity = quantities::carbon_activity();
    // Where the phases present fix the activity, the carbon is not determined: NaN.
    const double per_carbon = of_element(activity, "C");
    carbon_per_percent = per_carbon > 0.0 ? -of_alloy_content(activity) / per_carbon
                                          : Occurrence::kUnknown;
  }
  if (carbon_per_percent != 0.0)
    slope += carbon_per_percent * of_element(quantity, "C");
  return slope;
}

}  // namespace gibbsteel::internal
