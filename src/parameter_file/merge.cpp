#include "merge.hpp"

#include <algorithm>
#include <string>

#include "../internal/error_codes.hpp"
#include "merge_phase.hpp"
#include "message_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// Whoever says it.
bool is_known(SolidusBound bound, const ParameterSet& set) {
  return std::any_of(set.solidus_bounds.begin(), set.solidus_bounds.end(),
                     [&](const SolidusBound& known) {
                       bound.provenance = known.provenance;
                       return bound == known;
                     });
}

void report_redefined(const std::string& what, const std::string& place,
                      const std::string& below_file, Problems& problems) {
  problems.add(codes::kLayerRedefines, place,
               "this " + what + " is already defined in " + in_quotes(below_file),
               what == "element"
                   ? "leave it out; a layer cannot change what lies below"
                   : "choose another name; a layer cannot change what lies below");
}

void merge_ranges(const Draft& draft, ParameterSet& set) {
  for (const Placed<ElementRange>& added : draft.ranges) {
    const ElementRange& range = added.value;
    const auto found = std::find_if(
        set.validity.begin(), set.validity.end(),
        [&](const ElementRange& known) { return known.symbol == range.symbol; });
    if (found == set.validity.end()) {
      set.validity.push_back(range);
    } else {
      *found = range;
    }
  }
}

void merge_sources(const Draft& draft, ParameterSet& set, Problems& problems) {
  for (const auto& [source, place, sound] : draft.sources) {
    const Source* known = set.find_source(source.key);
    if (known == nullptr) {
      set.sources.push_back(source);
    } else if (known->citation != source.citation ||
               known->fitted_to_check_records != source.fitted_to_check_records) {
      report_redefined("source", place, known->file, problems);
    }
  }
}

void merge_elements(const Draft& draft, ParameterSet& set, Problems& problems) {
  for (const auto& [element, place, sound] : draft.elements) {
    const Element* known = set.find_element(element.symbol);
    if (known == nullptr) {
      set.elements.push_back(element);
    } else if (known->molar_mass != element.molar_mass ||
               known->reference_curve != element.reference_curve) {
      report_redefined("element", place, known->file, problems);
    }
  }
}

void merge_curves(const Draft& draft, ParameterSet& set, Problems& problems) {
  for (const DraftCurve& added : draft.curves) {
    const Curve* known = set.find_curve(added.curve.name);
    if (known == nullptr) {
      set.curves.push_back(added.curve);
    } else if (known->from != added.curve.from || known->pieces != added.curve.pieces) {
      report_redefined("curve", added.place, known->provenance.file, problems);
    }
  }
}

void merge_phases(const Draft& draft, ParameterSet& set, Problems& problems) {
  for (const DraftPhase& added : draft.phases) {
    const auto found =
        std::find_if(set.phases.begin(), set.phases.end(),
                     [&](const Phase& known) { return known.name == added.name; });
    if (found == set.phases.end()) {
      set.phases.push_back(new_phase(added, draft.record.name, problems));
    } else {
      merge_phase(added, draft.record.name, *found, problems);
    }
  }
}

/// A term that this file replaced takes its correlations with it; a pair that is given
/// again replaces the one below.
void merge_correlations(const Draft& draft, ParameterSet& set) {
  const auto outdated = [&](const Correlation& known) {
    for (const CoefficientName* name : {&known.first, &known.second}) {
      const Term* term = set.find_term(*name);
      if (term == nullptr || term->provenance.file == draft.record.name) return true;
    }
    return std::any_of(draft.correlations.begin(), draft.correlations.end(),
                       [&](const Placed<Correlation>& added) {
                         return same_pair(added.value, known);
                       });
  };
  std::erase_if(set.correlations, outdated);
  for (const Placed<Correlation>& added : draft.correlations)
    set.correlations.push_back(added.value);
}

}  // namespace

ParameterSet merge(const Draft& draft, const ParameterSet* below, Problems& problems) {
  ParameterSet set;
  if (below != nullptr) set = *below;
  set.files.push_back(draft.record);
  if (draft.reference_state) {
    if (below != nullptr && *draft.reference_state != set.reference_state) {
      problems.add(codes::kLayerChanges, "/reference_state",
                   "differs from that of the file below",
                   "leave it out, or give " + in_quotes(set.reference_state));
    }
    set.reference_state = *draft.reference_state;
  }
  if (draft.temperatures) {
    set.lowest_temperature = draft.temperatures->first;
    set.highest_temperature = draft.temperatures->second;
  }
  merge_ranges(draft, set);
  merge_sources(draft, set, problems);
  merge_elements(draft, set, problems);
  merge_curves(draft, set, problems);
  merge_phases(draft, set, problems);
  merge_correlations(draft, set);
  for (const auto& [bound, place, sound] : draft.bounds) {
    if (!is_known(bound, set)) set.solidus_bounds.push_back(bound);
  }
  return set;
}

}  // namespace gibbsteel::parameter_file
