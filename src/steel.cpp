#include "gibbsteel/steel.hpp"

#include "gibbsteel/errors.hpp"
#include "internal/run_sweep.hpp"
#include "internal/shared_hash.hpp"
#include "internal/soak_problem.hpp"
#include "internal/soak_warnings.hpp"
#include "internal/variant_name.hpp"

namespace gibbsteel {

Steel::Steel(const NamedValues& weight_percent, SteelOptions options)
    : name_(std::move(options.name)),
      parameters_(options.parameters ? std::move(options.parameters)
                                     : default_parameters()),
      hash_(internal::shared_hash(parameters_)),
      bind_tramp_elements_(options.bind_tramp_elements),
      analysis_(
          read_analysis(weight_percent, *parameters_, options.bind_tramp_elements)) {
  for (const auto& [symbol, fraction] : analysis_.mole_fractions(*parameters_)) {
    elements_.push_back(symbol);
    mole_fractions_.push_back(fraction);
  }
}

State Steel::soak(Temperature t, const SoakOptions& options) const {
  internal::check_temperatures({&t, 1}, options.temperature_unit);
  const internal::SoakProblem problem(*this, options);
  State state = problem.state_of(problem.solve(t));
  internal::ask_for_celsius(t, options.temperature_unit, state.warnings);
  return state;
}

Sweep Steel::sweep(std::span<const Temperature> temperatures,
                   const SoakOptions& options,
                   const std::function<bool(std::size_t)>& progress) const {
  internal::check_temperatures(temperatures, options.temperature_unit);
  const internal::SoakProblem problem(*this, options);
  Sweep sweep;
  sweep.steel = name_;
  sweep.temperature_unit = options.temperature_unit;
  if (options.solve.certify == Certificate::proof)
    internal::prove_sweep(problem, temperatures, progress, sweep);
  else
    internal::follow_sweep(problem, temperatures, progress, sweep);
  return sweep;
}

Steel Steel::changed(const NamedValues& weight_percent, std::string name) const {
  NamedValues all;
  for (const auto& [symbol, percent] : analysis_.given)
    if (symbol != "Fe") all.set(symbol, percent);
  for (const auto& [symbol, percent] : weight_percent) all.set(symbol, percent);
  if (name.empty()) name = internal::variant_name(name_, weight_percent);
  return Steel(all, {std::move(name), parameters_, bind_tramp_elements_});
}

Steel Steel::with_parameters(SharedParameters parameters) const {
  return Steel(analysis_.given, {name_, std::move(parameters), bind_tramp_elements_});
}

std::string Steel::brief() const {
  return "Steel" + (name_.empty() ? "" : " " + name_) + ": " + analysis_.brief() +
         " (wt%)";
}

}  // namespace gibbsteel
