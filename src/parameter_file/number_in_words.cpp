#include "parameter_file/number_in_words.hpp"

#include "parameter_file/expression_text.hpp"
#include "parameter_file/term_key.hpp"

namespace gibbsteel::parameter_file {
namespace {

using Where = ParameterNumber::Where;
using Entry = ParameterNumber::Entry;

}  // namespace

std::optional<CoefficientName> coefficient_name(const ParameterSet& set,
                                                const ParameterNumber& number) {
  const Term* term = term_of(set, number);
  if (!term) return {};
  const auto property = number.where == Where::energy ? PhaseProperty::energy
                        : number.where == Where::curie_temperature
                            ? PhaseProperty::curie_temperature
                            : PhaseProperty::magnetic_moment;
  return CoefficientName{set.phases[number.owner].name, property, term->on, term->order,
                         term->value.terms[number.index].power};
}

std::string number_in_words(const ParameterSet& set, const ParameterNumber& number) {
  if (number.entry == Entry::volume) {
    const Phase& phase = set.phases[number.owner];
    const bool room = number.where == Where::room_volume;
    const VolumeData& data = room ? *phase.room_volume : *phase.hot_volume;
    return phase.name + (room ? ", room volume of " : ", hot volume of ") +
           on_text(data.terms[number.item].on);
  }
  if (number.entry != Entry::coefficient) return number.place;
  const auto name = coefficient_name(set, number);
  return name ? coefficient_text(*name) : number.place;
}

std::string number_in_words(const ParameterSet& set, const UncertainNumber& number) {
  if (number.name) return coefficient_text(*number.name);
  for (const ParameterNumber& known : parameter_numbers(set))
    if (known.place == number.place) return number_in_words(set, known);
  return number.place;
}

}  // namespace gibbsteel::parameter_file
