#pragma once
/// What makes two terms the same: the same constituents, in whatever order within a
/// mix, and the same order of the Redlich-Kister term.

#include <string>
#include <vector>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel::parameter_file {

std::string term_key(const Term& term);
/// Key of the end member with these constituents, one per sublattice.
std::string end_member_key(const std::vector<std::string>& constituents);
/// "(Fe, C)", "(Cr + Fe, vacancy)" for messages.
std::string on_text(const std::vector<std::vector<std::string>>& on);
std::string on_text(const std::vector<std::string>& constituents);

}  // namespace gibbsteel::parameter_file
