#include "gibbsteel/hardening_quantities.hpp"

#include "internal/hardening_chain.hpp"

namespace gibbsteel::quantities {
namespace {

using internal::Along;
using internal::HardeningBasis;
using internal::HardeningChoice;

/// One number of the chain; not called when there is no austenite.
using Number = Along (*)(const HardeningBasis&, const HardeningChoice&);

Along number_at(const State& state, const StateSlope* slope,
                const HardeningOptions& options, Number number) {
  const HardeningChoice choice = internal::choose(state, options);
  const HardeningBasis basis = internal::hardening_basis(state, slope);
  if (!basis.austenite_present) return {Estimate::kUnknown, Estimate::kUnknown};
  return number(basis, choice);
}

Quantity quantity(const char* name, const char* unit, const HardeningOptions& options,
                  Number number) {
  return {name, unit,
          [options, number](const State& state) {
            return number_at(state, nullptr, options, number).value;
          },
          [options, number](const State& state, const StateSlope& slope) {
            return number_at(state, &slope, options, number).slope;
          }};
}

Along retained(const HardeningBasis& basis, const HardeningChoice& choice) {
  return internal::retained_fraction(basis, choice,
                                     internal::martensite_start(basis, choice));
}

Along vickers(const HardeningBasis& basis, const HardeningChoice& choice) {
  return internal::hardness(basis, internal::martensite_hardness(basis, choice),
                            retained(basis, choice))
      .mean();
}

}  // namespace

Quantity martensite_start(const HardeningOptions& options) {
  return quantity("martensite start", "C", options, &internal::martensite_start);
}

Quantity retained_austenite(const HardeningOptions& options) {
  return quantity("retained austenite", "vol%", options,
                  [](const HardeningBasis& basis, const HardeningChoice& choice) {
                    return 100.0 * basis.austenite * retained(basis, choice);
                  });
}

Quantity hardness_hv(const HardeningOptions& options) {
  return quantity("as-quenched hardness", "HV", options, &vickers);
}

Quantity hardness_hrc(const HardeningOptions& options) {
  return quantity("as-quenched hardness", "HRC", options,
                  [](const HardeningBasis& basis, const HardeningChoice& choice) {
                    return internal::rockwell(vickers(basis, choice));
                  });
}

}  // namespace gibbsteel::quantities
