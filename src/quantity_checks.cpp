#include "internal/quantity_checks.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/elements.hpp"
#include "internal/kind_names.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel {
namespace internal {
namespace {

using Problems = std::vector<Problem>;

constexpr double kRounding = 1e-6;  // 100 vol% of a state may be a little more

void throw_any(Problems problems) {
  if (!problems.empty()) throw InputError(std::move(problems));
}

/// "0 to 100 wt%", "0 or more"
std::string range_of(const Quantity& quantity) {
  const auto& [elements, kinds, least, most] = quantity.scope();
  const std::string unit = quantity.unit().empty() ? "" : " " + quantity.unit();
  if (!std::isfinite(most)) return shortest(least) + unit + " or more";
  if (!std::isfinite(least)) return shortest(most) + unit + " or less";
  return shortest(least) + " to " + shortest(most) + unit;
}

std::string modelled_by(const ParameterSet& set) {
  std::string list;
  for (const Element& element : set.elements)
    list += (list.empty() ? "" : ", ") + element.symbol;
  return list;
}

}  // namespace

void require_element(const std::string& symbol) {
  if (find_element(symbol)) return;
  const auto meant = suggest_element(symbol);
  throw InputError({{"gibbsteel.input.201", "element",
                     "'" + symbol + "' is not the symbol of an element",
                     meant.empty() ? "give a symbol such as C, Cr, Mo"
                                   : "did you mean '" + std::string(meant) + "'?"}});
}

void require_known(std::span<const Quantity> quantities, const ParameterSet& set) {
  Problems all;
  for (const Quantity& quantity : quantities)
    for (Problem& problem : quantity.problems(set))
      if (std::find(all.begin(), all.end(), problem) == all.end())
        all.push_back(std::move(problem));
  throw_any(std::move(all));
}

void check_wish(const Quantity& quantity, double wanted, const std::string& place,
                Problems& problems) {
  if (!std::isfinite(wanted))
    problems.push_back({"gibbsteel.input.252", place, "is " + shortest(wanted),
                        "give the number that the quantity is to have"});
  else if (wanted < quantity.scope().least - kRounding ||
           wanted > quantity.scope().most + kRounding)
    problems.push_back(
        {"gibbsteel.input.340", place,
         "is " + shortest(wanted) + ", which '" + quantity.name() + "' can never be",
         "give " + range_of(quantity)});
}

void require_possible(const Quantity& quantity, double value, const ParameterSet& set) {
  Problems problems = quantity.problems(set);
  check_wish(quantity, value, "value", problems);
  throw_any(std::move(problems));
}

}  // namespace internal

std::vector<Problem> Quantity::problems(const ParameterSet& set) const {
  std::vector<Problem> found;
  for (const std::string& symbol : scope_.elements)
    if (!set.find_element(symbol))
      found.push_back({"gibbsteel.input.206", "quantity, " + name_,
                       symbol + " is not modelled by the parameter file",
                       "choose from: " + internal::modelled_by(set) +
                           "; or load a file that models it"});
  const std::vector<std::string> known = internal::kind_names(set);
  for (const std::string& kind : scope_.kinds)
    if (std::find(known.begin(), known.end(), kind) == known.end())
      found.push_back(internal::no_such_kind(known, kind, "kind"));
  return found;
}

}  // namespace gibbsteel
