#include "gibbsteel/hardening_quantities.hpp"

#include <limits>

#include "gibbsteel/errors.hpp"
#include "internal/hardening_chain.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::quantities {
namespace {

using internal::Along;
using internal::HardeningBasis;
using internal::HardeningChoice;

/// One number of the chain; not called when there is no austenite.
using Number = Along (*)(const HardeningBasis&, const HardeningChoice&);
using EstimateOf = Estimate HardeningEstimates::*;
/// What is made of its mean over the families.
using After = Along (*)(Along);
/// Takes what a number does not rest on out of the estimates' ranges.
using LeaveOut = void (*)(HardeningEstimates&);

struct Kind {
  Number number;
  EstimateOf estimate;  ///< the same with its band
  LeaveOut leave_out;
  After after = [](Along mean) { return mean; };
  bool of_family = true;  ///< false: the same in every family
};

Along number_at(const State& state, const StateSlope* slope,
                const HardeningOptions& options, const Kind& kind) {
  const auto choices = internal::choose(state, options, slope);
  const HardeningBasis basis = internal::hardening_basis(state, slope);
  if (!basis.austenite_present) return {Estimate::kUnknown, Estimate::kUnknown};
  if (choices.size() == 1 || !kind.of_family)
    return kind.after(kind.number(basis, choices.front().choice));
  Along mean;
  for (const auto& [share, choice] : choices)
    mean = mean + share * kind.number(basis, choice);
  return kind.after(mean);
}

Quantity::Ends band_at(const State& state, const HardeningOptions& options,
                       EstimateOf of) {
  const HardeningEstimates estimates = hardening(state, options);
  return {(estimates.*of).low, (estimates.*of).high};
}

void hardness_of(HardeningEstimates& e) {
  e.hardness_hrc.in_range = true;
  e.hardness_hv = {};
}
void all_but_start(HardeningEstimates& e) {
  e.retained_austenite.in_range = true;
  hardness_of(e);
}
void rockwell_of(HardeningEstimates& e) { e.hardness_hrc = e.hardness_hv; }
void all_but_grain(HardeningEstimates& e) {
  all_but_start(e);
  e.martensite_start.in_range = true;
}
void nothing(HardeningEstimates&) {}

std::vector<Warning> warnings_at(const State& state, HardeningOptions options,
                                 const Kind& kind) {
  if (kind.of_family) options.particle_diameter.reset();  // of the grain limit alone
  HardeningEstimates estimates = hardening(state, options);
  kind.leave_out(estimates);
  std::vector<Warning> told = internal::estimate_warnings(
      state, internal::hardening_basis(state, nullptr).by_mass, estimates);
  if (!kind.of_family)  // of martensite start, of what it starts from, of families
    std::erase_if(told, [](const Warning& warning) {
      return warning.code == "gibbsteel.warning.332" ||
             warning.code == "gibbsteel.warning.333" ||
             warning.code == "gibbsteel.warning.335";
    });
  return told;
}

/// How to make it again; nothing when an equation is the user's own.
Quantity::Origin origin_of(const char* function, const HardeningOptions& options) {
  if (options.equations.all().size() != PropertyEquations::built_in()) return {};
  Quantity::Origin origin{"hardening_quantity", {function}};
  const auto add = [&](const char* name, const std::string& value) {
    origin.arguments.push_back(std::string(name) + "=" + value);
  };
  add("coldest_kelvin", internal::shortest(options.coldest.in_kelvin()));
  add("cooling_rate", internal::shortest(options.cooling_rate));
  if (options.particle_diameter)
    add("particle_diameter", internal::shortest(*options.particle_diameter));
  if (options.family) add("family", *options.family);
  if (options.martensite_start) add("martensite_start", *options.martensite_start);
  if (options.retained_austenite)
    add("retained_austenite", *options.retained_austenite);
  if (options.martensite_hardness)
    add("martensite_hardness", *options.martensite_hardness);
  if (options.grain_pinning) add("grain_pinning", *options.grain_pinning);
  return origin;
}

constexpr double kUnbounded = std::numeric_limits<double>::infinity();

Quantity quantity(const char* function, const char* name, const char* unit,
                  Quantity::Scope scope, const HardeningOptions& options,
                  const Kind& kind) {
  const Quantity made{origin_of(function, options),
                      std::move(scope),
                      name,
                      unit,
                      [options, kind](const State& state) {
                        return number_at(state, nullptr, options, kind).value;
                      },
                      [options, kind](const State& state, const StateSlope& slope) {
                        return number_at(state, &slope, options, kind).slope;
                      }};
  const Quantity warned = made.with_warnings([options, kind](const State& state) {
                                return warnings_at(state, options, kind);
                              })
                              .with_band([options, kind](const State& state) {
                                return band_at(state, options, kind.estimate);
                              });
  return options.family || !kind.of_family ? warned : warned.with_families();
}

Along retained(const HardeningBasis& basis, const HardeningChoice& choice) {
  return internal::retained_fraction(basis, choice,
                                     internal::martensite_start(basis, choice));
}

Along vickers(const HardeningBasis& basis, const HardeningChoice& choice) {
  return internal::hardness(basis, choice, internal::martensite_hardness(basis, choice),
                            retained(basis, choice))
      .mean();
}

}  // namespace

Quantity martensite_start(const HardeningOptions& options) {
  return quantity("martensite_start", "martensite start", "C",
                  {{}, {}, -273.15, kUnbounded}, options,
                  {&internal::martensite_start, &HardeningEstimates::martensite_start,
                   &all_but_start});
}

Quantity retained_austenite(const HardeningOptions& options) {
  const Number number = [](const HardeningBasis& basis, const HardeningChoice& choice) {
    return 100.0 * basis.austenite * retained(basis, choice);
  };
  return quantity("retained_austenite", "retained austenite", "vol%",
                  {{}, {}, 0.0, 100.0}, options,
                  {number, &HardeningEstimates::retained_austenite, &hardness_of});
}

Quantity retained_austenite_of_matrix(const HardeningOptions& options) {
  const Number number = [](const HardeningBasis& basis, const HardeningChoice& choice) {
    return 100.0 * (basis.austenite / basis.matrix) * retained(basis, choice);
  };
  return quantity(
      "retained_austenite_of_matrix", "retained austenite of the matrix", "vol%",
      {{}, {}, 0.0, 100.0}, options,
      {number, &HardeningEstimates::retained_austenite_of_matrix, &hardness_of});
}

Quantity hardness_hv(const HardeningOptions& options) {
  return quantity("hardness_hv", "as-quenched hardness", "HV",
                  {{}, {}, 0.0, kUnbounded}, options,
                  {&vickers, &HardeningEstimates::hardness_hv, &rockwell_of});
}

Quantity hardness_hrc(const HardeningOptions& options) {
  return quantity(
      "hardness_hrc", "as-quenched hardness", "HRC", {{}, {}, 0.0, 100.0}, options,
      {&vickers, &HardeningEstimates::hardness_hrc, &nothing, &internal::rockwell});
}

Quantity grain_limit(const HardeningOptions& options) {
  if (!options.particle_diameter)
    throw InputError({{"gibbsteel.input.244", "particle diameter", "is not given",
                       "give the mean diameter in micrometres, for instance 0.5"}});
  return quantity("grain_limit", "austenite grain limit", "um",
                  {{}, {}, 0.0, kUnbounded}, options,
                  {&internal::grain_limit, &HardeningEstimates::grain_diameter,
                   &all_but_grain, [](Along limit) { return limit; }, false});
}

}  // namespace gibbsteel::quantities
