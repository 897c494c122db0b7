#pragma once
/// Between families of steels: near a border the numbers of a family go over into those
/// of the next one, so that estimates have no jump.
///
///   w(x) = 3 t^2 - 2 t^3,   t = (x - 0.9 b) / (0.2 b) from 0 to 1             Eq.
///   (H29)
///
/// for each bound b of a rule, x >= b; the share of a family is the product over its
/// rule, that of "general" the rest. Own choice: the bounds are conventions of the
/// trade, no measurement says how sharp they are.

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

/// In the order of hardening_families(); the shares sum to 1.
/// @param steel_weight_percent  as hardening_family_of()
/// @param input  what slopes are along, or null; only an element of the steel moves
///               shares
std::vector<FamilyShare> family_shares(const NamedValues& steel_weight_percent,
                                       const Input* input = nullptr);

/// Mean of a number over the families.
Along mixed(const std::vector<FamilyShare>& shares, double HardeningFamily::*number);

/// Standard deviation about that mean: those of the families, and how far they lie
/// apart.
double mixed_error(const std::vector<FamilyShare>& shares,
                   double HardeningFamily::*number, double HardeningFamily::*error);

/// Share by key of the family.
NamedValues by_key(const std::vector<FamilyShare>& shares);

/// Whether no family has 95 % of them: worth a word.
bool is_between(const NamedValues& shares);

/// "general (62 %) and high-speed (38 %)", largest first.
std::string shares_text(const NamedValues& shares);

}  // namespace gibbsteel::internal
