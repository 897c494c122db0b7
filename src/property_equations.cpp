#include "gibbsteel/property_equations.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/number_format.hpp"
#include "property_equations/builtin.hpp"

namespace gibbsteel {
namespace {

using List = std::vector<PropertyEquation>;

const std::shared_ptr<const List>& built_in_list() {
  static const std::shared_ptr<const List> list = [] {
    auto all = std::make_shared<List>();
    for (auto* kind :
         {&internal::martensite_start_equations,
          &internal::retained_austenite_equations,
          &internal::martensite_hardness_equations, &internal::grain_pinning_equations})
      for (PropertyEquation& equation : kind()) all->push_back(std::move(equation));
    return all;
  }();
  return list;
}

template <typename Iterator>
Iterator find(Iterator begin, Iterator end, PropertyKind kind, std::string_view key) {
  return std::find_if(begin, end, [&](const PropertyEquation& equation) {
    return equation.kind == kind && equation.key == key;
  });
}

void check_ranges(const PropertyEquation& equation, const std::string& place,
                  std::vector<Problem>& problems) {
  for (const EquationRange& range : equation.ranges) {
    if (!find_element(range.element))
      problems.push_back(
          {"gibbsteel.input.241", place,
           "has a range for '" + range.element + "', which is no element",
           "give symbols such as C, Cr, Mo"});
    if (!(range.low <= range.high))
      problems.push_back({"gibbsteel.input.241", place,
                          "has a range for " + range.element + " from " +
                              internal::shortest(range.low) + " to " +
                              internal::shortest(range.high),
                          "give the low end first"});
  }
}

void check(const PropertyEquation& equation) {
  std::vector<Problem> problems;
  const std::string place = "equation '" + equation.key + "'";
  const auto bad = [&](const std::string& what, const std::string& remedy) {
    problems.push_back({"gibbsteel.input.241", place, what, remedy});
  };
  if (equation.key.empty()) bad("has no key", "give the name to choose it by");
  if (!equation.value) bad("has no function", "give a function that computes it");
  if (!(equation.error >= 0.0) || std::isinf(equation.error))
    bad("has the error " + internal::shortest(equation.error),
        "give one standard deviation, 0 or more");
  const List& own = *built_in_list();
  if (find(own.begin(), own.end(), equation.kind, equation.key) != own.end())
    bad("is built in", "choose another key: what is built in stays as it is");
  check_ranges(equation, place, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
}

}  // namespace

PropertyEquations::PropertyEquations() : equations_(built_in_list()) {}

std::size_t PropertyEquations::built_in() { return built_in_list()->size(); }

std::vector<std::string> PropertyEquations::keys(PropertyKind kind) const {
  std::vector<std::string> keys;
  for (const PropertyEquation& equation : all())
    if (equation.kind == kind) keys.push_back(equation.key);
  return keys;
}

const PropertyEquation& PropertyEquations::at(PropertyKind kind,
                                              std::string_view key) const {
  const auto found = find(all().begin(), all().end(), kind, key);
  if (found != all().end()) return *found;
  std::string known;
  for (const std::string& each : keys(kind))
    known += (known.empty() ? "" : ", ") + each;
  throw InputError(
      {{"gibbsteel.input.240", std::string(property_kind_name(kind)),
        "there is no equation '" + std::string(key) + "'", "choose one of " + known}});
}

PropertyEquations PropertyEquations::with_equation(PropertyEquation equation) const {
  check(equation);
  auto list = std::make_shared<List>(all());
  const auto old = find(list->begin(), list->end(), equation.kind, equation.key);
  if (old != list->end())
    *old = std::move(equation);
  else
    list->push_back(std::move(equation));
  PropertyEquations result;
  result.equations_ = std::move(list);
  return result;
}

}  // namespace gibbsteel
