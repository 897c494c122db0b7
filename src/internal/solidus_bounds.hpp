#pragma once
/// What is known of the melting of steels like this one.

#include <vector>

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// True when a steel resembles the one for which a solidus is known: at most 0.15 less
/// carbon or 0.5 more, every other element within 0.5 or a fifth of it, whichever is
/// more [weight percent]. Carbon lowers the solidus, so that a steel richer in it melts
/// no later. Cobalt up to 10 % ends no resemblance of high-speed steels, whose solidus
/// it does not raise: they are hardened as their kin without cobalt (common practice,
/// no source). Wide enough for the Mn and Si that a certificate shows and a published
/// grade leaves out: a warning too many costs less than one too few. The rule is this
/// library's own.
bool resembles(const SolidusBound& bound, const NamedValues& weight_percent);

/// Those of steels that this one resembles; where some are near in cobalt too, those
/// alone.
std::vector<const SolidusBound*> resembling(const std::vector<SolidusBound>& bounds,
                                            const NamedValues& weight_percent);

/// It was seen to melt; else to be free of melt.
bool is_seen(const SolidusBound& bound);

/// Melting may begin here [C]: the lower end of the error bar where it was seen.
double least_solidus(const SolidusBound& bound);

/// What was seen to melt weighs more than "free of melt up to"; then the lower one.
bool weighs_more(const SolidusBound& a, const SolidusBound& b);

}  // namespace gibbsteel::internal
