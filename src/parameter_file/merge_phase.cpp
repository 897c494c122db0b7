#include "merge_phase.hpp"

#include <algorithm>
#include <unordered_map>

#include "../internal/error_codes.hpp"
#include "term_key.hpp"

namespace gibbsteel::parameter_file {

namespace {

void report_change(const std::string& place, const std::string& what,
                   Problems& problems) {
  problems.add(codes::kLayerChanges, place, what + " differs from the file below",
               "leave it out; a layer cannot change it");
}

void merge_terms(const std::vector<Placed<Term>>& added, std::vector<Term>& terms) {
  std::unordered_map<std::string, std::size_t> index;
  for (std::size_t i = 0; i < terms.size(); ++i) index[term_key(terms[i])] = i;
  for (const auto& [term, place, sound] : added) {
    const auto found = index.find(term_key(term));
    if (found == index.end()) {
      terms.push_back(term);
    } else {
      terms[found->second] = term;
    }
  }
}

void merge_volume(const DraftVolume& added, const std::string& file,
                  std::optional<VolumeData>& volume, Problems& problems) {
  if (!volume) {
    if (!added.at && added.sound) {
      problems.add(codes::kMissingKey, added.place, "the key \"at_K\" is missing",
                   "add it; no file below gives these volumes");
    }
    volume = VolumeData{
        added.at.value_or(298.15), added.linear_expansion, {}, added.note, file};
  } else {
    if (added.at && *added.at != volume->at) {
      report_change(added.place + "/at_K", "the temperature", problems);
    }
    if (added.linear_expansion && added.linear_expansion != volume->linear_expansion) {
      report_change(added.place + "/linear_expansion_per_K", "the expansion", problems);
    }
    if (!added.note.empty() && added.note != volume->note) {
      report_change(added.place + "/note", "the note", problems);
    }
  }
  std::unordered_map<std::string, std::size_t> index;
  for (std::size_t i = 0; i < volume->terms.size(); ++i) {
    index[end_member_key(volume->terms[i].on)] = i;
  }
  for (const auto& [term, place, sound] : added.terms) {
    const auto found = index.find(end_member_key(term.on));
    if (found == index.end()) {
      volume->terms.push_back(term);
    } else {
      volume->terms[found->second] = term;
    }
  }
}

void merge_sublattices(const DraftPhase& draft, Phase& phase, Problems& problems) {
  if (!draft.sublattices) return;
  if (draft.sublattices->size() != phase.sublattices.size()) {
    report_change(draft.place + "/sublattices", "the number of sublattices", problems);
    return;
  }
  for (std::size_t i = 0; i < phase.sublattices.size(); ++i) {
    const DraftSublattice& added = (*draft.sublattices)[i];
    Sublattice& sublattice = phase.sublattices[i];
    if (added.sites && *added.sites != sublattice.sites) {
      report_change(added.place + "/sites", "the number of sites", problems);
    }
    std::vector<std::string>& names = sublattice.constituents;
    const std::size_t below = names.size();
    for (const auto& [name, place, sound] : added.constituents) {
      const auto end = names.begin() + static_cast<std::ptrdiff_t>(below);
      if (std::find(names.begin(), end, name) == end) names.push_back(name);
    }
  }
}

/// Whether a layer changes nothing but what is counted, and only adds to that.
bool only_counts_more(const SecondOccurrence& below, SecondOccurrence above) {
  for (const std::string& name : below.constituents)
    if (std::find(above.constituents.begin(), above.constituents.end(), name) ==
        above.constituents.end())
      return false;
  above.constituents = below.constituents;
  return above == below;
}

void merge_details(const DraftPhase& draft, Phase& phase, Problems& problems) {
  if (draft.role && *draft.role != phase.role) {
    report_change(draft.place + "/role", "the role", problems);
  }
  if (draft.lattice && *draft.lattice != phase.lattice) {
    report_change(draft.place + "/lattice", "the lattice", problems);
  }
  if (draft.magnetism) {
    if (phase.magnetism && *phase.magnetism != *draft.magnetism) {
      report_change(draft.place + "/magnetism", "this", problems);
    }
    phase.magnetism = draft.magnetism;
  }
  if (draft.second_occurrence) {
    if (phase.second_occurrence &&
        !only_counts_more(*phase.second_occurrence, draft.second_occurrence->value)) {
      report_change(draft.place + "/second_occurrence", "this", problems);
    }
    phase.second_occurrence = draft.second_occurrence->value;
  }
}

void add_numbers(const DraftPhase& draft, const std::string& file, Phase& phase,
                 Problems& problems) {
  merge_terms(draft.energy, phase.energy);
  merge_terms(draft.curie_temperature, phase.curie_temperature);
  merge_terms(draft.magnetic_moment, phase.magnetic_moment);
  if (draft.room_volume) {
    merge_volume(*draft.room_volume, file, phase.room_volume, problems);
  }
  if (draft.hot_volume) {
    merge_volume(*draft.hot_volume, file, phase.hot_volume, problems);
  }
}

}  // namespace

Phase new_phase(const DraftPhase& draft, const std::string& file, Problems& problems) {
  Phase phase;
  phase.name = draft.name;
  phase.role = draft.role.value_or(Role::other);
  phase.lattice = draft.lattice.value_or("");
  phase.magnetism = draft.magnetism;
  phase.file = file;
  if (draft.second_occurrence) {
    phase.second_occurrence = draft.second_occurrence->value;
  }
  if (draft.sublattices) {
    for (const DraftSublattice& added : *draft.sublattices) {
      Sublattice& sublattice = phase.sublattices.emplace_back();
      sublattice.sites = added.sites.value_or(1.0);
      for (const auto& [name, place, sound] : added.constituents) {
        sublattice.constituents.push_back(name);
      }
    }
  }
  add_numbers(draft, file, phase, problems);
  return phase;
}

void merge_phase(const DraftPhase& draft, const std::string& file, Phase& phase,
                 Problems& problems) {
  merge_details(draft, phase, problems);
  merge_sublattices(draft, phase, problems);
  add_numbers(draft, file, phase, problems);
}

}  // namespace gibbsteel::parameter_file
