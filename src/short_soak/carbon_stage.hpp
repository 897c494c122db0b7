#pragma once
/// The fast stage of dissolution, in which only carbon moves: Eq. (B3) of
/// short_soak_limit.hpp.

#include "short_soak/cementite_left.hpp"

namespace gibbsteel::internal {

/// Of carbon in the matrix beside so much cementite [J/mol]; very low when the carbide
/// holds all of it.
double potential_beside(CementiteLeft& cementite, double moles, Temperature t);

/// Moles of atoms of cementite per mole of the steel at the end of the stage; as many
/// as were there when it gives up nothing.
double moles_at_stop(CementiteLeft& cementite, Temperature t);

}  // namespace gibbsteel::internal
