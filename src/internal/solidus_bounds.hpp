#pragma once
/// What is known of the melting of steels like this one.

#include <vector>

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::internal {

/// True when a steel resembles the one for which a solidus is known: at most 0.15 less
/// carbon or 0.5 more, every other element within 0.5 or a fifth of it, whichever is
/// more [weight percent]. Carbon lowers the solidus, so that a steel richer in it melts
/// no later; what is free of melt says less about it, see sooner_by_carbon(). Cobalt up
/// to 10 % ends no resemblance of high-speed steels, whose solidus it does not raise:
/// they are hardened as their kin without cobalt (common practice, no source). Wide
/// enough for the Mn and Si that a certificate shows and a published grade leaves out:
/// a warning too many costs less than one too few. The rule is this library's own.
bool resembles(const SolidusBound& bound, const NamedValues& weight_percent);

/// Those of steels that this one resembles; where some are near in cobalt too, those
/// alone.
std::vector<const SolidusBound*> resembling(const std::vector<SolidusBound>& bounds,
                                            const NamedValues& weight_percent);

/// It was seen to melt; else to be free of melt.
bool is_seen(const SolidusBound& bound);

/// How much sooner a steel may melt than one that is free of melt, because it holds
/// more carbon [K]: 150 for each weight percent more, own choice. Beside the layer with
/// liquid, where M42, M7 and M1 lose 80 to 130, it leaves some tens. What was seen to
/// melt loses nothing: a window keeps a margin below it.
double sooner_by_carbon(const SolidusBound& bound, const NamedValues& weight_percent);

/// Melting of the steel may begin here [C]: the lower end of the error bar, less
/// sooner_by_carbon().
double least_solidus(const SolidusBound& bound, const NamedValues& weight_percent);

/// What was seen to melt weighs more than "free of melt up to"; then the lower one.
bool weighs_more(const SolidusBound& a, const SolidusBound& b,
                 const NamedValues& weight_percent);

}  // namespace gibbsteel::internal
