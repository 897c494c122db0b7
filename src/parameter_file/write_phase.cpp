#include "write_phase.hpp"

#include "read_expression.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr auto kOneLine = JsonText::Layout::one_line;
constexpr auto kLines = JsonText::Layout::lines;

void add_deviations(JsonText& object, const Expression& expression) {
  auto deviations = JsonText::object(kOneLine);
  for (const TemperatureTerm& term : expression.terms)
    if (term.standard_deviation > 0.0)
      deviations.add_number(power_text(term.power), term.standard_deviation);
  if (!deviations.empty()) object.add("standard_deviations", deviations.text());
}

std::string names_json(const std::vector<std::string>& names) {
  auto list = JsonText::list(kOneLine);
  for (const auto& name : names) list.add(json_string(name));
  return list.text();
}

/// The keys "on" and "order".
void add_on(JsonText& object, const std::vector<std::vector<std::string>>& on,
            const std::optional<int>& order) {
  auto list = JsonText::list(kOneLine);
  for (const auto& names : on)
    list.add(names.size() == 1 ? json_string(names[0]) : names_json(names));
  object.add("on", list.text());
  if (order) object.add_number("order", *order);
}

std::string term_json(const Term& term) {
  auto object = JsonText::object(kOneLine);
  add_on(object, term.on, term.order);
  add_expression(object, term.value);
  add_deviations(object, term.value);
  add_provenance(object, term.provenance);
  return object.text();
}

void add_terms(JsonText& phase, std::string_view key, const std::vector<Term>& terms) {
  if (terms.empty()) return;
  auto list = JsonText::list(kLines);
  for (const Term& term : terms) list.add(term_json(term));
  phase.add(key, list.text());
}

std::string volume_terms_json(const VolumeData& volume) {
  auto terms = JsonText::list(kLines);
  for (const VolumeTerm& term : volume.terms) {
    auto object = JsonText::object(kOneLine);
    object.add("on", names_json(term.on)).add_number("cm3_per_mol", term.cm3_per_mol);
    if (term.standard_deviation > 0.0)
      object.add_number("standard_deviation", term.standard_deviation);
    add_provenance(object, term.provenance);
    terms.add(object.text());
  }
  return terms.text();
}

void add_volume(JsonText& phase, std::string_view key,
                const std::optional<VolumeData>& volume) {
  if (!volume) return;
  auto object = JsonText::object(kLines);
  object.add_number("at_K", volume->at);
  if (volume->linear_expansion)
    object.add_number("linear_expansion_per_K", *volume->linear_expansion);
  if (!volume->note.empty()) object.add_text("note", volume->note);
  object.add("terms", volume_terms_json(*volume));
  phase.add(key, object.text());
}

void add_volume_terms(JsonText& phase, std::string_view key,
                      const std::optional<VolumeData>& volume) {
  if (!volume) return;
  auto object = JsonText::object(kLines);
  object.add("terms", volume_terms_json(*volume));
  phase.add(key, object.text());
}

void add_shape(JsonText& object, const Phase& phase) {
  object.add_text("role", to_string(phase.role)).add_text("lattice", phase.lattice);
  auto sublattices = JsonText::list(kLines);
  for (const Sublattice& sublattice : phase.sublattices) {
    auto item = JsonText::object(kOneLine);
    item.add_number("sites", sublattice.sites)
        .add("constituents", names_json(sublattice.constituents));
    sublattices.add(item.text());
  }
  object.add("sublattices", sublattices.text());
  if (const auto& second = phase.second_occurrence) {
    auto when = JsonText::object(kOneLine);
    when.add_number("sublattice", static_cast<double>(second->sublattice + 1));
    if (second->constituents.size() == 1)
      when.add_text("constituent", second->constituents.front());
    else
      when.add("constituent", names_json(second->constituents));
    when.add_number("site_fraction_above", second->site_fraction_above);
    auto item = JsonText::object(kOneLine);
    item.add_text("name", second->name)
        .add_text("role", to_string(second->role))
        .add("when", when.text());
    object.add("second_occurrence", item.text());
  }
  if (phase.magnetism) {
    auto item = JsonText::object(kOneLine);
    item.add_number("structure_factor", phase.magnetism->structure_factor)
        .add_number("negative_value_divisor", phase.magnetism->negative_value_divisor);
    object.add("magnetism", item.text());
  }
}

}  // namespace

void add_expression(JsonText& object, const Expression& expression) {
  if (!expression.curves.empty()) {
    auto curves = JsonText::object(kOneLine);
    for (const CurveShare& share : expression.curves)
      curves.add_number(share.curve, share.factor);
    object.add("curves", curves.text());
  }
  if (expression.terms.empty()) return;
  auto terms = JsonText::object(kOneLine);
  for (const TemperatureTerm& term : expression.terms)
    terms.add_number(power_text(term.power), term.coefficient);
  object.add("terms", terms.text());
}

void add_provenance(JsonText& object, const Provenance& provenance) {
  if (!provenance.source.empty())
    object.add_text("source", provenance.source)
        .add_text("kind", to_string(provenance.kind));
  if (provenance.confidence != Confidence::unstated)
    object.add_text("confidence", to_string(provenance.confidence));
  if (!provenance.note.empty()) object.add_text("note", provenance.note);
}

std::string curve_json(const Curve& curve) {
  auto pieces = JsonText::list(kLines);
  for (const CurvePiece& piece : curve.pieces) {
    auto item = JsonText::object(kOneLine);
    item.add_number("up_to_K", piece.up_to);
    add_expression(item, piece.value);
    pieces.add(item.text());
  }
  auto object = JsonText::object(kLines);
  object.add_number("from_K", curve.from).add("pieces", pieces.text());
  add_provenance(object, curve.provenance);
  return object.text();
}

std::string correlation_json(const Correlation& correlation) {
  auto between = JsonText::list(kOneLine);
  for (const CoefficientName* name : {&correlation.first, &correlation.second}) {
    auto item = JsonText::object(kOneLine);
    item.add_text("phase", name->phase).add_text("property", to_string(name->property));
    add_on(item, name->on, name->order);
    item.add_text("power", power_text(name->power));
    between.add(item.text());
  }
  auto object = JsonText::object(kOneLine);
  object.add("between", between.text())
      .add_number("coefficient", correlation.coefficient);
  add_provenance(object, correlation.provenance);
  return object.text();
}

std::string phase_terms_json(const Phase& phase) {
  auto object = JsonText::object(kLines);
  add_terms(object, "energy", phase.energy);
  add_terms(object, "curie_temperature", phase.curie_temperature);
  add_terms(object, "magnetic_moment", phase.magnetic_moment);
  add_volume_terms(object, "room_volume", phase.room_volume);
  add_volume_terms(object, "hot_volume", phase.hot_volume);
  return object.text();
}

std::string phase_json(const Phase& phase) {
  auto object = JsonText::object(kLines);
  add_shape(object, phase);
  add_terms(object, "energy", phase.energy);
  add_terms(object, "curie_temperature", phase.curie_temperature);
  add_terms(object, "magnetic_moment", phase.magnetic_moment);
  add_volume(object, "room_volume", phase.room_volume);
  add_volume(object, "hot_volume", phase.hot_volume);
  return object.text();
}

}  // namespace gibbsteel::parameter_file
