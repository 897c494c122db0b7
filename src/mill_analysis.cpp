#include "gibbsteel/mill_analysis.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "internal/weight_percent_checks.hpp"

namespace gibbsteel {
namespace {

constexpr double kSumTolerance = 0.05;  ///< [weight percent], when Fe is given
constexpr double kRounding = 1e-9;      ///< [weight percent], of a sum of decimals
constexpr double kAbsentBelow = 1e-15;  ///< mole fraction

void check_sum(const NamedValues& given, std::vector<Problem>& problems) {
  const double sum = given.sum();
  if (given.contains("Fe") && std::abs(sum - 100.0) > kSumTolerance)
    problems.push_back({"gibbsteel.input.207", "composition",
                        "sums to " + internal::fixed(sum, 2) + " with Fe",
                        "make it 100, or leave Fe out: it is the balance"});
  else if (!given.contains("Fe") && sum > 100.0 + kRounding)
    problems.push_back({"gibbsteel.input.204", "composition",
                        "sums to " + internal::fixed(sum, 2),
                        "the sum cannot be above 100 weight percent"});
}

void check(const NamedValues& given) {
  std::vector<Problem> problems;
  if (given.empty())
    problems.push_back({"gibbsteel.input.208", "composition", "is empty",
                        "give weight percent by symbol, for instance 0.55 C; pure iron "
                        "is 100 Fe"});
  internal::check_weight_percents(given, problems);
  if (problems.empty()) check_sum(given, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
}

/// Takes `host` and `guest` out of the calculation, atom for atom, as far as both last.
/// A guest that the parameter set models is in the calculation and binds nothing here.
void bind(const char* compound, const char* host, const char* guest,
          MillAnalysis& analysis) {
  NamedValues& hosts =
      analysis.modelled.contains(host) ? analysis.modelled : analysis.not_modelled;
  NamedValues& guests = analysis.not_modelled;
  const double host_mass = find_element(host)->molar_mass;
  const double guest_mass = find_element(guest)->molar_mass;
  const double moles = std::min(hosts[host] / host_mass, guests[guest] / guest_mass);
  if (moles <= 0.0) return;
  const auto take = [moles](NamedValues& list, const char* symbol, double mass) {
    list.set(symbol, std::max(0.0, list[symbol] - moles * mass));
  };
  take(hosts, host, host_mass);
  take(guests, guest, guest_mass);
  analysis.bound.push_back({compound, moles * (host_mass + guest_mass)});
}

}  // namespace

std::string MillAnalysis::brief() const {
  std::string text;
  for (const auto& [symbol, percent] : given)
    if (symbol != "Fe" && percent > 0.0)
      text += (text.empty() ? "" : " ") + internal::significant(percent, 4) + symbol;
  const bool iron =
      given.contains("Fe") ? given["Fe"] > 0.0 : given.sum() < 100.0 - kRounding;
  if (!iron) return text;
  return text.empty() ? "Fe" : text + ", balance Fe";
}

MillAnalysis read_analysis(const NamedValues& weight_percent, const ParameterSet& set,
                           bool bind_tramp_elements) {
  check(weight_percent);
  MillAnalysis analysis;
  analysis.given = weight_percent;
  const double iron = weight_percent.contains("Fe")
                          ? weight_percent["Fe"]
                          : std::max(0.0, 100.0 - weight_percent.sum());
  (set.find_element("Fe") ? analysis.modelled : analysis.not_modelled).set("Fe", iron);
  for (const auto& [symbol, value] : weight_percent) {
    if (symbol == "Fe") continue;
    NamedValues& list =
        set.find_element(symbol) ? analysis.modelled : analysis.not_modelled;
    list.set(symbol, value);
  }
  if (bind_tramp_elements) {
    bind("MnS", "Mn", "S", analysis);
    bind("TiN", "Ti", "N", analysis);
    bind("NbN", "Nb", "N", analysis);
    bind("VN", "V", "N", analysis);
  }
  if (analysis.modelled.sum() <= 0.0)
    throw InputError({{"gibbsteel.input.208", "composition",
                       "holds no element that the parameter file models",
                       "give at least one of its elements"}});
  return analysis;
}

NamedValues MillAnalysis::mole_fractions(const ParameterSet& set) const {
  NamedValues moles;
  std::vector<Problem> problems;
  for (const auto& [symbol, percent] : modelled) {
    if (percent <= 0.0) continue;
    if (const Element* element = set.find_element(symbol))
      moles.set(symbol, percent / element->molar_mass);
    else
      problems.push_back({"gibbsteel.input.206", "composition, " + symbol,
                          "is not modelled by this parameter set",
                          "use the set that the analysis was read with"});
  }
  if (!problems.empty()) throw InputError(std::move(problems));
  const double sum = moles.sum();
  NamedValues fractions;
  for (const auto& [symbol, amount] : moles)
    if (amount >= kAbsentBelow * sum) fractions.set(symbol, amount / sum);
  return fractions;
}

}  // namespace gibbsteel
