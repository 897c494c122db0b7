#include "tolerance/heat_soaks.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "tolerance/carbon_at_activity.hpp"

namespace gibbsteel::internal {
namespace {

/// Every substitutional element times `factor`; carbon too when asked for.
Steel segregated(const Steel& heat, double factor, bool carbon_too) {
  NamedValues changes;
  for (const auto& [symbol, percent] : heat.analysis().given)
    if (segregates(symbol) || (carbon_too && symbol == "C"))
      changes.set(symbol, percent * factor);
  return changes.empty() ? heat : heat.changed(changes, heat.name());
}

SampleSoak soaked(const Steel& heat, Temperature t, const SoakOptions& options) {
  SampleSoak soak{heat.soak(t, options), ""};
  if (!soak.state.usable()) soak.trouble = soak.state.solve_report.brief();
  return soak;
}

/// Carbon chosen such that the place has the carbon activity of the whole heat.
SampleSoak at_equal_activity(const Steel& heat, double factor, Temperature t,
                             const SoakOptions& options) {
  SampleSoak whole = soaked(heat, t, options);
  if (!whole.trouble.empty()) return whole;
  const Steel place = segregated(heat, factor, false);
  const CarbonFound carbon =
      carbon_at_activity(place, t, options, whole.state.carbon_activity);
  if (carbon.trouble.empty())
    return soaked(place.changed({{"C", carbon.weight_percent}}, place.name()), t,
                  options);
  whole.trouble = carbon.trouble;
  return whole;
}

}  // namespace

bool segregates(std::string_view symbol) noexcept {
  constexpr std::array<std::string_view, 6> kStay{"Fe", "C", "N", "B", "O", "H"};
  return std::find(kStay.begin(), kStay.end(), symbol) == kStay.end();
}

HeatSoaks::HeatSoaks(const Steel& steel, Temperature t,
                     std::vector<TolerancedInput> inputs, SoakOptions options,
                     SegregatedCarbon carbon)
    : steel_(steel),
      temperature_(t),
      inputs_(std::move(inputs)),
      options_(std::move(options)),
      carbon_(carbon) {}

SampleSoak HeatSoaks::at(std::span<const double> x) const {
  NamedValues changes;
  Temperature t = temperature_;
  double factor = 1.0;
  for (std::size_t i = 0; i < inputs_.size(); ++i) {
    if (inputs_[i].name == "temperature")
      t = Temperature::celsius(x[i]);
    else if (inputs_[i].name == "segregation")
      factor = 1.0 + x[i] / 100.0;
    else
      changes.set(inputs_[i].name, x[i]);
  }
  const Steel heat = changes.empty() ? steel_ : steel_.changed(changes, steel_.name());
  if (factor == 1.0) return soaked(heat, t, options_);
  const bool has_carbon = heat.analysis().modelled["C"] > 0.0;
  if (carbon_ == SegregatedCarbon::equal_activity && has_carbon)
    return at_equal_activity(heat, factor, t, options_);
  const bool scaled = carbon_ == SegregatedCarbon::scaled;
  return soaked(segregated(heat, factor, scaled), t, options_);
}

}  // namespace gibbsteel::internal
