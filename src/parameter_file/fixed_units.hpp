#pragma once
/// The only units a parameter file may be written in; stated in it for the reader's
/// sake.

#include <array>
#include <string_view>

namespace gibbsteel::parameter_file {

struct FixedUnit {
  std::string_view quantity;
  std::string_view unit;
};

inline constexpr std::array<FixedUnit, 5> kFixedUnits{{
    {"energy", "J/mol of formula units"},
    {"temperature", "K"},
    {"volume", "cm3/mol of formula units"},
    {"curie_temperature", "K"},
    {"magnetic_moment", "Bohr magnetons per site of sublattice 1"},
}};

}  // namespace gibbsteel::parameter_file
