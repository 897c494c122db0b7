#pragma once
/// Checks of sense, after reading and merging. What lies below has been checked before,
/// so every problem is placed in the file that is being added.

#include <string>
#include <unordered_set>

#include "draft.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

struct Check {
  const Draft& draft;
  const ParameterSet& set;  // merged
  const FileLimits& limits;
  Problems& problems;
};

/// Symbols, molar masses, reference curves, validity, sources, solidus bounds.
void check_elements(const Check& check);
void check_sources(const Check& check);
void check_solidus_bounds(const Check& check);
/// Coefficients named, repetition, and whether all can hold together.
void check_correlations(const Check& check);
/// References, circles, nesting, coverage of the validity range, jumps.
void check_curves(const Check& check);
/// Constituents, names, second occurrences, magnetism.
void check_phases(const Check& check);
/// `on`, order, repetition, completeness of energies and volumes.
void check_terms(const Check& check, const DraftPhase& draft, const Phase& phase);
void check_volumes(const Check& check, const DraftPhase& draft, const Phase& phase);

/// Curves named and size of contributions in the validity range.
void check_expression(const Check& check, const Expression& expression,
                      const std::string& place);
void check_source(const Check& check, const Provenance& provenance,
                  const std::string& place);

/// True if `on` fits the sublattices of the phase; else what is wrong was reported.
bool check_on(const Check& check, const Phase& phase,
              const std::vector<std::vector<std::string>>& on,
              const std::string& place);
/// Reports end members of `phase` whose key is not among `keys`.
void check_complete(const Check& check, const Phase& phase,
                    const std::unordered_set<std::string>& keys, std::string_view code,
                    const std::string& what, const std::string& place);

}  // namespace gibbsteel::parameter_file
