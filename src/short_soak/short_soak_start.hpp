#pragma once
/// What a short-soak limit and a timed soak have in common: the annealed condition that
/// both start from, and how their states say what they are.

#include <string>
#include <vector>

#include "gibbsteel/short_soak_limit.hpp"
#include "internal/carbide_balance.hpp"

namespace gibbsteel::internal {

struct ShortSoakStart {
  MeasuredCarbideOptions balance;  ///< annealed composition, nothing unlisted
  Steel steel;
  std::vector<CarbideShare> shares;  ///< of the annealed condition
};

/// @throws InputError as short_soak_limit()
ShortSoakStart short_soak_start(const State& state,
                                const ShortSoakLimitOptions& options);

/// Where such a steel is annealed when nothing is asked for.
/// @param state  of any kind
/// @throws InputError gibbsteel.input.266 (another parameter set)
Temperature usual_annealing(const State& state, const ShortSoakLimitOptions& options);

/// Ferrite has to be gone, or carbon would not be the same everywhere in austenite.
/// @param matrix  [wt%]
/// @throws InputError gibbsteel.input.284
void check_no_ferrite(const NamedValues& matrix, Temperature t,
                      const SharedParameters& parameters, const std::string& place,
                      const std::string& remedy);

struct ShortSoakKind {
  SolveStatus status = SolveStatus::not_run;
  std::string reason;
  Warning warning;  ///< instead of those of a count
};

/// Status, warning and carbon activity.
/// @param potential  of carbon in the matrix [J/mol]
void describe(ShortSoak& soak, const State& long_hold, double potential,
              const ShortSoakKind& kind);

}  // namespace gibbsteel::internal
