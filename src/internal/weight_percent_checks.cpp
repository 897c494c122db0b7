#include "internal/weight_percent_checks.hpp"

#include <cmath>

#include "gibbsteel/elements.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

std::string place_of(const std::string& symbol) { return "composition, " + symbol; }

bool check_symbol(const std::string& symbol, std::vector<Problem>& problems) {
  if (find_element(symbol)) return true;
  const auto meant = suggest_element(symbol);
  problems.push_back({"gibbsteel.input.201", "composition",
                      "'" + symbol + "' is not the symbol of an element",
                      meant.empty() ? "give symbols such as C, Cr, Mo"
                                    : "did you mean '" + std::string(meant) + "'?"});
  return false;
}

void check_value(const std::string& symbol, double value,
                 std::vector<Problem>& problems) {
  const auto bad = [&](const char* code, const std::string& what,
                       const char* remedy = "give weight percent, from 0 to 100") {
    problems.push_back({code, place_of(symbol), what, remedy});
  };
  if (std::isnan(value))
    bad("gibbsteel.input.202", "is nan, not a number",
        "give weight percent, or leave the element out where it was not measured");
  else if (!std::isfinite(value))
    bad("gibbsteel.input.202", "is " + shortest(value) + ", not a finite number");
  else if (value < 0.0)
    bad("gibbsteel.input.203", "is negative: " + shortest(value));
  else if (value > 100.0)
    bad("gibbsteel.input.204", "is above 100: " + shortest(value));
}

}  // namespace

void check_weight_percents(const NamedValues& given, std::vector<Problem>& problems) {
  for (const auto& [symbol, value] : given) {
    if (check_symbol(symbol, problems)) check_value(symbol, value, problems);
  }
}

}  // namespace gibbsteel::internal
