#include "internal/slopes_of_soak.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/elements.hpp"
#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/parameter_slopes.hpp"
#include "internal/temperature_functions.hpp"

namespace gibbsteel::internal {
namespace {

bool holds(const std::vector<std::string>& list, std::string_view name) {
  return std::find(list.begin(), list.end(), name) != list.end();
}

std::vector<std::string> elements_of(const SoakProblem& problem,
                                     const SensitivityOptions& chosen) {
  if (chosen.elements) return *chosen.elements;
  std::vector<std::string> all;
  if (!holds(problem.system.elements(), "Fe")) return all;
  for (const auto& symbol : problem.system.elements())
    if (symbol != "Fe") all.push_back(symbol);
  return all;
}

/// Why an element of the list is no input; empty when it is one.
std::string refusal(const SoakProblem& problem, const std::string& symbol) {
  if (!find_element(symbol)) return "'" + symbol + "' is not the symbol of an element";
  if (symbol == "Fe") return "Fe is the balance of all others";
  if (!problem.system.parameters().find_element(symbol))
    return symbol + " is not modelled by the parameter file";
  if (!holds(problem.system.elements(), symbol))
    return "there is no " + symbol + " in the calculation";
  return "";
}

/// What would be right instead.
std::string remedy(const SoakProblem& problem, const std::string& symbol) {
  const std::string choose = "choose elements of the calculation other than Fe";
  const bool absent = problem.system.parameters().find_element(symbol) &&
                      !holds(problem.system.elements(), symbol);
  return (absent ? internal::first_addition(symbol) + ", or " : "") + choose;
}

using Numbers = std::vector<ParameterSlopes::Number>;

Numbers::const_iterator find_place(const Numbers& numbers, const std::string& place) {
  return std::find_if(numbers.begin(), numbers.end(),
                      [&](const auto& number) { return number.place == place; });
}

/// The numbers asked for, in the order asked for.
Numbers numbers_of(const SoakProblem& problem, const SensitivityOptions& chosen) {
  if (!chosen.all_parameters && chosen.parameters.empty()) return {};
  const auto all = parameter_file::parameter_numbers(problem.system.parameters());
  if (chosen.all_parameters) return all;
  Numbers some;
  for (const auto& place : chosen.parameters) some.push_back(*find_place(all, place));
  return some;
}

void check_places(const SoakProblem& problem, const std::vector<std::string>& places,
                  std::vector<Problem>& problems) {
  const auto all = parameter_file::parameter_numbers(problem.system.parameters());
  for (const auto& place : places)
    if (find_place(all, place) == all.end())
      problems.push_back(
          {std::string(codes::kNoParameterInput), "parameters",
           "there is no number at '" + place + "'",
           "give places such as '" + all.back().place +
               "'; parameter_inputs of the parameter set lists them all"});
}

/// Mole fractions per weight percent of `symbol`, balance Fe.                 Eq. (S5)
std::vector<double> per_weight_percent(const SoakProblem& problem,
                                       const std::string& symbol) {
  const auto& elements = problem.system.elements();
  const auto molar_mass = [&](const std::string& name) {
    return problem.system.parameters().find_element(name)->molar_mass;
  };
  double total = 0.0;  // moles in 100 g of certificate
  for (const auto& name : elements)
    total += problem.blank.analysis.modelled[name] / molar_mass(name);
  const double more = 1.0 / molar_mass(symbol), less = 1.0 / molar_mass("Fe");
  std::vector<double> slopes;
  for (std::size_t e = 0; e < elements.size(); ++e) {
    double moles = 0.0;
    if (elements[e] == symbol) moles = more;
    if (elements[e] == "Fe") moles = -less;
    slopes.push_back((moles - problem.mole_fractions[e] * (more - less)) / total);
  }
  return slopes;
}

/// Slope in T of the reference of carbon; 0 where the set has no carbon.
double graphite_slope(const PhaseSystem& system, Temperature t) {
  const ParameterSet& set = system.parameters();
  const Element* carbon = set.find_element("C");
  if (!carbon) return 0.0;
  const auto& curves = system.phases().front().curves();
  std::vector<TemperatureValue> values(curves.size());
  curves.evaluate(TemperaturePowers(t.in_kelvin()), values);
  for (std::size_t i = 0; i < set.curves.size(); ++i)
    if (set.curves[i].name == carbon->reference_curve) return values[i].dt;
  return 0.0;
}

/// Where no slope exists, those of what is absent or at its limit do not either.
void forget_zeros(StateSlope& slope) {
  slope.matrix.mass_percent = Occurrence::kUnknown;
  slope.matrix.volume_percent = Occurrence::kUnknown;
  for (const auto& [kind, force] : NamedValues(slope.driving_force))
    slope.driving_force.set(kind, Occurrence::kUnknown);
}

Equilibrium with_absent(Equilibrium result, const std::vector<PhasePoint>& absent) {
  result.absent = absent;
  return result;
}

/// One input at a time, from one factorization.
class SlopeMaker {
 public:
  SlopeMaker(const SlopeMaker&) = delete;
  SlopeMaker& operator=(const SlopeMaker&) = delete;
  SlopeMaker(const SoakProblem& problem, const Equilibrium& result, const State& state)
      : problem_(problem),
        result_(result),
        state_(state),
        linear_(problem.system, result, problem.mole_fractions),
        exact_(with_absent(result, linear_.absent())),
        parameters_(problem.system, exact_, problem.options.basis) {}

  StateSlope temperature() const {
    const DirectSlopes direct{
        1.0, graphite_slope(problem_.system, result_.temperature), {}};
    return made({Input::Kind::temperature, "temperature", "K"}, linear_.per_kelvin(),
                direct, Sensitivities::kTemperatureStep, "0.1 K");
  }

  StateSlope element(const std::string& symbol) const {
    return made({Input::Kind::element, symbol, "wt%"},
                linear_.along(per_weight_percent(problem_, symbol)), {},
                Sensitivities::kElementStep, "0.001 wt%");
  }

  StateSlope parameter(const ParameterSlopes::Number& number) const {
    return made({Input::Kind::parameter, number.place, number.unit},
                linear_.slope(parameters_.disturbance(number)),
                parameters_.direct(number),
                Sensitivities::kParameterStep * std::abs(number.value),
                "one millionth of the number");
  }

 private:
  StateSlope made(Input input, const EquilibriumSlope& slope,
                  const DirectSlopes& direct, double step,
                  const std::string& step_text) const;
  std::string phase_change(const EquilibriumSlope& slope, double step) const;
  const std::string& kind(const PhasePoint& point) const {
    return kind_of(problem_.system.definition(point.phase),
                   problem_.system.phases()[point.phase], point.y);
  }

  const SoakProblem& problem_;
  const Equilibrium& result_;
  const State& state_;
  Linearization linear_;
  Equilibrium exact_;
  ParameterSlopes parameters_;
};

/// What a step along the slope, either way, would change; empty when nothing.
std::string SlopeMaker::phase_change(const EquilibriumSlope& slope, double step) const {
  for (std::size_t f = 0; f < result_.present.size(); ++f)
    if (result_.present.size() > 1 &&
        std::abs(slope.present[f].amount) * step >= result_.present[f].amount)
      return kind(result_.present[f]) + " vanishes";
  const double tolerance = problem_.options.solve.stability_tolerance;
  for (std::size_t k = 0; k < result_.absent.size(); ++k) {
    const double reach = std::abs(slope.absent_driving_force[k]) * step;
    if (-result_.absent[k].driving_force <= std::max(reach, tolerance))
      return kind(result_.absent[k]) + " appears";
  }
  return "";
}

StateSlope SlopeMaker::made(Input input, const EquilibriumSlope& slope,
                            const DirectSlopes& direct, double step,
                            const std::string& step_text) const {
  StateSlope out = slope_of_state(problem_.system, result_, state_, slope, direct);
  out.input = std::move(input);
  if (!linear_.unique()) {
    forget_zeros(out);
    out.remark = "the equilibrium leaves amounts or potentials free";
    return out;
  }
  const std::string change = phase_change(slope, step);
  out.one_sided = !change.empty();
  if (out.one_sided) out.remark = change + " within a step of " + step_text;
  return out;
}

}  // namespace

void check_inputs(const SoakProblem& problem, const SensitivityOptions& chosen) {
  std::vector<Problem> problems;
  if (chosen.elements && !chosen.elements->empty() &&
      !holds(problem.system.elements(), "Fe"))
    problems.push_back({std::string(codes::kNoIronToBalance), "elements",
                        "the steel holds no iron to balance an element with",
                        "ask for temperature and parameters only: elements = []"});
  for (const auto& symbol : chosen.elements.value_or(std::vector<std::string>{})) {
    const std::string why = refusal(problem, symbol);
    if (!why.empty())
      problems.push_back({std::string(codes::kNoElementInput), "elements", why,
                          remedy(problem, symbol)});
  }
  if (!chosen.parameters.empty()) check_places(problem, chosen.parameters, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
}

std::vector<StateSlope> slopes_of_soak(const SoakProblem& problem,
                                       const Equilibrium& result, const State& state,
                                       const SensitivityOptions& chosen) {
  check_inputs(problem, chosen);
  std::vector<StateSlope> slopes;
  if (!result.report.usable()) return slopes;
  const SlopeMaker maker(problem, result, state);
  slopes.push_back(maker.temperature());
  for (const auto& symbol : elements_of(problem, chosen))
    slopes.push_back(maker.element(symbol));
  for (const auto& number : numbers_of(problem, chosen))
    slopes.push_back(maker.parameter(number));
  return slopes;
}

}  // namespace gibbsteel::internal
