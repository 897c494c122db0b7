#include "internal/computed_measurements.hpp"

#include <cmath>
#include <optional>

#include "gibbsteel/errors.hpp"
#include "internal/parallel_for.hpp"
#include "internal/short_soak_quantity.hpp"

namespace gibbsteel::internal {
namespace {

/// The soak, or why there is none: a file may hold what this set cannot soak.
struct Soaked {
  std::optional<State> state{};
  std::string reason{};
};

Soaked soaked(const Measurement& m, const SharedParameters& set,
              bool bind_tramp_elements) {
  try {
    const Steel steel(m.weight_percent, {m.steel, set, bind_tramp_elements});
    return {steel.soak(m.temperature, m.soak), ""};
  } catch (const InputError& error) {
    const Problem& first = error.problems().front();
    return {std::nullopt, first.place + " " + first.what};
  }
}

ComputedMeasurement computed(const Quantity& quantity, const ParameterSet& set,
                             const Soaked& soaked) {
  const auto problems = quantity.problems(set);
  if (!problems.empty()) return {Occurrence::kUnknown, problems.front().what};
  if (!soaked.state) return {Occurrence::kUnknown, soaked.reason};
  if (!soaked.state->usable())
    return {Occurrence::kUnknown, "the calculation gave no usable result"};
  const double value = quantity.value(*soaked.state);
  return {value, std::isnan(value) ? "there is none by the calculation" : ""};
}

}  // namespace

std::vector<ComputedMeasurement> computed_measurements(
    const std::vector<const Measurement*>& measurements, const SharedParameters& set,
    bool bind_tramp_elements, std::size_t threads) {
  std::vector<const Measurement*> distinct;
  std::vector<std::size_t> soak_of;
  for (const Measurement* m : measurements) {
    // The latest first: those of one soak often stand side by side.
    std::size_t i = distinct.size();
    while (i > 0 && !same_soak(*distinct[i - 1], *m)) --i;
    if (i == 0) distinct.push_back(m);
    soak_of.push_back(i == 0 ? distinct.size() - 1 : i - 1);
  }
  std::vector<Soaked> soaks(distinct.size());
  parallel_for(distinct.size(), threads, [&](std::size_t i) {
    soaks[i] = soaked(*distinct[i], set, bind_tramp_elements);
  });
  std::vector<ComputedMeasurement> result;
  for (std::size_t i = 0; i < measurements.size(); ++i)
    result.push_back(
        computed(of_steel(measurements[i]->quantity, set), *set, soaks[soak_of[i]]));
  return result;
}

}  // namespace gibbsteel::internal
