#include <algorithm>
#include <string>
#include <unordered_map>
#include <unordered_set>

#include "../internal/error_codes.hpp"
#include "checks.hpp"
#include "gibbsteel/elements.hpp"
#include "message_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

bool is_vacancy(const std::string& name) { return name == kVacancy; }

void check_constituent(const Check& check, const std::string& name,
                       const std::string& place) {
  if (is_vacancy(name)) return;
  if (check.draft.elements_sound && check.set.find_element(name) != nullptr) return;
  if (!check.draft.elements_sound && find_element(name)) return;
  const auto symbols = names_of(check.set.elements, &Element::symbol);
  const std::string_view meant = suggest_element(name);
  std::string remedy = "give \"vacancy\" or a symbol defined under /elements";
  if (find_element(name)) {
    remedy = "define " + in_quotes(name) + " under /elements";
  } else if (!meant.empty()) {
    remedy = "did you mean " + in_quotes(meant) + "?";
  } else if (!nearest(name, std::vector{kVacancy}).empty()) {
    remedy = "did you mean \"vacancy\"?";
  }
  check.problems.add(codes::kUnknownConstituent, place,
                     in_quotes(name) + " is neither a defined element nor vacancy",
                     remedy);
}

void check_constituents(const Check& check, const DraftPhase& draft) {
  if (!draft.sublattices) return;
  for (const DraftSublattice& sublattice : *draft.sublattices) {
    std::unordered_set<std::string> seen;
    for (const auto& [name, place, sound] : sublattice.constituents) {
      if (!seen.insert(name).second) {
        check.problems.add(codes::kConstituentTwice, place,
                           in_quotes(name) + " is listed twice on this sublattice",
                           "list it once");
        continue;
      }
      check_constituent(check, name, place);
    }
  }
}

bool check_atoms(const Check& check, const DraftPhase& draft, const Phase& phase) {
  const bool can_be_empty = std::all_of(
      phase.sublattices.begin(), phase.sublattices.end(), [](const Sublattice& one) {
        return std::any_of(one.constituents.begin(), one.constituents.end(),
                           is_vacancy);
      });
  if (!can_be_empty) return true;
  check.problems.add(codes::kCanBeEmpty, draft.place + "/sublattices",
                     "vacancy is on every sublattice, so the phase could hold no atom",
                     "keep at least one sublattice free of vacancy");
  return false;
}

void check_counts(const Check& check, const DraftPhase& draft, const Phase& phase) {
  std::size_t constituents = 0;
  for (const Sublattice& one : phase.sublattices) {
    constituents += one.constituents.size();
  }
  const std::size_t terms =
      std::max({phase.energy.size(), phase.curie_temperature.size(),
                phase.magnetic_moment.size()});
  const auto report = [&](std::size_t count, std::size_t most, const char* what) {
    if (count <= most) return;
    check.problems.add(codes::kBeyondLimit, draft.place,
                       "has " + std::to_string(count) + " " + what,
                       "at most " + std::to_string(most) + " can be used");
  };
  report(constituents, check.limits.constituents_per_phase, "constituents");
  report(terms, check.limits.terms_per_phase, "terms of one kind");
}

void check_occurrence(const Check& check, const DraftPhase& draft, const Phase& phase) {
  if (!draft.second_occurrence || !draft.second_occurrence->sound) return;
  const auto& [occurrence, place, sound] = *draft.second_occurrence;
  if (occurrence.sublattice >= phase.sublattices.size()) {
    check.problems.add(codes::kSecondOccurrence, place + "/when/sublattice",
                       "the phase has no sublattice of that number",
                       "give 1 to " + std::to_string(phase.sublattices.size()));
    return;
  }
  const auto& names = phase.sublattices[occurrence.sublattice].constituents;
  const auto is_missing = [&](const std::string& name) {
    return std::find(names.begin(), names.end(), name) == names.end();
  };
  const auto& counted = occurrence.constituents;
  const auto missing = std::find_if(counted.begin(), counted.end(), is_missing);
  const bool all_there = missing == counted.end();
  if (all_there && names.size() > counted.size()) return;
  check.problems.add(codes::kSecondOccurrence, place + "/when/constituent",
                     all_there ? in_quotes(counted.front()) +
                                     (counted.size() > 1 ? " and the others always fill"
                                                         : " always fills") +
                                     " that sublattice"
                               : in_quotes(*missing) + " is not on that sublattice",
                     "give a constituent that shares the sublattice with others");
}

/// Names under which phases and second occurrences appear in results.
void check_names(const Check& check) {
  std::unordered_map<std::string, int> uses;
  for (const Phase& phase : check.set.phases) {
    ++uses[phase.name];
    if (phase.second_occurrence) ++uses[phase.second_occurrence->name];
  }
  for (const DraftPhase& draft : check.draft.phases) {
    if (!draft.second_occurrence || !draft.second_occurrence->sound) continue;
    const std::string& name = draft.second_occurrence->value.name;
    if (uses[name] < 2) continue;
    check.problems.add(codes::kNameTwice, draft.second_occurrence->place + "/name",
                       in_quotes(name) +
                           " is also the name of another phase or "
                           "second occurrence",
                       "choose another name");
  }
}

void check_magnetism(const Check& check, const DraftPhase& draft, const Phase& phase) {
  if (!draft.sound || phase.magnetism) return;
  if (draft.curie_temperature.empty() && draft.magnetic_moment.empty()) return;
  check.problems.add(
      codes::kMagnetismMissing, draft.place,
      "there are magnetic terms but \"magnetism\" is missing",
      "add it: {\"structure_factor\": ..., \"negative_value_divisor\": ...}");
}

}  // namespace

void check_phases(const Check& check) {
  if (check.set.phases.size() > check.limits.phases) {
    check.problems.add(
        codes::kBeyondLimit, "/phases",
        "together with the files below there are " +
            std::to_string(check.set.phases.size()) + " phases",
        "at most " + std::to_string(check.limits.phases) + " can be used");
  }
  check_names(check);
  for (const DraftPhase& draft : check.draft.phases) {
    if (check.problems.full()) return;
    const Phase* phase = check.set.find_phase(draft.name);
    if (phase == nullptr) continue;
    const std::size_t before = check.problems.count();
    check_constituents(check, draft);
    const bool constituents_known = check.problems.count() == before;
    check_counts(check, draft, *phase);
    check_magnetism(check, draft, *phase);
    // A wrong constituent would show again in every term that names the right one.
    if (draft.sublattices && draft.sublattices->size() != phase->sublattices.size()) {
      continue;  // a layer cannot do that; reported where it was laid on
    }
    if (!draft.sound || !constituents_known || phase->sublattices.empty()) continue;
    check_occurrence(check, draft, *phase);
    if (!check_atoms(check, draft, *phase)) continue;
    check_terms(check, draft, *phase);
    check_volumes(check, draft, *phase);
  }
}

}  // namespace gibbsteel::parameter_file
