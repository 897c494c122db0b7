#include "gibbsteel/phase_model.hpp"

#include <string>

#include "gibbsteel/errors.hpp"
#include "internal/phase_kernel.hpp"

namespace gibbsteel {
namespace {

void check_length(const internal::CompiledPhase& phase, std::span<const double> y) {
  if (y.size() == phase.size()) return;
  throw InputError({{"gibbsteel.input.230", "site_fractions of " + phase.name,
                     "has " + std::to_string(y.size()) + " numbers",
                     "give " + std::to_string(phase.size()) +
                         ", one per constituent, sublattice by sublattice"}});
}

}  // namespace

PhaseModel::PhaseModel(const ParameterSet& set, const Phase& phase,
                       std::span<const std::string> active)
    : PhaseModel(set, phase, active,
                 std::make_shared<const internal::CurveTable>(set)) {}

PhaseModel::PhaseModel(const ParameterSet& set, const Phase& phase,
                       std::span<const std::string> active,
                       std::shared_ptr<const internal::CurveTable> curves)
    : compiled_(std::make_unique<internal::CompiledPhase>(
          internal::compile_phase(set, phase, active))),
      curves_(std::move(curves)) {}

PhaseModel::~PhaseModel() = default;
PhaseModel::PhaseModel(PhaseModel&&) noexcept = default;
PhaseModel& PhaseModel::operator=(PhaseModel&&) noexcept = default;

const std::string& PhaseModel::name() const noexcept { return compiled_->name; }
bool PhaseModel::reachable() const noexcept { return compiled_->reachable; }

const std::vector<Constituent>& PhaseModel::constituents() const noexcept {
  return compiled_->constituents;
}

double PhaseModel::sites(std::size_t i) const noexcept { return compiled_->sites[i]; }

PhaseDerivatives PhaseModel::evaluate(Temperature t, std::span<const double> y) const {
  check_length(*compiled_, y);
  const internal::TemperaturePowers powers(t.in_kelvin());
  std::vector<internal::TemperatureValue> curve_values(curves_->size());
  curves_->evaluate(powers, curve_values);
  internal::PhaseCoefficients at;
  at.refresh(*compiled_, powers, curve_values);
  const std::size_t n = compiled_->size();
  PhaseDerivatives d;
  d.dy.resize(n);
  d.dydt.resize(n);
  d.dy2.resize(n * n);
  d.value = internal::gibbs_energy(*compiled_, at, y.data(), d.dy.data(), d.dy2.data());
  const auto slopes =
      internal::temperature_slopes(*compiled_, at, y.data(), d.dydt.data());
  d.dt = slopes.dt;
  d.dt2 = slopes.dt2;
  return d;
}

double PhaseModel::curie_temperature(std::span<const double> y) const {
  check_length(*compiled_, y);
  return internal::effective_curie(*compiled_, y.data());
}

double PhaseModel::magnetic_moment(std::span<const double> y) const {
  check_length(*compiled_, y);
  return internal::effective_moment(*compiled_, y.data());
}

}  // namespace gibbsteel
