#include "internal/parameter_slopes.hpp"

#include <algorithm>

#include "internal/formula_volume.hpp"
#include "internal/phase_kernel.hpp"

namespace gibbsteel::internal {
namespace {

using Number = ParameterSlopes::Number;
using Where = Number::Where;
using Entry = Number::Entry;

const Term& term_of(const Phase& phase, const Number& number) {
  if (number.where == Where::energy) return phase.energy[number.item];
  if (number.where == Where::curie_temperature)
    return phase.curie_temperature[number.item];
  return phase.magnetic_moment[number.item];
}

/// The polynomial that a term multiplies, alone, at `y`. Zero where the term names a
/// constituent that is not there.
PhaseDisturbance polynomial_of(const PhaseSystem& system, const Phase& phase,
                               const Term& term, const std::vector<double>& y) {
  Phase alone;
  alone.name = phase.name;
  alone.sublattices = phase.sublattices;
  alone.energy = {term};
  alone.energy.front().value = {{{TemperaturePower{}, 1.0}}, {}};
  const auto compiled = compile_phase(system.parameters(), alone, system.elements());
  PhaseCoefficients at;
  at.refresh(compiled, TemperaturePowers(1.0), {});
  PhaseDisturbance out;
  out.dy.assign(y.size(), 0.0);
  add_polynomial(compiled.energy.polynomial, at.value.data(), y.data(),
                 {&out.value, out.dy.data(), nullptr, y.size()});
  return out;
}

bool is_volume(const Number& number) {
  return number.where == Where::room_volume || number.where == Where::hot_volume;
}

}  // namespace

ParameterSlopes::ParameterSlopes(const PhaseSystem& system, const Equilibrium& result,
                                 VolumeBasis basis)
    : system_(system),
      result_(result),
      basis_(basis),
      kelvin_(result.temperature.in_kelvin()) {
  const CurveTable& table = system.phases().front().curves();
  curves_.resize(table.size());
  table.evaluate(TemperaturePowers(kelvin_), curves_);
}

bool ParameterSlopes::owns(const Number& number, const PhasePoint& point) const {
  return &system_.definition(point.phase) == &system_.parameters().phases[number.owner];
}

/// What a unit of the number adds to the expression that it stands in.
double ParameterSlopes::scale_of(const Number& number,
                                 const Expression& expression) const {
  if (number.entry == Entry::coefficient)
    return power_value(expression.terms[number.index].power, kelvin_).value;
  const std::string& name = expression.curves[number.index].curve;
  const auto& all = system_.parameters().curves;
  const auto at = std::find_if(all.begin(), all.end(),
                               [&](const Curve& curve) { return curve.name == name; });
  return curves_[static_cast<std::size_t>(at - all.begin())].value;
}

/// Of every curve, per unit of a number that stands in a curve.
std::vector<double> ParameterSlopes::curve_changes(const Number& number) const {
  std::vector<double> change(curves_.size(), 0.0);
  const CurveTable& table = system_.phases().front().curves();
  if (table.piece_at(number.owner, kelvin_) != number.item) return change;
  const Curve& curve = system_.parameters().curves[number.owner];
  change[number.owner] = scale_of(number, curve.pieces[number.item].value);
  table.propagate(kelvin_, change);
  return change;
}

PhaseDisturbance ParameterSlopes::of_curves(const PhasePoint& point,
                                            const std::vector<double>& change) const {
  const CompiledPhase& phase = system_.phases()[point.phase].compiled();
  std::vector<double> coefficients;
  bool any = false;
  for (const CompiledExpression& expression : phase.energy.coefficients) {
    double sum = 0.0;
    for (const auto& [curve, factor] : expression.curves) sum += factor * change[curve];
    any = any || sum != 0.0;
    coefficients.push_back(sum);
  }
  PhaseDisturbance out;
  if (!any) return out;
  out.dy.assign(point.y.size(), 0.0);
  add_polynomial(phase.energy.polynomial, coefficients.data(), point.y.data(),
                 {&out.value, out.dy.data(), nullptr, point.y.size()});
  return out;
}

PhaseDisturbance ParameterSlopes::of_term(const PhasePoint& point,
                                          const Number& number) const {
  if (!owns(number, point)) return {};
  const Phase& phase = system_.definition(point.phase);
  const Term& term = term_of(phase, number);
  const PhaseDisturbance shape = polynomial_of(system_, phase, term, point.y);
  const CompiledPhase& compiled = system_.phases()[point.phase].compiled();
  PhaseDisturbance out;
  out.dy.assign(point.y.size(), 0.0);
  if (number.where == Where::energy) {
    const double scale = scale_of(number, term.value);
    out.value = scale * shape.value;
    for (std::size_t i = 0; i < out.dy.size(); ++i) out.dy[i] = scale * shape.dy[i];
    return out;
  }
  const auto part = number.where == Where::curie_temperature ? MagneticPart::curie
                                                             : MagneticPart::moment;
  out.value = magnetic_parameter_slope(compiled, kelvin_, point.y.data(), part,
                                       shape.value, shape.dy.data(), out.dy.data());
  return out;
}

Disturbance ParameterSlopes::disturbance(const Number& number) const {
  Disturbance out;
  if (is_volume(number)) return out;
  std::vector<double> change;
  if (number.where == Where::curve) change = curve_changes(number);
  const auto add = [&](const std::vector<PhasePoint>& points,
                       std::vector<PhaseDisturbance>& list) {
    for (const PhasePoint& point : points)
      list.push_back(number.where == Where::curve ? of_curves(point, change)
                                                  : of_term(point, number));
  };
  add(result_.present, out.present);
  add(result_.absent, out.absent);
  return out;
}

double ParameterSlopes::of_volume(const PhasePoint& point, const Number& number) const {
  if (!owns(number, point)) return 0.0;
  const PhaseModel& model = system_.phases()[point.phase];
  const VolumeData& data = *volume_data(system_.definition(point.phase), basis_);
  if (number.entry == Entry::expansion)
    return basis_ == VolumeBasis::room
               ? 0.0
               : volume_at_reference(data, model, point.y) * 3.0 * (kelvin_ - data.at);
  return end_member_share(1.0, model, point.y, data.terms[number.item]) *
         expansion(data, basis_, kelvin_);
}

DirectSlopes ParameterSlopes::direct(const Number& number) const {
  DirectSlopes out;
  if (number.where == Where::curve) {
    const ParameterSet& set = system_.parameters();
    const Element* carbon = set.find_element("C");
    const auto change = curve_changes(number);
    for (std::size_t i = 0; carbon && i < set.curves.size(); ++i)
      if (set.curves[i].name == carbon->reference_curve) out.graphite = change[i];
    return out;
  }
  const bool shown = basis_ == VolumeBasis::room ? number.where == Where::room_volume
                                                 : number.where == Where::hot_volume;
  if (!shown) return out;
  for (const PhasePoint& point : result_.present)
    out.volume.push_back(of_volume(point, number));
  return out;
}

}  // namespace gibbsteel::internal
