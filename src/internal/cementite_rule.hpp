#pragma once
/// Which soaks of minutes may leave cementite: a rule for states, which do not hold the
/// parameter set that short_soak_limit() needs.

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {

/// About where the short-soak limit has dissolved all cementite. A straight line fitted
/// to runs over low-alloy steels, see tests/unit/cementite_rule_test.cpp.
/// @param steel  [wt%], C above 0
Temperature all_dissolved_at(const NamedValues& steel);

/// True of steels whose annealed carbide is mostly cementite, at temperatures at which
/// the short-soak limit leaves more than 0.01 wt% C of it that a long hold dissolves.
bool may_keep_cementite(const NamedValues& steel, Temperature t);

}  // namespace gibbsteel::internal
