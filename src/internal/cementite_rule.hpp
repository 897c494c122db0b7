#pragma once
/// Which soaks of minutes may leave cementite: a rule for states, which do not hold the
/// parameter set that short_soak_limit() needs.

#include "gibbsteel/named_values.hpp"
#include "gibbsteel/units.hpp"

namespace gibbsteel::internal {

/// About where the short-soak limit has dissolved all cementite. A line fitted to soaks
/// of random low-alloy steels by tests/reference/cementite_rule.py.
/// @param steel  [wt%], C above 0
Temperature all_dissolved_at(const NamedValues& steel);

/// True of steels whose annealed carbide is mostly cementite, at temperatures at which
/// the short-soak limit leaves more than 0.01 wt% C of it that a long hold dissolves.
bool may_keep_cementite(const NamedValues& steel, Temperature t);

}  // namespace gibbsteel::internal
