#include "internal/hardening_chain.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardness_scale.hpp"
#include "internal/carbide_vickers.hpp"
#include "internal/family_mix.hpp"
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
  choice.offset = options.martensite_start ? 0.0 : choice.family.start_offset;
  choice.start_error =
      options.martensite_start ? choice.start.error : choice.family.start_error;
}

void choose_hardness(const HardeningOptions& options, HardeningChoice& choice) {
  choice.hardness =
      options.equations.at(PropertyKind::martensite_hardness,
                           options.martensite_hardness.value_or("carbon-quadratic"));
  choice.hardness_offset =
      options.martensite_hardness ? 0.0 : choice.family.hardness_offset;
  choice.hardness_error = options.martensite_hardness ? choice.hardness.error
                                                      : choice.family.hardness_error;
}

void choose_austenite(const HardeningOptions& options, HardeningChoice& choice) {
  choice.austenite = options.retained_austenite
                         ? options.equations.at(PropertyKind::retained_austenite,
                                                *options.retained_austenite)
                         : koistinen_marburger(choice.family.transformation_rate);
  choice.austenite_error = options.retained_austenite ? choice.austenite.error
                                                      : choice.family.retained_error;
}

HardeningChoice choice_of(const HardeningFamily& family,
                          const HardeningOptions& options,
                          std::vector<Problem>& problems) {
  HardeningChoice choice;
  choice.family = family;
  // Of the same options every family has the same problems.
  std::vector<Problem> found;
  collect(found, [&] { choose_start(options, choice); });
  collect(found, [&] { choose_austenite(options, choice); });
  collect(found, [&] { choose_hardness(options, choice); });
  collect(found, [&] {
    choice.pinning = options.equations.at(PropertyKind::grain_pinning,
                                          options.grain_pinning.value_or("hillert"));
  });
  for (Problem& problem : found)
    if (std::find(problems.begin(), problems.end(), problem) == problems.end())
      problems.push_back(std::move(problem));
  choice.coldest_celsius = options.coldest.in_celsius();
  choice.cooling_rate = options.cooling_rate;
  choice.particle_diameter = options.particle_diameter.value_or(Estimate::kUnknown);
  return choice;
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
            const NamedValues& weight_percent_slope, double start_slope,
            double carbide_slope = 0.0) {
  Along result{equation.value(input), 0.0};
  if (weight_percent_slope.empty()) return result;
  const PropertySlope slope = equation.slope_at(input);
  result.slope =
      slope.martensite_start * start_slope + slope.carbide_fraction * carbide_slope;
  for (const auto& [symbol, factor] : slope.weight_percent)
    result.slope += factor * weight_percent_slope[symbol];
  return result;
}

}  // namespace

std::vector<SharedChoice> choose(const State& state, const HardeningOptions& options,
                                 const StateSlope* slope) {
  std::vector<FamilyShare> shares;
  std::vector<Problem> problems;
  collect(problems, [&] {
    if (options.family)
      shares = {{&hardening_family(*options.family), {1.0, 0.0}}};
    else
      shares = family_shares(state.analysis.modelled, slope ? &slope->input : nullptr);
  });
  std::vector<SharedChoice> choices;
  for (const FamilyShare& share : shares)
    choices.push_back({share.share, choice_of(*share.family, options, problems)});
  if (shares.empty()) choice_of({}, options, problems);
  check_numbers(state, options, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  return choices;
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
  Along start =
      along(choice.start, input_of(basis, choice), basis.weight_percent_slope, 0.0);
  start.value += choice.offset;
  return start;
}

Along retained_fraction(const HardeningBasis& basis, const HardeningChoice& choice,
                        Along start) {
  PropertyInput input = input_of(basis, choice);
  input.martensite_start = start.value;
  return along(choice.austenite, input, basis.weight_percent_slope, start.slope);
}

Along martensite_hardness(const HardeningBasis& basis, const HardeningChoice& choice) {
  return along(choice.hardness, input_of(basis, choice), basis.weight_percent_slope,
               0.0);
}

Along grain_limit(const HardeningBasis& basis, const HardeningChoice& choice) {
  if (!(basis.carbide.value > 0.0)) return {Estimate::kUnknown, Estimate::kUnknown};
  PropertyInput input = input_of(basis, choice);
  input.particle_diameter = choice.particle_diameter;
  input.carbide_fraction = basis.carbide.value;
  return along(choice.pinning, input, basis.weight_percent_slope, 0.0,
               basis.carbide.slope);
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
