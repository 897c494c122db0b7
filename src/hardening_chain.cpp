#include "internal/hardening_chain.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardness_scale.hpp"
#include "internal/carbide_vickers.hpp"
#include "internal/number_format.hpp"
#include "internal/rockwell_scale.hpp"
#include "property_equations/builtin.hpp"

namespace gibbsteel {
namespace internal {
namespace {

constexpr double kMostCarbide = 0.12;  ///< volume fraction that counts for hardness

void check_numbers(const State& state, const HardeningOptions& options,
                   std::vector<Problem>& problems) {
  const double coldest = options.coldest.in_celsius();
  const auto above_zero = [&](const char* code, const char* place, double value,
                              const char* remedy) {
    if (!(value > 0.0) || std::isinf(value))
      problems.push_back({code, place, "is " + shortest(value), remedy});
  };
  if (!std::isfinite(coldest) || options.coldest.in_kelvin() < 0.0)
    problems.push_back({"gibbsteel.input.243", "coldest temperature",
                        "is " + shortest(coldest) + " C",
                        "give the temperature that the quench reaches, for instance "
                        "20 C or -75 C"});
  else if (options.coldest >= state.temperature)
    problems.push_back({"gibbsteel.input.243", "coldest temperature",
                        "is " + fixed(coldest, 0) + " C, not below the soak at " +
                            fixed(state.temperature.in_celsius(), 0) + " C",
                        "give the temperature that the quench reaches"});
  if (options.particle_diameter)
    above_zero("gibbsteel.input.244", "particle diameter", *options.particle_diameter,
               "give the mean diameter in micrometres, for instance 0.5");
  above_zero("gibbsteel.input.245", "cooling rate", options.cooling_rate,
             "give C/h at 700 C, for instance 36000");
}

/// Runs `part`; its problems join the list instead of leaving.
template <typename Part>
void collect(std::vector<Problem>& problems, const Part& part) {
  try {
    part();
  } catch (const InputError& error) {
    problems.insert(problems.end(), error.problems().begin(), error.problems().end());
  }
}

void choose_start(const HardeningOptions& options, HardeningChoice& choice) {
  choice.start =
      options.equations.at(PropertyKind::martensite_start,
                           options.martensite_start.value_or("exponential-mean"));
  choice.start_error = choice.start.error;
  if (options.martensite_start) return;
  choice.offset = mixed(choice.shares, &HardeningFamily::start_offset);
  choice.start_error = mixed_error(choice.shares, &HardeningFamily::start_offset,
                                   &HardeningFamily::start_error);
}

void choose_hardness(const HardeningOptions& options, HardeningChoice& choice) {
  choice.hardness =
      options.equations.at(PropertyKind::martensite_hardness,
                           options.martensite_hardness.value_or("carbon-quadratic"));
  choice.hardness_error = choice.hardness.error;
  if (options.martensite_hardness) return;
  choice.hardness_offset = mixed(choice.shares, &HardeningFamily::hardness_offset);
  choice.hardness_error = mixed_error(choice.shares, &HardeningFamily::hardness_offset,
                                      &HardeningFamily::hardness_error);
}

void choose_austenite(const HardeningOptions& options, HardeningChoice& choice) {
  if (options.retained_austenite) {
    choice.austenite = options.equations.at(PropertyKind::retained_austenite,
                                            *options.retained_austenite);
    choice.austenite_error = choice.austenite.error;
    return;
  }
  choice.rate = mixed(choice.shares, &HardeningFamily::transformation_rate);
  choice.austenite = koistinen_marburger(choice.rate.value);
  choice.austenite_error = mixed(choice.shares, &HardeningFamily::retained_error).value;
}

void choose_family(const State& state, const HardeningOptions& options,
                   const StateSlope* slope, HardeningChoice& choice) {
  if (options.family) {
    choice.family = hardening_family(*options.family);
    choice.shares = {{&hardening_family(*options.family), {1.0, 0.0}}};
    return;
  }
  choice.family = hardening_family_of(state.analysis.modelled);
  choice.shares =
      family_shares(state.analysis.modelled, slope ? &slope->input : nullptr);
}

PropertyInput input_of(const HardeningBasis& basis, const HardeningChoice& choice) {
  PropertyInput input;
  input.weight_percent = basis.weight_percent;
  input.coldest_celsius = choice.coldest_celsius;
  input.cooling_rate = choice.cooling_rate;
  return input;
}

/// Value of an equation, and its derivative along those of its inputs.
Along along(const PropertyEquation& equation, const PropertyInput& input,
            const NamedValues& weight_percent_slope, double start_slope) {
  Along result{equation.value(input), 0.0};
  if (weight_percent_slope.empty()) return result;
  const PropertySlope slope = equation.slope_at(input);
  result.slope = slope.martensite_start * start_slope;
  for (const auto& [symbol, factor] : slope.weight_percent)
    result.slope += factor * weight_percent_slope[symbol];
  return result;
}

}  // namespace

HardeningChoice choose(const State& state, const HardeningOptions& options,
                       const StateSlope* slope) {
  HardeningChoice choice;
  std::vector<Problem> problems;
  collect(problems, [&] { choose_family(state, options, slope, choice); });
  collect(problems, [&] { choose_start(options, choice); });
  collect(problems, [&] { choose_austenite(options, choice); });
  collect(problems, [&] { choose_hardness(options, choice); });
  collect(problems, [&] {
    choice.pinning = options.equations.at(PropertyKind::grain_pinning,
                                          options.grain_pinning.value_or("hillert"));
  });
  check_numbers(state, options, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  choice.coldest_celsius = options.coldest.in_celsius();
  choice.cooling_rate = options.cooling_rate;
  return choice;
}

HardeningBasis hardening_basis(const State& state, const StateSlope* slope) {
  HardeningBasis basis;
  for (const Occurrence& o : state.occurrences)
    if (std::isnan(o.volume_percent)) basis.by_mass = true;
  const auto amount =
      basis.by_mass ? &Occurrence::mass_percent : &Occurrence::volume_percent;
  Along hardness;
  for (std::size_t i = 0; i < state.occurrences.size(); ++i) {
    const Occurrence& o = state.occurrences[i];
    const Along share =
        0.01 * Along{o.*amount, slope ? slope->occurrences[i].*amount : 0.0};
    if (o.role == Role::matrix) basis.matrix = basis.matrix + share;
    if (o.role == Role::carbide) {
      basis.carbide = basis.carbide + share;
      hardness = hardness + carbide_vickers(o.kind) * share;
    }
    if (o.kind != "austenite") continue;
    basis.austenite = basis.austenite + share;
    if (basis.austenite_present) continue;  // the largest decides the composition
    basis.austenite_present = true;
    basis.weight_percent = o.weight_percent;
    if (slope) basis.weight_percent_slope = slope->occurrences[i].weight_percent;
  }
  if (basis.carbide.value > 0.0) basis.carbide_hardness = hardness / basis.carbide;
  return basis;
}

Along martensite_start(const HardeningBasis& basis, const HardeningChoice& choice) {
  const Along start =
      along(choice.start, input_of(basis, choice), basis.weight_percent_slope, 0.0);
  return start + choice.offset;
}

Along retained_fraction(const HardeningBasis& basis, const HardeningChoice& choice,
                        Along start) {
  PropertyInput input = input_of(basis, choice);
  input.martensite_start = start.value;
  Along left = along(choice.austenite, input, basis.weight_percent_slope, start.slope);
  const double below = start.value - choice.coldest_celsius;
  if (choice.rate.slope != 0.0 && left.value < 1.0)
    left.slope -= left.value * below * choice.rate.slope;
  return left;
}

Along martensite_hardness(const HardeningBasis& basis, const HardeningChoice& choice) {
  return along(choice.hardness, input_of(basis, choice), basis.weight_percent_slope,
               0.0);
}

HardnessPair hardness(const HardeningBasis& basis, const HardeningChoice& choice,
                      Along martensite, Along retained) {
  const Along share = basis.austenite / basis.matrix;
  const Along quenched = (1.0 - retained) * martensite + kAusteniteHardness * retained;
  const Along mixed = share * quenched + kFerriteHardness * (1.0 - share);
  const Along counted =
      basis.carbide.value < kMostCarbide ? basis.carbide : Along{kMostCarbide, 0.0};
  // The offset belongs to martensite: it fades where less than half transforms.
  const Along transformed = 1.0 - retained;
  const Along fading = transformed.value < 0.5 ? 2.0 * transformed : Along{1.0, 0.0};
  const Along offset = choice.hardness_offset * (share * fading);
  return {mixed + offset,
          (1.0 - counted) * mixed + counted * basis.carbide_hardness + offset};
}

Along rockwell(Along hv) {
  const double hrc = rockwell_of(hv.value);
  if (!(hrc >= kRockwellFrom)) return {Estimate::kUnknown, Estimate::kUnknown};
  return {hrc, hv.slope * rockwell_slope(hv.value)};
}

}  // namespace internal

double quenched_hardness(double martensite, double austenite, double carbide,
                         double carbide_hv) {
  if (!internal::is_mixture(martensite, austenite, carbide, carbide_hv))
    return std::numeric_limits<double>::quiet_NaN();
  internal::HardeningBasis basis;
  basis.austenite = basis.matrix = {1.0, 0.0};
  basis.carbide = {carbide, 0.0};
  basis.carbide_hardness = {carbide_hv, 0.0};
  return internal::hardness(basis, {}, {martensite, 0.0}, {austenite, 0.0})
      .mean()
      .value;
}

}  // namespace gibbsteel
