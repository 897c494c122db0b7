#include "internal/folded_traces.hpp"

#include <algorithm>

#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {

Warning folded_traces(const std::vector<const MillAnalysis*>& analyses) {
  NamedValues most;
  for (const MillAnalysis* analysis : analyses)
    for (const auto& [symbol, percent] : analysis->not_modelled)
      if (percent > 0.0) most.set(symbol, std::max(most[symbol], percent));
  std::string text;
  for (const auto& [symbol, percent] : most)
    text += (text.empty() ? "" : ", ") + symbol + " " + significant(percent, 3);
  return {std::string(codes::kLeftOut),
          "Not modelled, and left out of the calculation, at most: " + text + " wt%."};
}

}  // namespace gibbsteel::internal
