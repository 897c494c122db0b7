#include "internal/left_out.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/elements.hpp"
#include "internal/number_format.hpp"
#include "internal/phase_change_text.hpp"
#include "internal/temperature_text.hpp"

namespace gibbsteel::internal {
namespace {

/// How much of an element may be left out, and what more of it does.
struct Limit {
  const char* symbol;
  double percent;  ///< by weight; what is above counts
  const char* effect;
  double melts_at = 0.0;     ///< [C] with iron; 0: not in a soak; NaN: not known here
  double melts_above = 0.0;  ///< percent that austenite dissolves
};

constexpr double kNotKnown = std::numeric_limits<double>::quiet_NaN();

// Percents: what steels hold as residual or micro-addition, common practice, this
// library's own bounds. Temperatures: lowest eutectics of the binary systems with iron,
// handbook values, all from memory.
constexpr Limit kLimits[] = {
    // Boron steels have 0.0005 to 0.005; Fe + Fe2B.
    {"B", 0.01, "forms borides, which bind iron, Cr, Mo and W", 1175.0},
    // Tool steels hold 0.03 at the most; Fe + Fe3P, with carbon near 950 C.
    {"P", 0.05, "forms phosphide, and makes grain boundaries brittle", 1050.0, 0.2},
    // Scrap brings 0.1 to 0.4; peritectic of liquid copper.
    {"Cu", 0.5, "stays in the matrix and lowers martensite start", 1095.0, 8.0},
    // Killed steels hold 0.02 to 0.05; nitriding steels are made with 1.
    {"Al", 0.2, "stays in the matrix and makes for ferrite"},
    // Leaded steels hold 0.15 to 0.35, and nothing of it is dissolved.
    {"Pb", 0.35, "does not dissolve in steel"},
    // Free-machining steels hold 0.15 to 0.35, bound by Mn.
    {"Se", 0.35, "binds Mn in selenide"},
    // Residuals of scrap, where a parameter set lacks these.
    {"Si", 0.5, ""},
    {"Mn", 0.5, ""},
    {"Ni", 0.4, ""},
    {"Cr", 0.3, ""},
    {"Mo", 0.1, ""},
    {"W", 0.1, ""},
    {"V", 0.1, ""},
    {"Co", 0.1, ""},
};

/// Of sulphur that Mn can bind free-machining steels hold up to 0.35, and as much of
/// stainless ones, whose sulphide takes up Cr.
constexpr Limit kBoundSulphur{"S", 0.35, "binds Mn and Cr in sulphide"};
constexpr double kStainless = 10.0;  ///< Cr, by weight
/// What is left by Mn; other steels hold 0.03 at the most. Fe + FeS.
constexpr Limit kFreeSulphur{
    "S", 0.0, "forms iron sulphide, as there is too little Mn to bind it", 988.0};
constexpr double kMostFreeSulphur = 0.01;
constexpr double kMostWhereNoManganeseIsGiven = 0.04;  ///< which may be forgotten

constexpr double kOthers = 0.1;  ///< [wt%] of an element that is not listed
/// How much lower melt may be with carbon and alloy [K]: own judgement.
constexpr double kSooner = 100.0;
constexpr double kAlways = -273.15;  ///< [C]: there may be melt in every soak

bool is_told_elsewhere(const std::string& symbol) {
  constexpr const char* kCarbideFormers[] = {"Nb", "Ti", "Zr", "Ta", "N"};
  return std::find(std::begin(kCarbideFormers), std::end(kCarbideFormers), symbol) !=
         std::end(kCarbideFormers);
}

/// By the certificate, so that it is the same whether MnS is taken out or not.
const Limit& limit_of_sulphur(const MillAnalysis& analysis) {
  const double per_sulphur =
      find_element("Mn")->molar_mass / find_element("S")->molar_mass;
  const double free = analysis.given["S"] - analysis.given["Mn"] / per_sulphur;
  const double most =
      analysis.given["Mn"] > 0.0 ? kMostFreeSulphur : kMostWhereNoManganeseIsGiven;
  const bool bound = free <= most || analysis.given["Cr"] >= kStainless;
  return bound ? kBoundSulphur : kFreeSulphur;
}

Limit limit_of(const std::string& symbol, const MillAnalysis& analysis) {
  if (symbol == "S") return limit_of_sulphur(analysis);
  for (const Limit& limit : kLimits)
    if (symbol == limit.symbol) return limit;
  return {"", kOthers, "", kNotKnown};
}

std::optional<double> melts_at(const Limit& limit, double percent) {
  if (limit.melts_at == 0.0 || percent <= limit.melts_above) return {};
  return limit.melts_at;
}

std::string amount(const LeftOut& each) {
  return each.symbol + " " + significant(each.percent, 3) + " wt%";
}

/// "melts with iron from 1175 C"
std::string start_of_melt(double celsius, TemperatureUnit unit) {
  if (std::isnan(celsius)) return "may melt with iron, at a temperature not known here";
  return "melts with iron from " + degrees_inside(Temperature::celsius(celsius), unit);
}

constexpr const char* kLower = ", with carbon and alloy lower";

/// "B 2 wt% (forms borides, ...; melts with iron from 1175 C, ...)"
std::string reason(const LeftOut& each, TemperatureUnit unit) {
  std::string why = each.effect;
  if (each.melts_at)
    why += (why.empty() ? "" : "; ") + start_of_melt(*each.melts_at, unit) +
           (std::isnan(*each.melts_at) ? "" : kLower);
  return amount(each) + in_brackets(why);
}

}  // namespace

std::vector<LeftOut> left_out(const MillAnalysis& analysis) {
  std::vector<LeftOut> found;
  for (const auto& [symbol, percent] : analysis.not_modelled) {
    if (is_told_elsewhere(symbol)) continue;
    const Limit limit = limit_of(symbol, analysis);
    if (percent > limit.percent)
      found.push_back({symbol, percent, limit.effect, melts_at(limit, percent)});
  }
  return found;
}

std::optional<Warning> left_out_warning(const MillAnalysis& analysis,
                                        TemperatureUnit unit) {
  std::vector<std::string> reasons;
  for (const LeftOut& each : left_out(analysis)) reasons.push_back(reason(each, unit));
  if (reasons.empty()) return {};
  return Warning{"gibbsteel.warning.318",
                 "Not modelled, and more than a residual or a micro-addition: " +
                     joined(reasons, "; ") +
                     ". The numbers are those of a steel without, not of this one."};
}

std::string left_out_text(const MillAnalysis& analysis) {
  std::vector<std::string> amounts;
  for (const LeftOut& each : left_out(analysis)) amounts.push_back(amount(each));
  for (const auto& [symbol, percent] : analysis.not_modelled)
    if (is_told_elsewhere(symbol) && percent > kOthers)
      amounts.push_back(amount({symbol, percent, {}, {}}));
  return joined(amounts, ", ");
}

std::optional<PossibleMelt> possible_melt(const MillAnalysis& analysis,
                                          TemperatureUnit unit) {
  std::vector<std::string> starts;
  double lowest = std::numeric_limits<double>::infinity();  // [C]
  bool any_known = false;
  for (const LeftOut& each : left_out(analysis)) {
    if (!each.melts_at) continue;
    const bool known = !std::isnan(*each.melts_at);
    any_known = any_known || known;
    lowest = std::min(lowest, known ? *each.melts_at - kSooner : kAlways);
    starts.push_back(each.symbol + " " + start_of_melt(*each.melts_at, unit));
  }
  if (starts.empty()) return {};
  return PossibleMelt{Temperature::celsius(lowest),
                      "possible melt of what is not modelled: " + joined(starts, ", ") +
                          (any_known ? kLower : "")};
}

}  // namespace gibbsteel::internal
