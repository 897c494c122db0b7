#include <map>

#include "expression_text.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "markdown_table.hpp"
#include "number_text.hpp"
#include "term_key.hpp"
#include "uncertain_numbers.hpp"

namespace gibbsteel {

namespace {

using namespace parameter_file;

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

std::string terms_text(const std::string& title, const std::vector<Term>& terms) {
  if (terms.empty()) return "";
  MarkdownTable table({"on", "order", "value", "source", "kind", "note"});
  for (const Term& term : terms) {
    table.add({on_text(term.on), term.order ? std::to_string(*term.order) : "",
               expression_text(term.value), source_text(term.provenance),
               kind_text(term.provenance), term.provenance.note});
  }
  return "\n### " + title + "\n\n" + table.text();
}

std::string volume_text(const std::string& title,
                        const std::optional<VolumeData>& volume) {
  if (!volume) return "";
  std::string text = "\n### " + title + "\n\nAt " + number_text(volume->at) + " K";
  if (volume->linear_expansion) {
    text += "; linear expansion " + number_text(*volume->linear_expansion) + " 1/K";
  }
  if (!volume->note.empty()) text += "; " + volume->note;
  MarkdownTable table({"end member", "cm3/mol", "source", "kind", "note"});
  for (const VolumeTerm& term : volume->terms) {
    std::string value = number_text(term.cm3_per_mol);
    if (term.standard_deviation > 0.0)
      value += " (+- " + number_text(term.standard_deviation) + ")";
    table.add({on_text(term.on), value, source_text(term.provenance),
               kind_text(term.provenance), term.provenance.note});
  }
  return text + ".\n\n" + table.text();
}

std::string shape_text(const Phase& phase) {
  std::string text = "\n## " + phase.name + "\n\n" + phase.lattice + ".";
  std::size_t position = 0;
  for (const Sublattice& sublattice : phase.sublattices) {
    text += " Sublattice " + std::to_string(++position) + ": " +
            number_text(sublattice.sites) + " sites (" +
            listed(sublattice.constituents) + ").";
  }
  if (const auto& second = phase.second_occurrence) {
    text += " Reported as " + second->name + " where more than " +
            number_text(second->site_fraction_above) + " of sublattice " +
            std::to_string(second->sublattice + 1) + " is " +
            listed(second->constituents) + ".";
  }
  if (phase.magnetism) {
    text += " Magnetic structure factor " +
            number_text(phase.magnetism->structure_factor) +
            "; negative Curie temperatures and moments are divided by " +
            number_text(phase.magnetism->negative_value_divisor) + " in size.";
  }
  return text + "\n";
}

std::string phases_text(const ParameterSet& set) {
  std::string text;
  for (const Phase& phase : set.phases) {
    text += shape_text(phase);
    text += terms_text("Energy [J/mol of formula units]", phase.energy);
    text += terms_text("Curie temperature [K]", phase.curie_temperature);
    text += terms_text("Magnetic moment [Bohr magnetons per site of sublattice 1]",
                       phase.magnetic_moment);
    text += volume_text("Volume at room temperature", phase.room_volume);
    text += volume_text("Volume at soak temperature", phase.hot_volume);
  }
  return text;
}

std::string curves_text(const ParameterSet& set) {
  MarkdownTable table({"curve", "range [K]", "value", "source", "kind", "note"});
  for (const Curve& curve : set.curves) {
    double from = curve.from;
    for (const CurvePiece& piece : curve.pieces) {
      table.add({curve.name, number_text(from) + " to " + number_text(piece.up_to),
                 expression_text(piece.value), source_text(curve.provenance),
                 kind_text(curve.provenance), curve.provenance.note});
      from = piece.up_to;
    }
  }
  return "\n## Curves [J/mol]\n\n" + table.text();
}

std::string sources_text(const ParameterSet& set) {
  MarkdownTable table({"key", "citation", "fitted to check records"});
  for (const Source& source : set.sources) {
    table.add({source.key, source.citation, listed(source.fitted_to_check_records)});
  }
  return "\n## Sources\n\n" + table.text();
}

std::string elements_text(const ParameterSet& set) {
  MarkdownTable table({"element", "molar mass [g/mol]", "reference", "validity [wt%]"});
  for (const Element& element : set.elements) {
    const ElementRange* range = set.find_range(element.symbol);
    table.add({element.symbol, number_text(element.molar_mass), element.reference_curve,
               range == nullptr
                   ? "balance or not stated"
                   : number_text(range->low) + " to " + number_text(range->high)});
  }
  return "\n## Elements\n\nThe parameters were chosen for " +
         number_text(set.lowest_temperature) + " to " +
         number_text(set.highest_temperature) +
         " K. The format has no source for molar masses and validity ranges.\n\n" +
         table.text();
}

/// How many terms, curves and volumes there are of each kind.
std::string count_text(const ParameterSet& set) {
  std::map<std::string, std::size_t> counts;
  const auto count = [&](const Provenance& provenance) {
    ++counts[provenance.source.empty() ? "without a stated source"
                                       : std::string(to_string(provenance.kind))];
  };
  for (const Curve& curve : set.curves) count(curve.provenance);
  for (const Phase& phase : set.phases) {
    for (const auto* terms :
         {&phase.energy, &phase.curie_temperature, &phase.magnetic_moment}) {
      for (const Term& term : *terms) count(term.provenance);
    }
    for (const auto* volume : {&phase.room_volume, &phase.hot_volume}) {
      if (!*volume) continue;
      for (const VolumeTerm& term : (*volume)->terms) count(term.provenance);
    }
  }
  for (const SolidusBound& bound : set.solidus_bounds) count(bound.provenance);
  std::string text;
  for (const auto& [kind, number] : counts) {
    text += (text.empty() ? "" : ", ") + std::to_string(number) + " " + kind;
  }
  return "\nCurves, terms, volumes and solidus bounds: " + text + ".\n";
}

/// What (+- ...) means, where there is any.
std::string deviations_text(const ParameterSet& set) {
  return uncertain_numbers(set).empty()
             ? ""
             : "\n(+- ...) is a standard deviation of the number before it.\n";
}

std::string correlations_text(const ParameterSet& set) {
  if (set.correlations.empty()) return "";
  MarkdownTable table(
      {"coefficient", "and coefficient", "correlation", "source", "kind", "note"});
  for (const Correlation& correlation : set.correlations)
    table.add(
        {coefficient_text(correlation.first), coefficient_text(correlation.second),
         number_text(correlation.coefficient), source_text(correlation.provenance),
         kind_text(correlation.provenance), correlation.provenance.note});
  return "\n## Correlations between uncertain coefficients\n\n" + table.text();
}

std::string bounds_text(const ParameterSet& set) {
  if (set.solidus_bounds.empty()) return "";
  MarkdownTable table({"steel", "composition [wt%]", "solidus [C]", "uncertainty [C]",
                       "source", "kind", "note"});
  for (const SolidusBound& bound : set.solidus_bounds) {
    std::string composition;
    for (const auto& [symbol, percent] : bound.weight_percent) {
      composition += (composition.empty() ? "" : ", ") + number_text(percent) + symbol;
    }
    table.add({bound.steel, composition,
               std::string(to_string(bound.sense)) + " " + number_text(bound.celsius),
               number_text(bound.uncertainty), source_text(bound.provenance),
               kind_text(bound.provenance), bound.provenance.note});
  }
  return "\n## Known solidus bounds\n\n" + table.text();
}

}  // namespace

std::string sources_page(const ParameterSet& set) {
  return "# Where every number comes from\n\n" + set.title() +
         "\n\nGenerated from the parameter file; do not edit.\n\n"
         "* published: read in the source named\n"
         "* recalled: a published value quoted from memory\n"
         "* estimated: fitted or estimated for this file\n" +
         deviations_text(set) + count_text(set) + sources_text(set) +
         elements_text(set) + curves_text(set) + phases_text(set) +
         correlations_text(set) + bounds_text(set);
}

}  // namespace gibbsteel
