#pragma once
/// Hardening estimates as quantities: what targets, comparisons, tolerance bands and
/// designs can be about. Slopes are exact.

#include "gibbsteel/hardening.hpp"
#include "gibbsteel/quantity.hpp"

namespace gibbsteel::quantities {

/// Values are those of hardening(); NaN where it has none. The options are checked by
/// the first state. The family is that of the state's steel unless the options name
/// one: the numbers go over where a composition passes from one family to another, and
/// whatever takes such a quantity says so (gibbsteel.warning.335, .357). Their warnings
/// are those of hardening() that bear on the number (.330 to .338), Quantity::band() is
/// the band of the estimate.
/// @throws InputError as hardening(), then
Quantity martensite_start(const HardeningOptions& options = {});  ///< [C]
Quantity retained_austenite(
    const HardeningOptions& options = {});  ///< [vol% of the steel]
/// [vol% of all matrix phases together]: what X-rays see between large carbides
Quantity retained_austenite_of_matrix(const HardeningOptions& options = {});
Quantity hardness_hv(const HardeningOptions& options = {});   ///< as quenched [HV]
Quantity hardness_hrc(const HardeningOptions& options = {});  ///< as quenched [HRC]
/// Diameter at which carbide of options.particle_diameter stops the growth of austenite
/// grains [um]; NaN without carbide. It does not rest on the family.
/// @throws InputError gibbsteel.input.244 (no particle diameter), when it is made
Quantity grain_limit(const HardeningOptions& options);

}  // namespace gibbsteel::quantities
