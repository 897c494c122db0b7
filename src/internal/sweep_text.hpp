#pragma once
/// What a printed sweep and its report share.

#include <string>
#include <vector>

#include "gibbsteel/sweep.hpp"

namespace gibbsteel::internal {

/// Elements of the matrix but Fe, in the order of the first usable state.
std::vector<std::string> matrix_elements(const Sweep& sweep);

/// True when the matrix holds something besides austenite.
bool has_ferrite(const State& state);

/// The distinct warnings of all states, in order of first appearance.
std::vector<Warning> distinct_warnings(const Sweep& sweep);

/// The same as text, each with the temperatures it holds for:
/// "1175 to 1200 C: [code] text".
std::vector<std::string> warning_lines(const Sweep& sweep);

}  // namespace gibbsteel::internal
