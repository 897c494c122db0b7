#pragma once
/// Every number of a parameter set that results depend on smoothly, with its place in
/// the file that write_parameters() makes of the set: coefficients of energies, Curie
/// temperatures, moments and curves, factors of curves, volumes and expansions.

#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

struct ParameterNumber {
  enum class Where {
    curve,
    energy,
    curie_temperature,
    magnetic_moment,
    room_volume,
    hot_volume,
  };
  enum class Entry {
    coefficient,  ///< of a power of T
    factor,       ///< of a curve
    volume,       ///< of an end member
    expansion,    ///< linear, of a phase
  };
  Where where = Where::curve;
  Entry entry = Entry::coefficient;
  std::size_t owner = 0;  ///< index of the curve or of the phase
  std::size_t item = 0;   ///< index of the piece or of the term
  std::size_t index = 0;  ///< into Expression::terms or ::curves
  double value = 0.0;
  std::string place;  ///< JSON pointer: "/phases/M6C/energy/3/terms/T"
  std::string unit;
};

std::vector<ParameterNumber> parameter_numbers(const ParameterSet& set);

/// The number itself, in a set of the same shape as the one it was listed from.
double& number_in(ParameterSet& set, const ParameterNumber& number);

/// The term that holds it; nullptr for curves, volumes and expansions.
const Term* term_of(const ParameterSet& set, const ParameterNumber& number);

}  // namespace gibbsteel::parameter_file
