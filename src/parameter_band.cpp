#include "gibbsteel/parameter_band.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/sensitivities.hpp"
#include "gibbsteel/tolerance.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"
#include "internal/short_soak_quantity.hpp"
#include "parameter_file/number_in_words.hpp"
#include "tolerance/band_warnings.hpp"
#include "tolerance/check_tolerances.hpp"
#include "tolerance/correlated_draws.hpp"
#include "tolerance/samples.hpp"

namespace gibbsteel {
namespace {

using parameter_file::UncertainNumber;
using Numbers = std::vector<UncertainNumber>;

void check(const Numbers& numbers, const ParameterBandOptions& options) {
  std::vector<Problem> problems;
  internal::check_sampling(options.samples, options.percentiles, problems);
  if (numbers.empty())
    problems.push_back({"gibbsteel.input.279", "parameters",
                        "the set states no standard deviation for any number",
                        "lay a file with \"standard_deviations\" on top of it"});
  const std::size_t most = internal::CorrelatedDraws::kMost;
  if (options.samples > 0 && numbers.size() > most)
    problems.push_back(
        {"gibbsteel.input.279", "samples",
         "the set has " + std::to_string(numbers.size()) + " uncertain numbers",
         "give 0 samples for the first-order band; samples can be drawn "
         "for at most " +
             std::to_string(most)});
  if (!problems.empty()) throw InputError(std::move(problems));
}

TolerancedInput input_of(const ParameterSet& set, const UncertainNumber& number,
                         const StateSlope* slope) {
  TolerancedInput input;
  input.name = number.place;
  input.text = parameter_file::number_in_words(set, number);
  if (slope) input.unit = slope->input.unit;
  input.nominal = input.mean = number.value;
  input.given_deviation = input.standard_deviation = number.standard_deviation;
  input.low = number.value - 2.0 * number.standard_deviation;
  input.high = number.value + 2.0 * number.standard_deviation;
  return input;
}

/// Signed scatters g_i = s_i sd_i, and what Eq. (U5) makes of them.
void fill_first_order(const Eigen::MatrixXd& correlations, const std::string& remark,
                      bool one_sided, QuantityBand& quantity, const Numbers& numbers) {
  const auto size = static_cast<Eigen::Index>(numbers.size());
  Eigen::VectorXd g(size);
  for (Eigen::Index i = 0; i < size; ++i) {
    const auto at = static_cast<std::size_t>(i);
    g[i] = quantity.contributions[at].slope * numbers[at].standard_deviation;
  }
  const Eigen::VectorXd parts = g.cwiseProduct(correlations * g);
  const double variance = std::max(0.0, parts.sum());
  for (Eigen::Index i = 0; i < size; ++i) {
    Contribution& c = quantity.contributions[static_cast<std::size_t>(i)];
    c.scatter = std::abs(g[i]);
    c.share = variance == 0.0 ? 0.0 : parts[i] / variance;
  }
  FirstOrderBand& band = quantity.first_order;
  band.remark = remark;
  if (std::isnan(parts.sum())) {
    if (remark.empty()) band.remark = quantity.name + " has no slope here";
    return;
  }
  band.mean = quantity.nominal;
  band.standard_deviation = std::sqrt(variance);
  band.one_sided = one_sided;
}

/// First order of all quantities, from one set of slopes.
void fill_first_orders(const Sensitivities& slopes, const ParameterSet& set,
                       const Numbers& numbers, const std::vector<Quantity>& quantities,
                       ParameterBand& band) {
  const Eigen::MatrixXd correlations = parameter_file::correlations_of(set, numbers);
  std::string remark;
  bool one_sided = false;
  for (const UncertainNumber& number : numbers) {
    const StateSlope& slope = slopes.at(number.place);
    one_sided = one_sided || slope.one_sided;
    if (remark.empty()) remark = slope.remark;
  }
  for (std::size_t q = 0; q < quantities.size(); ++q) {
    QuantityBand& quantity = band.quantities[q];
    for (std::size_t i = 0; i < numbers.size(); ++i)
      quantity.contributions[i].slope =
          quantities[q].slope(slopes.state, slopes.at(numbers[i].place));
    fill_first_order(correlations, remark, one_sided, quantity, numbers);
  }
}

/// Soak of the steel with other numbers in its parameter set.
internal::SampleSoak soak_with(const Steel& steel, Temperature t,
                               const SoakOptions& options, const Numbers& numbers,
                               std::span<const double> values) {
  for (std::size_t i = 0; i < numbers.size(); ++i)
    if (!numbers[i].name && values[i] <= 0.0)
      return {{}, "the volume at " + numbers[i].place + " was drawn below zero"};
  const auto set = std::make_shared<const ParameterSet>(parameter_file::with_values(
      *steel.parameters(), std::vector<double>(values.begin(), values.end())));
  const Steel other(steel.analysis().given,
                    {steel.name(), set, steel.binds_tramp_elements()});
  internal::SampleSoak soak{other.soak(t, options), "", set};
  if (!soak.state.usable()) soak.trouble = soak.state.solve_report.brief();
  return soak;
}

}  // namespace

ParameterBand parameter_band(const Steel& steel, Temperature t,
                             const std::vector<Quantity>& quantities,
                             const ParameterBandOptions& options) {
  const ParameterSet& set = *steel.parameters();
  const Numbers numbers = parameter_file::uncertain_numbers(set);
  check(numbers, options);
  internal::require_known(quantities, set);
  SensitivityOptions chosen_inputs;
  chosen_inputs.elements.emplace();
  for (const UncertainNumber& number : numbers)
    chosen_inputs.parameters.push_back(number.place);
  const Sensitivities slopes = sensitivities(steel, t, options.soak, chosen_inputs);
  ParameterBand band;
  band.nominal = slopes.state;
  band.percentiles = options.percentiles;
  band.samples_asked = options.samples;
  for (const UncertainNumber& number : numbers)
    band.inputs.push_back(
        input_of(set, number, band.usable() ? &slopes.at(number.place) : nullptr));
  if (!band.usable()) return band;
  std::vector<Quantity> chosen;
  for (const Quantity& q :
       quantities.empty() ? default_quantities(band.nominal) : quantities)
    chosen.push_back(internal::of_steel(q, steel.parameters()));
  internal::prepare_band(chosen, band);
  fill_first_orders(slopes, set, numbers, chosen, band);
  const internal::CorrelatedDraws draws(set, numbers, options.samples, options.seed);
  internal::SamplePlan plan;
  plan.soak = [&](std::span<const double> x) {
    return soak_with(steel, t, options.soak, numbers, x);
  };
  plan.point = [&](std::size_t sample) { return draws.at(sample); };
  plan.threads = options.threads;
  plan.progress = options.progress;
  internal::take_samples(plan, chosen, band);
  band.warnings = internal::parameter_warnings(numbers, band);
  for (const Quantity& quantity : chosen)
    internal::add_warnings(quantity, band.nominal, band.warnings);
  return band;
}

}  // namespace gibbsteel
