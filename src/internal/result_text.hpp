#pragma once
/// Lines that a printed State and a printed Sweep share; each ends with a line break.

#include <string>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// The analysis as given and, when there are any, the bound compounds.
std::string analysis_text(const State& state);

/// What the volumes refer to.
std::string basis_text(const State& state);

/// Stands under the tables.
extern const char* const kLastDigits;

}  // namespace gibbsteel::internal
