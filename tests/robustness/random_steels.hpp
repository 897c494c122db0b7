#pragma once
/// Random steels inside the validity range of the shipped file, the same ones for every
/// test that draws them.

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::testing {

/// Temperatures to draw from.
struct Band {
  double low, high;  ///< [C]
};

struct RandomSteel {
  std::vector<std::string> elements;
  std::vector<double> x;               ///< mole fractions
  std::vector<double> weight_percent;  ///< sum 100
  double celsius;
};

/// Share of the weight percents that are traces.
inline constexpr double kUsualTraces = 0.15;

/// Weight percent uniform within the validity range; a trace is down to 1e-9 of it.
inline double draw_percent(const ElementRange& range, double traces,
                           std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(0.0, 1.0);
  return range.high *
         (u(random) < traces ? std::pow(10.0, -9.0 * u(random)) : u(random));
}

/// @param elements  Fe first
/// @param percents  of the others; Fe is the balance, but no less than 20 of what then
///                  is more than 100 together
inline RandomSteel steel_of(const ParameterSet& set, std::vector<std::string> elements,
                            const std::vector<double>& percents, double celsius) {
  RandomSteel steel{std::move(elements), {0.0}, {0.0}, celsius};
  double iron = 100.0;
  for (std::size_t e = 0; e < percents.size(); ++e) {
    iron -= percents[e];
    steel.x.push_back(percents[e] /
                      set.find_element(steel.elements[e + 1])->molar_mass);
    steel.weight_percent.push_back(percents[e]);
  }
  steel.weight_percent[0] = std::max(iron, 20.0);
  steel.x[0] = steel.weight_percent[0] / set.find_element("Fe")->molar_mass;
  double sum = 0.0, mass = 0.0;
  for (const double x : steel.x) sum += x;
  for (double& x : steel.x) x /= sum;
  for (const double w : steel.weight_percent) mass += w;
  for (double& w : steel.weight_percent) w *= 100.0 / mass;
  return steel;
}

/// 4 to 10 elements with a share of traces.
inline RandomSteel draw(const ParameterSet& set, const Band& band,
                        std::mt19937_64& random, double traces = kUsualTraces) {
  std::uniform_real_distribution<double> u(0.0, 1.0);
  std::vector<ElementRange> others;
  for (const auto& range : set.validity)
    if (range.symbol != "C") others.push_back(range);
  std::shuffle(others.begin(), others.end(), random);
  others.resize(2 + static_cast<std::size_t>(7.0 * u(random)));
  others.push_back(*set.find_range("C"));
  const double celsius = band.low + (band.high - band.low) * u(random);
  std::vector<std::string> elements{"Fe"};
  std::vector<double> percents;
  for (const auto& range : others) {
    elements.push_back(range.symbol);
    percents.push_back(draw_percent(range, traces, random));
  }
  return steel_of(set, std::move(elements), percents, celsius);
}

/// All phases of a set but graphite.
inline std::vector<std::string> phases_without_graphite(const ParameterSet& set) {
  std::vector<std::string> phases;
  for (const Phase& phase : set.phases)
    if (phase.name != "graphite") phases.push_back(phase.name);
  return phases;
}

}  // namespace gibbsteel::testing
