#include "gibbsteel/parameter_file.hpp"
#include "number_text.hpp"
#include "read_expression.hpp"

namespace gibbsteel {

namespace {

using namespace parameter_file;

constexpr const char* kNotStated = "not stated in the file";

/// Text inside a table cell.
std::string cell(const std::string& text) {
  std::string result;
  for (const char c : text) {
    if (c == '|') result += '\\';
    result += c == '\n' ? ' ' : c;
  }
  return result;
}

std::string row(const std::vector<std::string>& cells) {
  std::string text = "|";
  for (const auto& item : cells) text += " " + cell(item) + " |";
  return text + "\n";
}

std::string header(const std::vector<std::string>& cells) {
  std::string text = row(cells) + "|";
  for (std::size_t i = 0; i < cells.size(); ++i) text += " --- |";
  return text + "\n";
}

std::string value_text(const Expression& value) {
  std::string text;
  const auto add = [&](double factor, const std::string& of) {
    const bool negative = factor < 0.0;
    text += text.empty() ? (negative ? "-" : "") : (negative ? " - " : " + ");
    text += number_text(negative ? -factor : factor);
    if (of != "1") text += " " + of;
  };
  for (const CurveShare& share : value.curves) add(share.factor, "(" + share.curve + ")");
  for (const TemperatureTerm& term : value.terms)
    add(term.coefficient, power_text(term.power));
  return text.empty() ? "0" : text;
}

std::string on_text(const std::vector<std::vector<std::string>>& on) {
  std::string text;
  for (const auto& names : on) {
    if (!text.empty()) text += " : ";
    for (std::size_t i = 0; i < names.size(); ++i)
      text += (i == 0 ? "" : ", ") + names[i];
  }
  return text;
}

std::string kind_text(const Provenance& p) {
  if (p.source.empty()) return kNotStated;
  std::string text(to_string(p.kind));
  if (p.confidence != Confidence::unstated)
    text += ", confidence " + std::string(to_string(p.confidence));
  return text;
}

std::string terms_table(const std::string& title, const std::vector<Term>& terms) {
  if (terms.empty()) return "";
  std::string text = "\n" + title + "\n\n" +
                     header({"on", "order", "value", "source", "kind", "note"});
  for (const Term& term : terms)
    text += row({on_text(term.on), term.order ? std::to_string(*term.order) : "",
                 value_text(term.value), term.provenance.source,
                 kind_text(term.provenance), term.provenance.note});
  return text;
}

std::string volume_table(const std::string& title,
                         const std::optional<VolumeData>& volume) {
  if (!volume) return "";
  std::string text = "\n" + title + " at " + number_text(volume->at) + " K";
  if (volume->linear_expansion)
    text += ", linear expansion " + number_text(*volume->linear_expansion) + " 1/K";
  text += volume->note.empty() ? "\n\n" : ". " + volume->note + "\n\n";
  text += header({"end member", "cm3/mol", "source", "kind"});
  for (const VolumeTerm& term : volume->terms) {
    std::string names;
    for (const auto& name : term.on) names += (names.empty() ? "" : " : ") + name;
    const auto& p = term.provenance;
    text += row({names, number_text(term.cm3_per_mol),
                 p.source.empty() ? kNotStated : p.source, kind_text(p)});
  }
  return text;
}

std::string phases_text(const ParameterSet& set) {
  std::string text;
  for (const Phase& phase : set.phases) {
    text += "\n## " + phase.name + "\n\n" + phase.lattice + "; sites";
    for (const Sublattice& sublattice : phase.sublattices) {
      text += " " + number_text(sublattice.sites) + " (";
      for (std::size_t i = 0; i < sublattice.constituents.size(); ++i)
        text += (i == 0 ? "" : ", ") + sublattice.constituents[i];
      text += ")";
    }
    text += ".\n";
    if (phase.magnetism)
      text += "Magnetic structure factor " +
              number_text(phase.magnetism->structure_factor) +
              ", negative values divided by " +
              number_text(phase.magnetism->negative_value_divisor) + ".\n";
    text += terms_table("Energy [J/mol of formula units]", phase.energy);
    text += terms_table("Curie temperature [K]", phase.curie_temperature);
    text += terms_table("Magnetic moment [Bohr magnetons]", phase.magnetic_moment);
    text += volume_table("Volume at room temperature,", phase.room_volume);
    text += volume_table("Volume when hot,", phase.hot_volume);
  }
  return text;
}

std::string curves_text(const ParameterSet& set) {
  std::string text = "\n## Curves [J/mol]\n\n" +
                     header({"curve", "range [K]", "value", "source", "kind", "note"});
  for (const Curve& curve : set.curves) {
    double from = curve.from;
    for (const CurvePiece& piece : curve.pieces) {
      text += row({curve.name, number_text(from) + " to " + number_text(piece.up_to),
                   value_text(piece.value), curve.provenance.source,
                   kind_text(curve.provenance), curve.provenance.note});
      from = piece.up_to;
    }
  }
  return text;
}

std::string front_text(const ParameterSet& set) {
  std::string text = "# Where every number comes from\n\n" + set.title() +
                     "\n\nGenerated from the parameter file; do not edit. published: "
                     "read in the source named. recalled: a published value quoted from "
                     "memory. estimated: fitted or estimated by this project.\n";
  text += "\n## Sources\n\n" + header({"key", "citation", "fitted to check records"});
  for (const Source& source : set.sources) {
    std::string records;
    for (const auto& record : source.fitted_to_check_records)
      records += (records.empty() ? "" : ", ") + record;
    text += row({source.key, source.citation, records});
  }
  text += "\n## Elements\n\n" + header({"element", "molar mass [g/mol]", "reference"});
  for (const Element& e : set.elements)
    text += row({e.symbol, number_text(e.molar_mass), e.reference_curve});
  text += "\nMolar masses are standard atomic weights; their source is " +
          std::string(kNotStated) + ".\n";
  return text;
}

std::string bounds_text(const ParameterSet& set) {
  if (set.solidus_bounds.empty()) return "";
  std::string text =
      "\n## Known solidus bounds\n\n" +
      header({"steel", "solidus [C]", "uncertainty [C]", "source", "kind", "note"});
  for (const SolidusBound& b : set.solidus_bounds)
    text += row({b.steel,
                 std::string(to_string(b.sense)) + " " + number_text(b.celsius),
                 number_text(b.uncertainty), b.provenance.source,
                 kind_text(b.provenance), b.provenance.note});
  return text;
}

}  // namespace

std::string sources_page(const ParameterSet& set) {
  return front_text(set) + curves_text(set) + phases_text(set) + bounds_text(set);
}

}  // namespace gibbsteel
