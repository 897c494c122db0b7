#include "parameter_numbers.hpp"

#include "message_text.hpp"
#include "read_expression.hpp"

namespace gibbsteel::parameter_file {
namespace {

using Where = ParameterNumber::Where;
using Entry = ParameterNumber::Entry;

/// "J/mol", "J/(mol K)", "J K^2/mol": unit of the coefficient of a power of T.
std::string energy_unit(const TemperaturePower& power) {
  const int n = power.exponent;
  const std::string size = n > 1 || n < -1 ? "^" + std::to_string(n < 0 ? -n : n) : "";
  if (n == 0) return "J/mol";
  return n > 0 ? "J/(mol K" + size + ")" : "J K" + size + "/mol";
}

std::string unit_of(Where where, const TemperaturePower& power) {
  if (where == Where::curie_temperature) return "K";
  if (where == Where::magnetic_moment) return "Bohr magnetons per site";
  return energy_unit(power);
}

void add_expression(ParameterNumber number, const Expression& expression,
                    std::vector<ParameterNumber>& out) {
  const std::string place = number.place;
  for (number.index = 0; number.index < expression.terms.size(); ++number.index) {
    const TemperatureTerm& term = expression.terms[number.index];
    number.entry = Entry::coefficient;
    number.value = term.coefficient;
    number.unit = unit_of(number.where, term.power);
    number.place = place + "/terms/" + pointer_step(power_text(term.power));
    out.push_back(number);
  }
  for (number.index = 0; number.index < expression.curves.size(); ++number.index) {
    const CurveShare& share = expression.curves[number.index];
    number.entry = Entry::factor;
    number.value = share.factor;
    number.unit = "";
    number.place = place + "/curves/" + pointer_step(share.curve);
    out.push_back(number);
  }
}

void add_curves(const ParameterSet& set, std::vector<ParameterNumber>& out) {
  ParameterNumber number;
  for (number.owner = 0; number.owner < set.curves.size(); ++number.owner) {
    const Curve& curve = set.curves[number.owner];
    for (number.item = 0; number.item < curve.pieces.size(); ++number.item) {
      number.place = "/curves/" + pointer_step(curve.name) + "/pieces/" +
                     std::to_string(number.item);
      add_expression(number, curve.pieces[number.item].value, out);
    }
  }
}

void add_terms(ParameterNumber number, const std::string& list,
               const std::vector<Term>& terms, std::vector<ParameterNumber>& out) {
  for (number.item = 0; number.item < terms.size(); ++number.item) {
    number.place = list + "/" + std::to_string(number.item);
    add_expression(number, terms[number.item].value, out);
  }
}

void add_volume(ParameterNumber number, const std::string& place,
                const std::optional<VolumeData>& data,
                std::vector<ParameterNumber>& out) {
  if (!data) return;
  if (data->linear_expansion) {
    number.entry = Entry::expansion;
    number.value = *data->linear_expansion;
    number.unit = "1/K";
    number.place = place + "/linear_expansion_per_K";
    out.push_back(number);
  }
  number.entry = Entry::volume;
  number.unit = "cm3/mol";
  for (number.item = 0; number.item < data->terms.size(); ++number.item) {
    number.value = data->terms[number.item].cm3_per_mol;
    number.place = place + "/terms/" + std::to_string(number.item) + "/cm3_per_mol";
    out.push_back(number);
  }
}

void add_phase(const Phase& phase, std::size_t owner,
               std::vector<ParameterNumber>& out) {
  const std::string place = "/phases/" + pointer_step(phase.name);
  ParameterNumber number;
  number.owner = owner;
  number.where = Where::energy;
  add_terms(number, place + "/energy", phase.energy, out);
  number.where = Where::curie_temperature;
  add_terms(number, place + "/curie_temperature", phase.curie_temperature, out);
  number.where = Where::magnetic_moment;
  add_terms(number, place + "/magnetic_moment", phase.magnetic_moment, out);
  number.where = Where::room_volume;
  add_volume(number, place + "/room_volume", phase.room_volume, out);
  number.where = Where::hot_volume;
  add_volume(number, place + "/hot_volume", phase.hot_volume, out);
}

double& entry_in(Expression& value, const ParameterNumber& number) {
  return number.entry == Entry::factor ? value.curves[number.index].factor
                                       : value.terms[number.index].coefficient;
}

/// The list of terms that it belongs to; nullptr for curves and volumes.
template <class PhaseType>
auto* terms_of(PhaseType& phase, Where where) {
  if (where == Where::energy) return &phase.energy;
  if (where == Where::curie_temperature) return &phase.curie_temperature;
  return where == Where::magnetic_moment ? &phase.magnetic_moment : nullptr;
}

}  // namespace

double& number_in(ParameterSet& set, const ParameterNumber& number) {
  if (number.where == Where::curve)
    return entry_in(set.curves[number.owner].pieces[number.item].value, number);
  Phase& phase = set.phases[number.owner];
  if (auto* terms = terms_of(phase, number.where))
    return entry_in((*terms)[number.item].value, number);
  VolumeData& data =
      number.where == Where::room_volume ? *phase.room_volume : *phase.hot_volume;
  return number.entry == Entry::expansion ? *data.linear_expansion
                                          : data.terms[number.item].cm3_per_mol;
}

const Term* term_of(const ParameterSet& set, const ParameterNumber& number) {
  if (number.where == Where::curve) return nullptr;
  const auto* terms = terms_of(set.phases[number.owner], number.where);
  return terms ? &(*terms)[number.item] : nullptr;
}

std::vector<ParameterNumber> parameter_numbers(const ParameterSet& set) {
  std::vector<ParameterNumber> numbers;
  add_curves(set, numbers);
  for (std::size_t i = 0; i < set.phases.size(); ++i)
    add_phase(set.phases[i], i, numbers);
  return numbers;
}

}  // namespace gibbsteel::parameter_file
