#include "gibbsteel/evidence.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string_view>
#include <tuple>
#include <utility>

#include "internal/computed_measurements.hpp"
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

/// Measurements of one soak, by their places in the file, and how far it is.
struct Group {
  Distance distance;
  double kelvin_apart;
  std::vector<std::size_t> members;
};

using Recorded = std::vector<RecordedMeasurement>;

/// Places of all, those of one soak side by side, else in the order of the file.
std::vector<std::size_t> by_soak(const Recorded& all) {
  std::vector<std::size_t> places(all.size());
  std::iota(places.begin(), places.end(), std::size_t{0});
  const auto key = [&](std::size_t i) {
    const Measurement& m = all[i].measurement;
    return std::tuple(std::string_view(m.steel), m.temperature.in_kelvin());
  };
  const auto rest = [&](std::size_t i) {
    const Measurement& m = all[i].measurement;
    const std::vector<NamedValues::Entry> percents(m.weight_percent.begin(),
                                                   m.weight_percent.end());
    return std::pair(percents, m.soak.phases);
  };
  std::stable_sort(places.begin(), places.end(), [&](std::size_t a, std::size_t b) {
    const auto first = key(a), second = key(b);
    return first != second ? first < second : rest(a) < rest(b);
  });
  return places;
}

/// Nearest first, so many soaks.
std::vector<Group> nearest(const Steel& steel, Temperature t, const Recorded& all,
                           std::size_t most_soaks) {
  std::vector<Group> groups;
  for (const std::size_t i : by_soak(all)) {
    const Measurement& m = all[i].measurement;
    const bool again =
        !groups.empty() && same_soak(all[groups.back().members.back()].measurement, m);
    if (!again)
      groups.push_back(
          {distance(steel.analysis().given, t, m.weight_percent, m.temperature),
           std::abs(m.temperature.in_kelvin() - t.in_kelvin()),
           {}});
    groups.back().members.push_back(i);
  }
  const auto key = [](const Group& g) {
    return std::tuple(g.distance.value, g.kelvin_apart, g.members.front());
  };
  std::sort(groups.begin(), groups.end(),
            [&](const Group& a, const Group& b) { return key(a) < key(b); });
  groups.resize(std::min(groups.size(), most_soaks));
  return groups;
}

EvidenceRow row_of(const RecordedMeasurement& recorded, const Distance& distance) {
  const Measurement& m = recorded.measurement;
  EvidenceRow row;
  row.steel = m.steel;
  row.record = m.record;
  row.source = recorded.source;
  row.confidence = recorded.confidence;
  row.remark = recorded.remark;
  row.weight_percent = m.weight_percent;
  row.temperature = m.temperature;
  row.distance = distance;
  row.phases = m.soak.phases;
  row.quantity = m.quantity.name();
  row.unit = m.quantity.unit();
  row.value = m.value;
  row.uncertainty = m.uncertainty;
  row.from_memory = recorded.from_memory;
  row.fitted_to = recorded.fitted_to;
  row.by_hardening = m.quantity.by_family();
  return row;
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
  const Recorded& all =
      options.measurements ? *options.measurements : published_measurements();
  Evidence result{steel.name(),
                  steel.analysis(),
                  steel.parameters()->title(),
                  t,
                  options.temperature_unit,
                  all.size(),
                  {}};
  std::vector<const Measurement*> shown;
  for (const Group& group : nearest(steel, t, all, options.most_soaks))
    for (const std::size_t i : group.members) {
      result.rows.push_back(row_of(all[i], group.distance));
      shown.push_back(&all[i].measurement);
    }
  const auto computed = internal::computed_measurements(
      shown, steel.parameters(), steel.binds_tramp_elements(), 1);
  for (std::size_t i = 0; i < computed.size(); ++i) {
    result.rows[i].computed = computed[i].value;
    result.rows[i].reason = computed[i].reason;
  }
  return result;
}

Distance Evidence::nearest() const {
  return rows.empty() ? Distance{} : rows.front().distance;
}

std::size_t Evidence::computed(double up_to) const {
  return static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [&](const EvidenceRow& row) {
        return row.reason.empty() && row.distance.value <= up_to;
      }));
}

std::size_t Evidence::met(double up_to) const {
  return static_cast<std::size_t>(
      std::count_if(rows.begin(), rows.end(), [&](const EvidenceRow& row) {
        return row.met() && row.distance.value <= up_to;
      }));
}

}  // namespace gibbsteel
