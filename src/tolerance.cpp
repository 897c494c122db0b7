#include "gibbsteel/tolerance.hpp"

#include <algorithm>
#include <cmath>

#include "internal/family_borders.hpp"
#include "internal/other_kinds.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"
#include "tolerance/band_warnings.hpp"
#include "tolerance/check_tolerances.hpp"
#include "tolerance/corner_search.hpp"
#include "tolerance/first_order.hpp"
#include "tolerance/heat_soaks.hpp"
#include "tolerance/input_distribution.hpp"
#include "tolerance/samples.hpp"
#include "tolerance/sobol_points.hpp"

namespace gibbsteel {
namespace {

/// The plan refers to `heats`.
internal::SamplePlan plan_of(const internal::HeatSoaks& heats,
                             const ToleranceOptions& options) {
  const std::vector<TolerancedInput>& inputs = heats.inputs();
  internal::SamplePlan plan;
  plan.soak = [&heats](std::span<const double> x) { return heats.at(x); };
  plan.point = [&inputs, unit = internal::sobol_points(options.samples, inputs.size(),
                                                       options.seed)](std::size_t row) {
    std::vector<double> point;
    for (std::size_t i = 0; i < inputs.size(); ++i)
      point.push_back(internal::quantile_of(inputs[i], unit[row * inputs.size() + i]));
    return point;
  };
  plan.threads = options.threads;
  plan.progress = options.progress;
  plan.more_to_come = options.corners;
  return plan;
}

}  // namespace

std::string_view to_string(SegregatedCarbon carbon) noexcept {
  switch (carbon) {
    case SegregatedCarbon::equal_activity:
      return "equal activity";
    case SegregatedCarbon::scaled:
      return "scaled";
    case SegregatedCarbon::unchanged:
      return "unchanged";
  }
  return "";
}

std::vector<Quantity> default_quantities(const State& state) {
  if (!state.usable()) return {};
  const bool by_mass = std::isnan(state.carbide_volume_percent);
  std::vector<Quantity> all{quantities::matrix("C"),
                            by_mass ? quantities::carbide_mass_percent()
                                    : quantities::carbide_volume_percent()};
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.carbides())
    if (std::find(kinds.begin(), kinds.end(), o.kind) == kinds.end())
      kinds.push_back(o.kind);
  for (const auto& kind : internal::with_other_kinds(kinds, {&state}))
    all.push_back(by_mass ? quantities::mass_percent(kind)
                          : quantities::volume_percent(kind));
  for (const auto& [symbol, percent] : state.matrix.weight_percent)
    if (symbol != "Fe" && symbol != "C") all.push_back(quantities::matrix(symbol));
  return all;
}

ToleranceBand tolerance_band(const Steel& steel, Temperature t,
                             const HeatTolerances& tolerances,
                             const std::vector<Quantity>& quantities,
                             const ToleranceOptions& options) {
  internal::check_tolerances(steel, t, tolerances, options);
  internal::require_known(quantities, *steel.parameters());
  ToleranceBand band;
  band.temperature_unit = options.soak.temperature_unit;
  band.nominal = steel.soak(t, options.soak);
  band.inputs = internal::inputs_of(steel, t, tolerances);
  band.segregated_carbon = options.segregated_carbon;
  band.percentiles = options.percentiles;
  band.samples_asked = options.samples;
  if (!band.nominal.usable()) return band;
  const std::vector<Quantity> chosen =
      quantities.empty() ? default_quantities(band.nominal) : quantities;
  internal::prepare_band(chosen, band);
  internal::fill_first_order(steel, t, chosen, options.soak, band);
  const internal::HeatSoaks heats(steel, t, band.inputs, options.soak,
                                  options.segregated_carbon);
  const internal::SamplePlan plan = plan_of(heats, options);
  internal::take_samples(plan, chosen, band);
  if (options.corners && !band.cancelled)
    internal::search_corners(plan.soak, chosen, options, band);
  band.warnings = internal::tolerance_warnings(*steel.parameters(), band);
  for (const Quantity& quantity : chosen)
    internal::add_warnings(quantity, band.nominal, band.warnings);
  if (std::any_of(chosen.begin(), chosen.end(),
                  [](const Quantity& q) { return q.by_family(); }))
    for (const Warning& warning : internal::border_warnings(band))
      internal::add_distinct(warning, band.warnings);
  return band;
}

}  // namespace gibbsteel
