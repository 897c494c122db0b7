#pragma once
/// What a printed sweep and its report share.

#include <string>
#include <vector>

#include "gibbsteel/sweep.hpp"

namespace gibbsteel::internal {

/// Elements of the matrix but Fe, in the order of the first usable state.
std::vector<std::string> matrix_elements(const Sweep& sweep);

using States = std::vector<const State*>;

States states_of(const Sweep& sweep);

/// Weight percents of these elements in the matrix, and a mark: "f", "l" or none.
std::vector<std::string> matrix_cells(const State& state,
                                      const std::vector<std::string>& symbols);

/// What the marks of these states mean, one line for each.
std::vector<std::string> legend_of_marks(const States& states);

/// "1120", or in another unit too, that first: "2048", "1120".
std::vector<std::string> temperature_cells(Temperature t, TemperatureUnit unit);

/// "900 to 1230 C (1652 to 2246 F)", or one temperature.
std::string temperatures_of(const Sweep& sweep, std::size_t first, std::size_t last);

/// The distinct warnings of all states as text, each with the temperatures it holds
/// for: "1175 to 1200 C: [code] text".
std::vector<std::string> warning_lines(const Sweep& sweep);

}  // namespace gibbsteel::internal
