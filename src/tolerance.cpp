#include "gibbsteel/tolerance.hpp"

#include <algorithm>
#include <cmath>

#include "tolerance/check_tolerances.hpp"
#include "tolerance/corner_search.hpp"
#include "tolerance/first_order.hpp"
#include "tolerance/input_distribution.hpp"
#include "tolerance/sample_heats.hpp"
#include "tolerance/tolerance_warnings.hpp"

namespace gibbsteel {
namespace {

/// Names, nominal values and room for the contributions.
void prepare(const State& nominal, const std::vector<Quantity>& quantities,
             ToleranceBand& band) {
  for (const Quantity& quantity : quantities) {
    QuantityBand& q = band.quantities.emplace_back();
    q.name = quantity.name();
    q.unit = quantity.unit();
    q.nominal = quantity.value(nominal);
    for (const TolerancedInput& input : band.inputs)
      q.contributions.emplace_back().input = input.name;
  }
  for (const Occurrence& o : nominal.occurrences)
    if (std::none_of(band.phases.begin(), band.phases.end(),
                     [&](const PhaseShare& p) { return p.kind == o.kind; }))
      band.phases.push_back({o.kind, true, 0.0});
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
  for (const Occurrence& o : state.carbides()) {
    if (std::find(kinds.begin(), kinds.end(), o.kind) != kinds.end()) continue;
    kinds.push_back(o.kind);
    all.push_back(by_mass ? quantities::mass_percent(o.kind)
                          : quantities::volume_percent(o.kind));
  }
  for (const auto& [symbol, percent] : state.matrix.weight_percent)
    if (symbol != "Fe" && symbol != "C") all.push_back(quantities::matrix(symbol));
  return all;
}

ToleranceBand tolerance_band(const Steel& steel, Temperature t,
                             const HeatTolerances& tolerances,
                             const std::vector<Quantity>& quantities,
                             const ToleranceOptions& options) {
  internal::check_tolerances(steel, t, tolerances, options);
  ToleranceBand band;
  band.nominal = steel.soak(t, options.soak);
  band.inputs = internal::inputs_of(steel, t, tolerances);
  band.segregated_carbon = options.segregated_carbon;
  band.percentiles = options.percentiles;
  band.samples_asked = options.samples;
  if (!band.nominal.usable()) return band;
  const std::vector<Quantity> chosen =
      quantities.empty() ? default_quantities(band.nominal) : quantities;
  prepare(band.nominal, chosen, band);
  internal::fill_first_order(steel, t, chosen, options.soak, band);
  const internal::HeatSoaks heats(steel, t, band.inputs, options.soak,
                                  options.segregated_carbon);
  internal::take_samples(heats, chosen, options, band);
  internal::summarize_samples(band);
  if (options.corners && !band.cancelled)
    internal::search_corners(heats, chosen, options, band);
  band.warnings = internal::tolerance_warnings(*steel.parameters(), band);
  return band;
}

}  // namespace gibbsteel
