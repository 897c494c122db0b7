#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel {

namespace {

template <class Record>
const Record* find_by(const std::vector<Record>& records, std::string Record::*key,
                      std::string_view wanted) noexcept {
  for (const Record& record : records) {
    if (record.*key == wanted) return &record;
  }
  return nullptr;
}

}  // namespace

std::string_view to_string(Kind kind) noexcept {
  switch (kind) {
    case Kind::published:
      return "published";
    case Kind::recalled:
      return "recalled";
    case Kind::estimated:
      break;
  }
  return "estimated";
}

std::string_view to_string(Confidence confidence) noexcept {
  switch (confidence) {
    case Confidence::high:
      return "high";
    case Confidence::medium:
      return "medium";
    case Confidence::low:
      return "low";
    case Confidence::unstated:
      break;
  }
  return "unstated";
}

std::string_view to_string(Role role) noexcept {
  switch (role) {
    case Role::matrix:
      return "matrix";
    case Role::carbide:
      return "carbide";
    case Role::other:
      break;
  }
  return "other";
}

std::string_view to_string(PhaseProperty property) noexcept {
  switch (property) {
    case PhaseProperty::curie_temperature:
      return "curie_temperature";
    case PhaseProperty::magnetic_moment:
      return "magnetic_moment";
    case PhaseProperty::energy:
      break;
  }
  return "energy";
}

bool same_pair(const Correlation& a, const Correlation& b) noexcept {
  return (a.first == b.first && a.second == b.second) ||
         (a.first == b.second && a.second == b.first);
}

std::string_view to_string(SolidusSense sense) noexcept {
  switch (sense) {
    case SolidusSense::at_least:
      return "at least";
    case SolidusSense::at_most:
      return "at most";
    case SolidusSense::measured:
      break;
  }
  return "measured";
}

const Element* ParameterSet::find_element(std::string_view symbol) const noexcept {
  return find_by(elements, &Element::symbol, symbol);
}

const Curve* ParameterSet::find_curve(std::string_view name) const noexcept {
  return find_by(curves, &Curve::name, name);
}

const Phase* ParameterSet::find_phase(std::string_view name) const noexcept {
  return find_by(phases, &Phase::name, name);
}

const Source* ParameterSet::find_source(std::string_view key) const noexcept {
  return find_by(sources, &Source::key, key);
}

const ElementRange* ParameterSet::find_range(std::string_view symbol) const noexcept {
  return find_by(validity, &ElementRange::symbol, symbol);
}

const Term* ParameterSet::find_term(const CoefficientName& name) const noexcept {
  const Phase* phase = find_phase(name.phase);
  if (phase == nullptr) return nullptr;
  const std::vector<Term>& terms =
      name.property == PhaseProperty::energy              ? phase->energy
      : name.property == PhaseProperty::curie_temperature ? phase->curie_temperature
                                                          : phase->magnetic_moment;
  for (const Term& term : terms)
    if (term.on == name.on && term.order == name.order) return &term;
  return nullptr;
}

const TemperatureTerm* ParameterSet::find_coefficient(
    const CoefficientName& name) const noexcept {
  const Term* term = find_term(name);
  if (term == nullptr) return nullptr;
  for (const TemperatureTerm& known : term->value.terms)
    if (known.power == name.power) return &known;
  return nullptr;
}

std::string ParameterSet::title() const {
  std::string text;
  for (const FileRecord& file : files) {
    if (!text.empty()) text += " + ";
    text += file.title + " (edition " + file.edition + ")";
  }
  return text;
}

}  // namespace gibbsteel
