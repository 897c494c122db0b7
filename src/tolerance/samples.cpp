#include "tolerance/samples.hpp"

#include <algorithm>
#include <cmath>

#include "internal/parallel_for.hpp"
#include "internal/short_soak_quantity.hpp"
#include "tolerance/sample_statistics.hpp"

namespace gibbsteel::internal {
namespace {

/// Soaks between two calls of `progress`; no result depends on it.
constexpr std::size_t kBatch = 32;

std::vector<std::string> kinds_in(const State& state) {
  std::vector<std::string> kinds;
  for (const Occurrence& o : state.occurrences)
    if (std::find(kinds.begin(), kinds.end(), o.kind) == kinds.end())
      kinds.push_back(o.kind);
  return kinds;
}

/// Number of usable samples that hold each kind, in `share` for the time being.
void count_kinds(const std::vector<std::string>& kinds,
                 std::vector<PhaseShare>& phases) {
  for (const std::string& kind : kinds) {
    auto known = std::find_if(phases.begin(), phases.end(),
                              [&](const PhaseShare& p) { return p.kind == kind; });
    if (known == phases.end()) known = phases.insert(known, {kind, false, 0.0});
    known->share += 1.0;
  }
}

void keep(const std::vector<double>& point, const SampleNumbers& numbers, Band& band) {
  band.sample_inputs.insert(band.sample_inputs.end(), point.begin(), point.end());
  band.sample_values.insert(band.sample_values.end(), numbers.values.begin(),
                            numbers.values.end());
  ++band.samples;
  if (numbers.trouble.empty())
    count_kinds(numbers.kinds, band.phases);
  else
    band.unusable.push_back({point, numbers.trouble});
}

/// The column of a table stored row by row.
std::vector<double> column_of(const std::vector<double>& table, std::size_t column,
                              std::size_t columns) {
  std::vector<double> values;
  for (std::size_t at = column; at < table.size(); at += columns)
    values.push_back(table[at]);
  return values;
}

void summarize(std::size_t q, Band& band) {
  const auto all = column_of(band.sample_values, q, band.quantities.size());
  QuantityBand& quantity = band.quantities[q];
  const auto known_of = [&](const std::vector<double>& column) {
    std::vector<double> known;
    for (std::size_t i = 0; i < all.size(); ++i)
      if (!std::isnan(all[i])) known.push_back(column[i]);
    return known;
  };
  std::vector<double> values = known_of(all);
  for (std::size_t i = 0; i < band.inputs.size(); ++i)
    quantity.contributions[i].sampled_share = squared_correlation(
        known_of(column_of(band.sample_inputs, i, band.inputs.size())), values);
  std::sort(values.begin(), values.end());
  SampledBand& sampled = quantity.sampled;
  sampled.count = values.size();
  sampled.mean = mean_of(values);
  sampled.standard_deviation = deviation_of(values);
  for (const double percent : band.percentiles)
    sampled.percentiles.push_back(percentile_of(values, percent));
  if (values.empty()) return;
  sampled.lowest = values.front();
  sampled.highest = values.back();
}

double value_of(const Quantity& quantity, const State& state,
                const SharedParameters& set) {
  return set ? of_set(quantity, set).value(state) : quantity.value(state);
}

}  // namespace

std::vector<SampleNumbers> numbers_at(const SoakAt& soak,
                                      const std::vector<std::vector<double>>& points,
                                      const std::vector<Quantity>& quantities,
                                      std::size_t threads) {
  std::vector<SampleSoak> soaks(points.size());
  parallel_for(points.size(), threads,
               [&](std::size_t i) { soaks[i] = soak(points[i]); });
  std::vector<SampleNumbers> all;
  for (const auto& [state, trouble, set] : soaks) {
    SampleNumbers numbers{{}, kinds_in(state), trouble};
    for (const Quantity& quantity : quantities)
      numbers.values.push_back(trouble.empty() ? value_of(quantity, state, set)
                                               : Occurrence::kUnknown);
    all.push_back(std::move(numbers));
  }
  return all;
}

void prepare_band(const std::vector<Quantity>& quantities, Band& band) {
  for (const Quantity& quantity : quantities) {
    QuantityBand& q = band.quantities.emplace_back();
    q.name = quantity.name();
    q.unit = quantity.unit();
    q.nominal = quantity.value(band.nominal);
    for (const TolerancedInput& input : band.inputs)
      q.contributions.emplace_back().input = input.name;
  }
  for (const std::string& kind : kinds_in(band.nominal))
    band.phases.push_back({kind, true, 0.0});
}

void take_samples(const SamplePlan& plan, const std::vector<Quantity>& quantities,
                  Band& band) {
  while (band.samples < band.samples_asked && !band.cancelled) {
    std::vector<std::vector<double>> points;
    const std::size_t end = std::min(band.samples + kBatch, band.samples_asked);
    for (std::size_t row = band.samples; row < end; ++row)
      points.push_back(plan.point(row));
    const auto numbers = numbers_at(plan.soak, points, quantities, plan.threads);
    for (std::size_t i = 0; i < points.size(); ++i) keep(points[i], numbers[i], band);
    const bool more = band.samples < band.samples_asked || plan.more_to_come;
    if (plan.progress && !plan.progress(band.samples) && more) band.cancelled = true;
  }
  const auto usable = static_cast<double>(band.samples - band.unusable.size());
  for (PhaseShare& phase : band.phases)
    phase.share = usable > 0.0 ? phase.share / usable : Occurrence::kUnknown;
  for (std::size_t q = 0; q < band.quantities.size(); ++q) summarize(q, band);
}

}  // namespace gibbsteel::internal
