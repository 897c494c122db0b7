#include "gibbsteel/evidence.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

#include "internal/error_codes.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel {
namespace {

constexpr double kCarbon = 0.15, kOther = 0.5;  // [wt%]
constexpr double kPartOfCarbon = 0.1, kPartOfOther = 0.2;
constexpr double kKelvin = 75.0;
constexpr std::size_t kMostSoaks = 1000;

/// Eq. (V1) for one element.
double apart(const std::string& symbol, double a, double b) {
  const double larger = std::max(a, b);
  const double scale = symbol == "C" ? std::max(kCarbon, kPartOfCarbon * larger)
                                     : std::max(kOther, kPartOfOther * larger);
  return std::abs(a - b) / scale;
}

/// A measurement and how far it is; `index` keeps equals in the order of the file.
struct Near {
  Distance distance;
  std::size_t index;
};

bool same_soak(const Measurement& a, const Measurement& b) {
  return a.steel == b.steel && a.weight_percent == b.weight_percent &&
         a.temperature == b.temperature && a.soak.phases == b.soak.phases;
}

/// Nearest first, measurements of one soak together, so many soaks.
std::vector<Near> nearest(const Steel& steel, Temperature t,
                          const std::vector<RecordedMeasurement>& all,
                          std::size_t most_soaks) {
  std::vector<Near> found;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Measurement& m = all[i].measurement;
    found.push_back(
        {distance(steel.analysis().given, t, m.weight_percent, m.temperature), i});
  }
  const auto key = [&](const Near& n) {
    const Measurement& m = all[n.index].measurement;
    const double kelvin = m.temperature.in_kelvin();
    return std::tuple(n.distance.value, std::abs(kelvin - t.in_kelvin()), kelvin,
                      std::string_view(m.steel), n.index);
  };
  std::sort(found.begin(), found.end(),
            [&](const Near& a, const Near& b) { return key(a) < key(b); });
  std::size_t soaks = 0, end = 0;
  for (; end < found.size(); ++end) {
    const bool again = end > 0 && same_soak(all[found[end].index].measurement,
                                            all[found[end - 1].index].measurement);
    if (!again && ++soaks > most_soaks) break;
  }
  found.resize(end);
  return found;
}

EvidenceRow row_of(const RecordedMeasurement& recorded, Distance distance) {
  const Measurement& m = recorded.measurement;
  EvidenceRow row;
  row.steel = m.steel;
  row.record = m.record;
  row.source = recorded.source;
  row.confidence = recorded.confidence;
  row.remark = recorded.remark;
  row.weight_percent = m.weight_percent;
  row.temperature = m.temperature;
  row.distance = std::move(distance);
  row.quantity = m.quantity.name();
  row.unit = m.quantity.unit();
  row.value = m.value;
  row.uncertainty = m.uncertainty;
  row.from_memory = recorded.from_memory;
  row.fitted_to = recorded.fitted_to;
  return row;
}

State soaked(const Measurement& m, const Steel& like) {
  const SteelOptions options{m.steel, like.parameters(), like.binds_tramp_elements()};
  return Steel(m.weight_percent, options).soak(m.temperature, m.soak);
}

/// The number, or why there is none.
void compute(const Measurement& m, const ParameterSet& set, const State& state,
             EvidenceRow& row) {
  const auto problems = m.quantity.problems(set);
  if (!problems.empty()) {
    row.reason = problems.front().what;
  } else if (!state.usable()) {
    row.reason = "the calculation gave no usable result";
  } else {
    row.computed = m.quantity.value(state);
    if (std::isnan(row.computed)) row.reason = "there is none by the calculation";
  }
}

}  // namespace

Distance distance(const NamedValues& a, Temperature at_a, const NamedValues& b,
                  Temperature at_b) {
  Distance largest;
  const auto consider = [&](double value, const std::string& by) {
    if (value > largest.value) largest = {value, by};
  };
  for (const auto& [symbol, percent] : a)
    if (symbol != "Fe") consider(apart(symbol, percent, b[symbol]), symbol);
  for (const auto& [symbol, percent] : b)
    if (symbol != "Fe" && !a.contains(symbol))
      consider(apart(symbol, percent, 0.0), symbol);
  consider(std::abs(at_a.in_kelvin() - at_b.in_kelvin()) / kKelvin, "temperature");
  return largest;
}

Evidence evidence(const Steel& steel, Temperature t, const EvidenceOptions& options) {
  internal::check_temperatures({&t, 1}, options.temperature_unit);
  if (options.most_soaks < 1 || options.most_soaks > kMostSoaks)
    throw InputError({{std::string(codes::kEvidenceOption), "most_soaks",
                       "is " + std::to_string(options.most_soaks),
                       "give a whole number from 1 to " + std::to_string(kMostSoaks)}});
  const auto& all =
      options.measurements.empty() ? published_measurements() : options.measurements;
  Evidence result{steel.name(),
                  steel.analysis(),
                  steel.parameters()->title(),
                  t,
                  options.temperature_unit,
                  all.size(),
                  {}};
  std::optional<State> state;
  const Measurement* before = nullptr;
  for (auto& [distance, index] : nearest(steel, t, all, options.most_soaks)) {
    const Measurement& m = all[index].measurement;
    if (before == nullptr || !same_soak(*before, m)) state = soaked(m, steel);
    before = &m;
    result.rows.push_back(row_of(all[index], std::move(distance)));
    compute(m, *steel.parameters(), *state, result.rows.back());
  }
  return result;
}

Distance Evidence::nearest() const {
  return rows.empty() ? Distance{} : rows.front().distance;
}

std::size_t Evidence::computed() const {
  return static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(),
                    [](const EvidenceRow& row) { return row.reason.empty(); }));
}

std::size_t Evidence::met() const {
  return static_cast<std::size_t>(std::count_if(
      rows.begin(), rows.end(), [](const EvidenceRow& row) { return row.met(); }));
}

}  // namespace gibbsteel
