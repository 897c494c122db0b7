#include "gibbsteel/phase_system.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/temperature_functions.hpp"

namespace gibbsteel {
namespace {

/// The phase with this name, or whose second occurrence has it.
const Phase* phase_for(const ParameterSet& set, const std::string& name) {
  if (const Phase* phase = set.find_phase(name)) return phase;
  for (const Phase& phase : set.phases)
    if (phase.second_occurrence && phase.second_occurrence->name == name) return &phase;
  return nullptr;
}

std::string list_of_phases(const ParameterSet& set) {
  std::string text;
  for (const Phase& phase : set.phases) {
    text += (text.empty() ? "" : ", ") + phase.name;
    if (phase.second_occurrence) text += ", " + phase.second_occurrence->name;
  }
  return text;
}

std::vector<Problem> problems_of(const ParameterSet& set,
                                 const std::vector<std::string>& elements,
                                 const std::vector<std::string>& phases) {
  std::vector<Problem> problems;
  for (auto symbol = elements.begin(); symbol != elements.end(); ++symbol)
    if (std::find(elements.begin(), symbol, *symbol) == symbol &&
        std::find(symbol + 1, elements.end(), *symbol) != elements.end())
      problems.push_back({"gibbsteel.input.215", "elements",
                          "'" + *symbol + "' is named twice",
                          "name each element once"});
  for (const auto& symbol : elements)
    if (!set.find_element(symbol))
      problems.push_back({"gibbsteel.input.206", "elements",
                          "the parameter set does not model '" + symbol + "'",
                          "leave it out or load a file that models it"});
  for (const auto& name : phases)
    if (!phase_for(set, name))
      problems.push_back({"gibbsteel.input.205", "phases",
                          "there is no phase '" + name + "'",
                          "choose from: " + list_of_phases(set)});
  return problems;
}

}  // namespace

PhaseSystem::PhaseSystem(SharedParameters set, std::vector<std::string> elements,
                         const std::vector<std::string>& phases)
    : set_(std::move(set)), elements_(std::move(elements)) {
  auto problems = problems_of(*set_, elements_, phases);
  if (!problems.empty()) throw InputError(std::move(problems));
  std::vector<const Phase*> wanted;
  for (const auto& name : phases) wanted.push_back(phase_for(*set_, name));
  const auto curves = std::make_shared<const internal::CurveTable>(*set_);
  for (const Phase& phase : set_->phases) {
    if (std::find(wanted.begin(), wanted.end(), &phase) == wanted.end()) continue;
    PhaseModel model(*set_, phase, elements_, curves);
    if (!model.reachable()) continue;
    phases_.push_back(std::move(model));
    definitions_.push_back(&phase);
  }
}

}  // namespace gibbsteel
