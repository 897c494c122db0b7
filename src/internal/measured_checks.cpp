#include "internal/measured_checks.hpp"

#include <algorithm>
#include <cmath>

#include "internal/kind_names.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {
namespace {

using Problems = std::vector<Problem>;

const char* const kVolumes = "give volume percents of the steel, 0 to below 100";

bool is_matrix_kind(const State& state, const std::string& kind) {
  return kind == "austenite" || kind == "ferrite" || kind == "hexagonal matrix" ||
         std::any_of(state.occurrences.begin(), state.occurrences.end(),
                     [&](const Occurrence& o) {
                       return o.kind == kind && o.role == Role::matrix;
                     });
}

void check_one(const State& state, const MeasuredCarbide& m, Problems& problems) {
  const std::string place = "measured, " + m.kind;
  const auto bad = [&](const std::string& what, const char* remedy) {
    problems.push_back({"gibbsteel.input.262", place, what, remedy});
  };
  if (std::find(state.kinds.begin(), state.kinds.end(), m.kind) == state.kinds.end())
    problems.push_back(no_such_kind(state.kinds, m.kind, "measured"));
  else if (is_matrix_kind(state, m.kind))
    bad("is the matrix", "give carbides: the matrix is what they leave");
  if (!(m.volume_percent >= 0.0 && m.volume_percent < 100.0))
    bad("is " + shortest(m.volume_percent) + " vol%", kVolumes);
  if (!(m.standard_deviation >= 0.0 && m.standard_deviation < 100.0))
    bad("has a standard deviation of " + shortest(m.standard_deviation) + " vol%",
        "give 0 or more, below 100");
  if (m.smallest_counted &&
      !(*m.smallest_counted > 0.0 && std::isfinite(*m.smallest_counted)))
    bad("has a size limit of " + shortest(*m.smallest_counted) + " micrometre",
        "give the smallest diameter that was counted, or leave it out");
}

void check_list(const State& state, const std::vector<MeasuredCarbide>& measured,
                Problems& problems) {
  if (measured.empty())
    problems.push_back({"gibbsteel.input.262", "measured", "is empty",
                        "give volume percent by kind, for instance M3C 6.0"});
  double sum = 0.0;
  for (std::size_t i = 0; i < measured.size(); ++i) {
    check_one(state, measured[i], problems);
    sum += measured[i].volume_percent;
    for (std::size_t j = 0; j < i; ++j)
      if (measured[j].kind == measured[i].kind)
        problems.push_back({"gibbsteel.input.262", "measured, " + measured[i].kind,
                            "is given twice", "give it once"});
  }
  if (problems.empty() && sum >= 100.0)
    problems.push_back({"gibbsteel.input.262", "measured",
                        "sums to " + fixed(sum, 2) + " vol%", kVolumes});
}

Problem another_set() {
  return {"gibbsteel.input.266", "parameters", "are not those the state was made with",
          "give the parameter set of the steel"};
}

void check_state(const State& state, const std::string& parameters_hash,
                 Problems& problems) {
  if (state.parameters_hash != parameters_hash) problems.push_back(another_set());
  if (state.basis != VolumeBasis::room)
    problems.push_back({"gibbsteel.input.266", "state",
                        "counts volumes at the soak temperature",
                        "soak again with volumes at room temperature, which the "
                        "microscope sees"});
  if (!state.usable()) {
    problems.push_back({"gibbsteel.input.260", "state", "is not usable",
                        "read its solve report; change the conditions slightly"});
    return;
  }
  if (state.solve_report.by_mass_balance()) {
    problems.push_back({"gibbsteel.input.260", "state",
                        "is a mass balance, not the long-hold limit",
                        "give what steel.soak returns"});
    return;
  }
  const auto phases = state.matrix_phases();
  if (phases.size() == 1) return;
  std::string names;
  for (const Occurrence& o : phases) names += (names.empty() ? "" : " + ") + o.name;
  problems.push_back(
      {"gibbsteel.input.260", "state",
       phases.empty() ? "has no matrix phase" : "has a matrix of " + names,
       "take a temperature at which the matrix is one phase: the balance cannot tell "
       "two apart"});
}

}  // namespace

void check_same_set(const State& state, const std::string& parameters_hash) {
  if (state.parameters_hash != parameters_hash) throw InputError({another_set()});
}

void check_measured(const State& state, const std::vector<MeasuredCarbide>& measured,
                    const std::string& parameters_hash) {
  Problems problems;
  check_list(state, measured, problems);
  check_state(state, parameters_hash, problems);
  if (!problems.empty()) throw InputError(std::move(problems));
}

}  // namespace gibbsteel::internal
