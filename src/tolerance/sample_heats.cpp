#include "tolerance/sample_heats.hpp"

#include <algorithm>
#include <cmath>

#include "internal/parallel_for.hpp"
#include "tolerance/input_distribution.hpp"
#include "tolerance/sample_statistics.hpp"
#include "tolerance/sobol_points.hpp"

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

void keep(const std::vector<double>& point, const HeatNumbers& numbers,
          ToleranceBand& band) {
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

void summarize(std::size_t q, ToleranceBand& band) {
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

}  // namespace

std::vector<HeatNumbers> numbers_at(const HeatSoaks& heats,
                                    const std::vector<std::vector<double>>& points,
                                    const std::vector<Quantity>& quantities,
                                    std::size_t threads) {
  std::vector<HeatSoak> soaks(points.size());
  parallel_for(points.size(), threads,
               [&](std::size_t i) { soaks[i] = heats.at(points[i]); });
  std::vector<HeatNumbers> all;
  for (const auto& [state, trouble] : soaks) {
    HeatNumbers numbers{{}, kinds_in(state), trouble};
    for (const Quantity& quantity : quantities)
      numbers.values.push_back(trouble.empty() ? quantity.value(state)
                                               : Occurrence::kUnknown);
    all.push_back(std::move(numbers));
  }
  return all;
}

void take_samples(const HeatSoaks& heats, const std::vector<Quantity>& quantities,
                  const ToleranceOptions& options, ToleranceBand& band) {
  const std::size_t columns = band.inputs.size();
  const auto unit = sobol_points(options.samples, columns, options.seed);
  while (band.samples < options.samples && !band.cancelled) {
    std::vector<std::vector<double>> points;
    const std::size_t end = std::min(band.samples + kBatch, options.samples);
    for (std::size_t row = band.samples; row < end; ++row) {
      std::vector<double> point;
      for (std::size_t i = 0; i < columns; ++i)
        point.push_back(quantile_of(band.inputs[i], unit[row * columns + i]));
      points.push_back(std::move(point));
    }
    const auto numbers = numbers_at(heats, points, quantities, options.threads);
    for (std::size_t i = 0; i < points.size(); ++i) keep(points[i], numbers[i], band);
    const bool more = band.samples < options.samples || options.corners;
    if (options.progress && !options.progress(band.samples) && more)
      band.cancelled = true;
  }
  const auto usable = static_cast<double>(band.samples - band.unusable.size());
  for (PhaseShare& phase : band.phases)
    phase.share = usable > 0.0 ? phase.share / usable : Occurrence::kUnknown;
}

void summarize_samples(ToleranceBand& band) {
  for (std::size_t q = 0; q < band.quantities.size(); ++q) summarize(q, band);
}

}  // namespace gibbsteel::internal
