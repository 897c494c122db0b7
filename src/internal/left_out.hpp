#pragma once
/// Elements that are not modelled, and of which a steel holds more than may be left
/// out.

#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/mill_analysis.hpp"
#include "gibbsteel/temperature_unit.hpp"
#include "gibbsteel/warnings.hpp"

namespace gibbsteel::internal {

/// What is usual as residual or micro-addition may be left out. Nb, Ti, Zr, Ta and N
/// are not among these: gibbsteel.warning.312 tells of them.
struct LeftOut {
  std::string symbol;
  double percent = 0.0;  ///< by weight
  std::string effect;    ///< "forms borides"; empty: not known here
  /// [C] with iron, where it may melt in a soak; NaN: where is not known here.
  std::optional<double> melts_at;
};

/// In the order of the analysis; empty for an ordinary certificate.
std::vector<LeftOut> left_out(const MillAnalysis& analysis);

/// gibbsteel.warning.318: that the numbers are not those of this steel, and why.
std::optional<Warning> left_out_warning(const MillAnalysis& analysis,
                                        TemperatureUnit unit);

/// "B 2 wt%, U 20 wt%", also above 0.1 wt% of what 312 tells of; empty without any.
std::string left_out_text(const MillAnalysis& analysis);

/// Melt that an element that is left out may bring.
struct PossibleMelt {
  Temperature from;  ///< below, there is none
  std::string text;  ///< "possible melt of what is not modelled: B melts with ..."
};

/// Nothing where no element brings one.
std::optional<PossibleMelt> possible_melt(const MillAnalysis& analysis,
                                          TemperatureUnit unit);

}  // namespace gibbsteel::internal
