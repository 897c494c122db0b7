#include "internal/missing_carbon.hpp"

#include <algorithm>

#include "internal/error_codes.hpp"

namespace gibbsteel::internal {

std::optional<Warning> missing_carbon(const MillAnalysis& analysis) {
  const NamedValues& given = analysis.given;
  const bool alloy = given.sum() - given["Fe"] > 0.0;
  if (!alloy || given["C"] > 0.0) return std::nullopt;
  const std::string asks = given["K"] > 0.0 ? "was K typed for C?" : "was it left out?";
  return Warning{std::string(codes::kNoCarbon), "The steel has no carbon: " + asks};
}

void forget_swept_carbon(std::initializer_list<std::string_view> swept,
                         std::vector<Warning>& warnings) {
  if (std::find(swept.begin(), swept.end(), "C") == swept.end()) return;
  std::erase_if(warnings, [](const Warning& w) { return w.code == codes::kNoCarbon; });
}

}  // namespace gibbsteel::internal
