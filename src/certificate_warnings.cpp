#include "internal/certificate_warnings.hpp"

#include <initializer_list>

#include "internal/layer_remedy.hpp"
#include "internal/left_out.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

// The bounds are this library's own [weight percent].
constexpr double kCarbideFormers = 0.1;  ///< Nb + Ti + Zr + Ta
constexpr double kNitrogen = 0.1;
constexpr double kTypedPpm = 1.0;        ///< of N, S or P
constexpr double kTypedFractions = 0.3;  ///< all contents but Fe

using Symbols = std::initializer_list<const char*>;

double sum_of(const NamedValues& percents, Symbols symbols) {
  double sum = 0.0;
  for (const char* symbol : symbols) sum += percents[symbol];
  return sum;
}

/// Appends "Nb 0.5, Ti 0.1": those of `symbols` that are above `bound`.
void list(const NamedValues& percents, Symbols symbols, double bound,
          std::string& text) {
  for (const char* symbol : symbols)
    if (percents[symbol] > bound)
      text += (text.empty() ? "" : ", ") + std::string(symbol) + " " +
              significant(percents[symbol], 3);
}

void check_left_out(const MillAnalysis& analysis, std::vector<Warning>& out) {
  std::string left;
  for (const auto& [symbol, percent] : analysis.not_modelled)
    list(analysis.not_modelled, {symbol.c_str()}, 0.0, left);
  if (!left.empty())
    out.push_back({"gibbsteel.warning.307",
                   "Not modelled, and left out of the calculation: " + left + " wt%."});
}

void check_carbide_formers(const ParameterSet& set, const NamedValues& not_modelled,
                           std::vector<Warning>& out) {
  const Symbols metals{"Nb", "Ti", "Zr", "Ta"};
  std::string text;
  if (sum_of(not_modelled, metals) > kCarbideFormers)
    list(not_modelled, metals, 0.0, text);
  list(not_modelled, {"N"}, kNitrogen, text);
  if (text.empty()) return;
  // Of Zr and Ta no layer knows.
  const bool known = sum_of(not_modelled, {"Nb", "Ti", "N"}) > 0.0;
  out.push_back({"gibbsteel.warning.312",
                 text +
                     " wt%: forms carbide or nitride that is not modelled: matrix "
                     "carbon and MC are not right for this steel." +
                     (known ? layer_remedy(set, "niobium_titanium_nitrogen") : "")});
}

void check_units(const NamedValues& given, std::vector<Warning>& out) {
  std::string tramp;
  list(given, {"N", "S", "P"}, kTypedPpm, tramp);
  if (!tramp.empty())
    out.push_back(
        {"gibbsteel.warning.313", tramp + " wt%: were ppm typed for weight percent?"});
  const double alloy = given.sum() - given["Fe"];
  if (alloy > 0.0 && alloy < kTypedFractions)
    out.push_back(
        {"gibbsteel.warning.314", "All contents together are " + significant(alloy, 3) +
                                      " wt%: were fractions typed for percent?"});
}

}  // namespace

void check_certificate(const ParameterSet& set, const MillAnalysis& analysis,
                       TemperatureUnit unit, std::vector<Warning>& out) {
  check_left_out(analysis, out);
  if (const auto much = left_out_warning(analysis, unit)) out.push_back(*much);
  check_carbide_formers(set, analysis.not_modelled, out);
  check_units(analysis.given, out);
}

}  // namespace gibbsteel::internal
