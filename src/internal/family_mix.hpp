#pragma once
/// Between families of steels: near a border estimates go over from those of one family
/// into those of the next, so that they have no jump. The share of a family is
///
///   w = product over its rule of 3 t^2 - 2 t^3,
///       t = (x - a) / (b - a) from 0 to 1                                     Eq.
///       (H29)
///
/// where x passes a bound, from a to b; that of "general" is the rest. An estimate is
/// the mean over the families by share, its variance holds how far they lie apart. Own
/// choice: the bounds are conventions of the trade, no measurement says how sharp they
/// are.

#include <string>
#include <vector>

#include "gibbsteel/hardening_family.hpp"
#include "gibbsteel/state_slope.hpp"
#include "internal/along.hpp"

namespace gibbsteel::internal {

struct FamilyShare {
  const HardeningFamily* family = nullptr;
  Along share;  ///< from above 0 to 1; slope along the input
};

/// Largest first; the shares sum to 1.
/// @param steel_weight_percent  as hardening_family_of()
/// @param input  what slopes are along, or null; only an element of the steel moves
///               shares
std::vector<FamilyShare> family_shares(const NamedValues& steel_weight_percent,
                                       const Input* input = nullptr);

/// Share by key of the family.
NamedValues by_key(const std::vector<FamilyShare>& shares);

/// Whether no family has 95 % of them: worth a word.
bool is_between(const NamedValues& shares);

/// Whether estimates are moved from those of the family with the largest share by more
/// than 10 C of martensite start, 15 HV or a tenth of the rate of Eq. (H13).
bool is_moved(const std::vector<FamilyShare>& shares);

/// "general (62 %) and high-speed (38 %)", largest first.
std::string shares_text(const NamedValues& shares);

}  // namespace gibbsteel::internal
