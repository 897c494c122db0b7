#include "screening/screen_rows.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardening_family.hpp"
#include "internal/candidate_phases.hpp"
#include "internal/error_codes.hpp"
#include "internal/kind_names.hpp"
#include "internal/other_kinds.hpp"
#include "internal/quantity_warnings.hpp"
#include "internal/shared_hash.hpp"
#include "internal/soak_problem.hpp"

namespace gibbsteel::internal {
namespace {

/// What a single steel of this composition would be refused for.
ScreenStatus refusal(const InputError& error) {
  const std::string& code = error.code();
  if (code == "gibbsteel.input.202") return ScreenStatus::composition_not_finite;
  if (code == "gibbsteel.input.203") return ScreenStatus::composition_negative;
  if (code == "gibbsteel.input.208") return ScreenStatus::nothing_modelled;
  return ScreenStatus::composition_sum;
}

ScreenStatus status_of(const SolveReport& report) {
  switch (report.status) {
    case SolveStatus::converged:
      return report.usable() ? ScreenStatus::usable : ScreenStatus::not_certified;
    case SolveStatus::iteration_limit:
      return ScreenStatus::iteration_limit;
    case SolveStatus::infeasible:
      return ScreenStatus::infeasible;
    case SolveStatus::stalled:
    case SolveStatus::not_run:
    case SolveStatus::measured:
    case SolveStatus::short_soak_limit:
    case SolveStatus::timed_soak:
      break;
  }
  return ScreenStatus::stalled;
}

/// A composition of the block, ready for any of its temperatures.
struct Composition {
  ScreenStatus refused = ScreenStatus::not_done;  ///< else why it cannot be
  MillAnalysis analysis;
  std::shared_ptr<const PhaseSystem> system;
  std::vector<double> mole_fractions;
};

Composition composition_of(const NamedValues& weight_percent, const ParameterSet& set,
                           bool bind_tramp_elements, SystemCache& systems) {
  Composition found;
  try {
    found.analysis = read_analysis(weight_percent, set, bind_tramp_elements);
  } catch (const InputError& error) {
    found.refused = refusal(error);
    return found;
  }
  std::vector<std::string> elements;
  for (const auto& [symbol, fraction] : found.analysis.mole_fractions(set)) {
    elements.push_back(symbol);
    found.mole_fractions.push_back(fraction);
  }
  found.system = systems.of(elements);
  return found;
}

}  // namespace

struct ScreenRows::Prepared {
  std::vector<Composition> compositions;
  std::vector<RowProblem> problems;    ///< of the rows that can be solved
  std::vector<std::size_t> made_from;  ///< problem -> composition
  std::vector<std::pair<std::size_t, ScreenStatus>> refused;  ///< row, why
};

ScreenRows::ScreenRows(const ScreenInput& input, const ScreenOptions& options)
    : input_(input),
      options_(options),
      rows_(input.rows()),
      systems_(options.parameters, candidate_phases(*options.parameters, options.soak)),
      blank_state_(blank_state(*options.parameters, shared_hash(options.parameters),
                               options.soak)) {
  blank_table_.kinds = carbide_kind_names(*options.parameters);
  for (auto& kind : other_kind_names(*options.parameters, blank_state_.suppressed))
    blank_table_.kinds.push_back(std::move(kind));
  for (const Element& element : options.parameters->elements)
    blank_table_.elements.push_back(element.symbol);
  for (const Quantity& quantity : options.quantities)
    blank_table_.quantities.push_back(quantity.label());
  blank_table_.steel_elements = input.elements;
  blank_table_.rows_per_composition =
      input.one_per_composition ? 1 : input.temperatures.size();
  by_family_ = std::any_of(options.quantities.begin(), options.quantities.end(),
                           [](const Quantity& q) { return q.by_family(); });
  blank_table_.basis = options.soak.basis;
  blank_table_.parameters = blank_state_.parameters;
  blank_table_.parameters_hash = blank_state_.parameters_hash;
}

ScreenRows::Prepared ScreenRows::prepare(std::size_t block) {
  Prepared ready;
  const std::size_t per = input_.one_per_composition ? 1 : input_.temperatures.size();
  const std::size_t begin = block * kScreenBlockRows;
  const std::size_t end = std::min(rows_, begin + kScreenBlockRows);
  for (std::size_t row = begin; row < end; ++row) {
    if (row == begin || row % per == 0)
      ready.compositions.push_back(
          composition_of(input_.composition(row), *options_.parameters,
                         options_.bind_tramp_elements, systems_));
    const Composition& composition = ready.compositions.back();
    const Temperature t = input_.temperature(row);
    if (composition.refused != ScreenStatus::not_done) {
      ready.refused.emplace_back(row, composition.refused);
    } else if (!is_soak_temperature(t)) {
      ready.refused.emplace_back(row, ScreenStatus::temperature_outside);
    } else {
      ready.problems.push_back(
          {row, composition.system, composition.mole_fractions, t});
      ready.made_from.push_back(ready.compositions.size() - 1);
    }
  }
  return ready;
}

void ScreenRows::solve(std::size_t block, ScreenTable& table) {
  const Prepared ready = prepare(block);
  write_conditions(block, table);
  for (const auto& [row, why] : ready.refused)
    if (row >= table.first_row && row < table.next_row())
      table.status[row - table.first_row] = why;
  const auto deliver = [&](std::size_t i, const Equilibrium& result) {
    write(ready.problems[i], ready.compositions[ready.made_from[i]].analysis, result,
          table);
  };
  // No column shows them; a quantity of the user may.
  solve_block(ready.problems, options_.soak.solve, deliver,
              options_.quantities.empty() ? ConditionNumbers::left_out
                                          : ConditionNumbers::wanted);
}

void ScreenRows::write_conditions(std::size_t block, ScreenTable& table) const {
  const std::size_t begin = std::max(block * kScreenBlockRows, table.first_row);
  const std::size_t end = std::min((block + 1) * kScreenBlockRows, table.next_row());
  const std::size_t columns = table.steel_elements.size();
  for (std::size_t row = begin; row < end; ++row) {
    const std::size_t at = row - table.first_row;
    table.kelvin[at] = input_.temperature(row).in_kelvin();
    const auto given = input_.numbers(row);
    std::copy(
        given.begin(), given.end(),
        table.steel_weight_percent.begin() + static_cast<std::ptrdiff_t>(at * columns));
  }
}

void ScreenRows::write(const RowProblem& problem, const MillAnalysis& analysis,
                       const Equilibrium& result, ScreenTable& table) {
  if (problem.row < table.first_row || problem.row >= table.next_row()) return;
  const std::size_t at = problem.row - table.first_row;
  State state = blank_state_;
  state.analysis = analysis;
  fill_state(*problem.system, result, state, options_.soak.temperature_unit);
  table.status[at] = status_of(result.report);
  table.certificate[at] = result.report.certificate;
  add_quantity_warnings(state);
  note(state, at, table);
  if (!state.usable()) return;
  table.carbide_volume_percent[at] = state.carbide_volume_percent;
  table.carbon_activity[at] = state.carbon_activity;
  table.gibbs_energy[at] = state.gibbs_energy;
  double* volumes = table.volume_percent.data() + at * table.kinds.size();
  for (std::size_t k = 0; k < table.kinds.size(); ++k)
    volumes[k] = state.volume_percent_of(table.kinds[k]);
  write_quantities(state, at, table);
  if (state.matrix.weight_percent.empty()) return;
  double* matrix = table.matrix_weight_percent.data() + at * table.elements.size();
  for (std::size_t e = 0; e < table.elements.size(); ++e)
    matrix[e] = state.matrix.weight_percent[table.elements[e]];
}

/// Its warnings, and the family that its estimates rest on.
void ScreenRows::note(const State& state, std::size_t at, ScreenTable& table) const {
  const bool has_family = by_family_ && state.usable();
  if (state.warnings.empty() && !has_family) return;
  const std::lock_guard lock(warnings_);
  if (!state.warnings.empty()) table.note_warnings(at, state.warnings);
  if (has_family)
    table.note_family(at, hardening_family_of(state.analysis.modelled).key);
}

/// A quantity that fails flags the row when its value is written.
void ScreenRows::add_quantity_warnings(State& state) const {
  for (const Quantity& quantity : options_.quantities) try {
      add_warnings(quantity, state, state.warnings);
    } catch (const InputError&) {
    }
}

void ScreenRows::write_quantities(const State& state, std::size_t at,
                                  ScreenTable& table) const {
  std::vector<Warning> failures;
  for (std::size_t q = 0; q < options_.quantities.size(); ++q) try {
      table.quantity[at * options_.quantities.size() + q] =
          options_.quantities[q].value(state);
    } catch (const std::exception& error) {
      table.status[at] = ScreenStatus::quantity_failed;
      failures.push_back({std::string(codes::kQuantityFailed),
                          options_.quantities[q].label() + ": " + error.what()});
    }
  if (failures.empty()) return;
  failures.insert(failures.begin(), state.warnings.begin(), state.warnings.end());
  const std::lock_guard lock(warnings_);
  table.note_warnings(at, failures);
}

}  // namespace gibbsteel::internal
