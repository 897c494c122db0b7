#include "long/conditions.hpp"

#include <cmath>

#include "internal/number_format.hpp"

namespace gibbsteel::long_run {
namespace {

using testing::Band;
using testing::RandomSteel;

constexpr Band kSoaks{700.0, 1250.0};
constexpr Band kAccepted{27.0, 2226.0};
constexpr double kManyTraces = 0.5;
constexpr std::size_t kIndependent = 4, kNear = 3;

std::vector<double> percents_of(const RandomSteel& steel) {
  return {steel.weight_percent.begin() + 1, steel.weight_percent.end()};
}

/// Another one of the same elements.
RandomSteel redrawn(const ParameterSet& set, const RandomSteel& steel, double traces,
                    std::mt19937_64& random) {
  std::vector<double> percents;
  for (std::size_t e = 1; e < steel.elements.size(); ++e)
    percents.push_back(
        testing::draw_percent(*set.find_range(steel.elements[e]), traces, random));
  return testing::steel_of(set, steel.elements, percents, steel.celsius);
}

RandomSteel near(const ParameterSet& set, const RandomSteel& steel,
                 std::mt19937_64& random) {
  std::uniform_real_distribution<double> factor(0.9, 1.1);
  auto percents = percents_of(steel);
  for (double& percent : percents) percent *= factor(random);
  return testing::steel_of(set, steel.elements, percents, steel.celsius);
}

RandomSteel mixture(const ParameterSet& set, const RandomSteel& a, const RandomSteel& b,
                    std::mt19937_64& random) {
  std::uniform_real_distribution<double> share(0.05, 0.95);
  const double of_b = share(random);
  auto percents = percents_of(a);
  for (std::size_t e = 0; e < percents.size(); ++e)
    percents[e] = std::lerp(percents[e], b.weight_percent[e + 1], of_b);
  return testing::steel_of(set, a.elements, percents, a.celsius);
}

std::vector<double> temperatures(std::size_t number, std::mt19937_64& random) {
  std::uniform_real_distribution<double> u(0.0, 1.0);
  double low = kAccepted.low, length = kAccepted.high - kAccepted.low;
  if (number % 10 != 8) {
    length = 5.0 * std::pow(100.0, u(random));
    low = kSoaks.low + (kSoaks.high - kSoaks.low - length) * u(random);
  }
  std::vector<double> values;
  for (std::size_t k = 0; k < kLinePoints; ++k)
    values.push_back(low + length * static_cast<double>(k) / (kLinePoints - 1));
  return values;
}

}  // namespace

const char* to_string(Draw draw) noexcept {
  switch (draw) {
    case Draw::soaks:
      return "soaks";
    case Draw::all_temperatures:
      return "any T";
    case Draw::many_traces:
      return "traces";
  }
  return "";
}

Group group(const ParameterSet& set, std::size_t number) {
  std::mt19937_64 random(20271u + 977u * number);
  const std::size_t kind = number % 10;
  Group result;
  result.draw = kind < 6   ? Draw::soaks
                : kind < 8 ? Draw::all_temperatures
                           : Draw::many_traces;
  const Band band = kind < 6 || kind == 8 ? kSoaks : kAccepted;
  const double traces = kind < 8 ? testing::kUsualTraces : kManyTraces;
  auto& steels = result.steels;
  steels.push_back(testing::draw(set, band, random, traces));
  while (steels.size() < kIndependent)
    steels.push_back(redrawn(set, steels[0], traces, random));
  for (std::size_t k = 0; k < kNear; ++k)
    steels.push_back(near(set, steels[k], random));
  for (std::size_t k = 0; steels.size() < kGroupSize; ++k)
    steels.push_back(mixture(set, steels[k], steels[k + 1], random));
  return result;
}

Line line(const ParameterSet& set, std::size_t number) {
  std::mt19937_64 random(40961u + 977u * number);
  const RandomSteel drawn = testing::draw(set, kSoaks, random);
  Line result;
  result.steel = Steel(weight_percent(drawn));
  if (number % 2 == 0) {
    result.values = temperatures(number, random);
    return result;
  }
  const std::size_t e = 1 + random() % (drawn.elements.size() - 1);
  result.element = drawn.elements[e];
  result.celsius = drawn.celsius;
  constexpr double kIronLeft = 10.0;
  const double most =
      std::min(set.find_range(result.element)->high,
               drawn.weight_percent[e] + drawn.weight_percent[0] - kIronLeft);
  for (std::size_t k = 0; k < kLinePoints; ++k)
    result.values.push_back(most *
                            std::max(1e-9, static_cast<double>(k) / (kLinePoints - 1)));
  return result;
}

NamedValues weight_percent(const RandomSteel& steel) {
  NamedValues percents;
  for (std::size_t e = 1; e < steel.elements.size(); ++e)
    percents.set(steel.elements[e], steel.weight_percent[e]);
  return percents;
}

std::string text(const RandomSteel& steel) {
  std::string text;
  for (const auto& [symbol, percent] : weight_percent(steel))
    text += symbol + " " + internal::significant(percent, 3) + " ";
  return text + "at " + internal::fixed(steel.celsius, 1) + " C";
}

}  // namespace gibbsteel::long_run
