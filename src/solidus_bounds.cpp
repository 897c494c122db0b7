#include "internal/solidus_bounds.hpp"

#include <algorithm>
#include <cmath>

namespace gibbsteel::internal {
namespace {

constexpr double kRounding = 1e-9;
constexpr double kHighSpeed = 4.0;    ///< Mo + W/2 from which a steel is one [wt%]
constexpr double kMostCobalt = 10.0;  ///< [weight percent]
constexpr double kForCarbon = 150.0;  ///< [K per weight percent]

bool is_near(const std::string& symbol, double known, double given) {
  const double more = given - known;
  if (symbol == "C") return more >= -0.15 - kRounding && more <= 0.5 + kRounding;
  return std::abs(more) <= std::max(0.5, 0.2 * known) + kRounding;
}

NamedValues composition(const SolidusBound& bound) {
  NamedValues known;
  for (const auto& [symbol, percent] : bound.weight_percent) known.set(symbol, percent);
  return known;
}

bool is_near_in_cobalt(const NamedValues& known, const NamedValues& given) {
  return is_near("Co", known["Co"], given["Co"]);
}

bool may_leave_out_cobalt(const NamedValues& known, const NamedValues& given) {
  return known["Mo"] + 0.5 * known["W"] >= kHighSpeed &&
         given["Co"] <= kMostCobalt + kRounding;
}

bool is_near_apart_from_cobalt(const NamedValues& known, const NamedValues& given) {
  for (const NamedValues* each : {&known, &given})
    for (const auto& [symbol, percent] : *each)
      if (symbol != "Fe" && symbol != "Co" &&
          !is_near(symbol, known[symbol], given[symbol]))
        return false;
  return true;
}

}  // namespace

bool resembles(const SolidusBound& bound, const NamedValues& weight_percent) {
  const NamedValues known = composition(bound);
  return is_near_apart_from_cobalt(known, weight_percent) &&
         (is_near_in_cobalt(known, weight_percent) ||
          may_leave_out_cobalt(known, weight_percent));
}

std::vector<const SolidusBound*> resembling(const std::vector<SolidusBound>& bounds,
                                            const NamedValues& weight_percent) {
  std::vector<const SolidusBound*> all, near;
  for (const SolidusBound& bound : bounds) {
    if (!resembles(bound, weight_percent)) continue;
    all.push_back(&bound);
    if (is_near_in_cobalt(composition(bound), weight_percent)) near.push_back(&bound);
  }
  return near.empty() ? all : near;
}

bool is_seen(const SolidusBound& bound) {
  return bound.sense != SolidusSense::at_least;
}

double sooner_by_carbon(const SolidusBound& bound, const NamedValues& weight_percent) {
  if (is_seen(bound)) return 0.0;
  return kForCarbon * std::max(0.0, weight_percent["C"] - composition(bound)["C"]);
}

double least_solidus(const SolidusBound& bound, const NamedValues& weight_percent) {
  return bound.celsius - bound.uncertainty - sooner_by_carbon(bound, weight_percent);
}

bool weighs_more(const SolidusBound& a, const SolidusBound& b,
                 const NamedValues& weight_percent) {
  if (is_seen(a) != is_seen(b)) return is_seen(a);
  return least_solidus(a, weight_percent) < least_solidus(b, weight_percent);
}

}  // namespace gibbsteel::internal
