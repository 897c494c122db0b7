#include "internal/result_text.hpp"

#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel::internal {

const char* const kLastDigits =
    "Last digits are for comparing heats, not accuracy: see the warnings.\n";

std::string analysis_text(const State& state) {
  constexpr std::size_t kWidth = 78;
  std::string text = wrapped("analysis, wt%: " + state.analysis.brief(), kWidth, 2);
  std::string bound;
  for (const BoundCompound& compound : state.analysis.bound)
    bound += (bound.empty() ? "" : ", ") + compound.name + " " +
             significant(compound.weight_percent, 2);
  return bound.empty() ? text : text + "bound: " + bound + " wt%\n";
}

std::string basis_text(const State& state) {
  return state.basis == VolumeBasis::room ? "volumes at room temperature, austenite "
                                            "counted as untempered martensite\n"
                                          : "volumes at soak temperature\n";
}

}  // namespace gibbsteel::internal
