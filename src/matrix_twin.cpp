#include "gibbsteel/matrix_twin.hpp"

#include "gibbsteel/errors.hpp"
#include "gibbsteel/hardening_family.hpp"
#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/other_kinds.hpp"
#include "internal/result_text.hpp"
#include "internal/sweep_text.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;
using internal::fixed_or;

constexpr std::size_t kWidth = 78;

void require_matrix(const State& state) {
  if (!state.usable())
    throw InputError({{"gibbsteel.input.260", "state", "is not usable",
                       "read its solve report; change the conditions slightly"}});
  if (state.matrix_phases().empty())
    throw InputError({{"gibbsteel.input.260", "state", "has no matrix phase",
                       "take another temperature or composition"}});
  if (internal::liquid_share(state).percent > 0.0)
    throw InputError({{"gibbsteel.input.260", "state", "is partly molten",
                       "take a temperature below the solidus"}});
  for (const Occurrence& o : state.matrix_phases())
    if (o.kind == "austenite") return;
  throw InputError({{"gibbsteel.input.260", "state", "has a matrix without austenite",
                     "take a temperature at which the steel is austenitized: the "
                     "matrix of an annealed steel holds next to no carbon"}});
}

std::string twin_name(const State& state) {
  return "matrix of " + (state.steel.empty() ? "steel" : state.steel) + " at " +
         fixed(state.temperature.in_celsius(), 0) + " C";
}

std::string composition_table(const TwinStudy& study) {
  std::vector<std::vector<std::string>> rows{
      {"weight percent"}, {"full-carbide steel"}, {"its matrix"}, {"twin"}};
  for (const auto& [symbol, percent] : study.exact) {
    if (symbol == "Fe") continue;
    const int digits = symbol == "C" ? 3 : 2;
    rows[0].push_back(symbol);
    rows[1].push_back(fixed(study.reference.analysis.modelled[symbol], digits));
    rows[2].push_back(fixed(percent, digits));
    rows[3].push_back(fixed(study.twin.analysis().modelled[symbol], digits));
  }
  return internal::text_table(rows);
}

/// Residual carbide by kind, one row a soak.
std::string residual_table(const TwinStudy& study) {
  Sweep all = study.others;
  all.states.insert(all.states.begin(), study.same);
  const auto kinds =
      internal::with_other_kinds(all.carbide_kinds(), internal::states_of(all));
  std::vector<std::vector<std::string>> rows{{"twin at, C", "carbide, vol%"}};
  rows[0].insert(rows[0].end(), kinds.begin(), kinds.end());
  rows[0].push_back("matrix C, wt%");
  std::vector<Temperature> temperatures;
  for (const State& state : all.states) temperatures.push_back(state.temperature);
  const auto cells = internal::degree_cells(temperatures, all.temperature_unit);
  for (const State& state : all.states) {
    rows.push_back({cells[rows.size() - 1]});
    auto& row = rows.back();
    if (!state.usable()) {
      row.push_back("NOT USABLE");
      continue;
    }
    row.push_back(fixed_or(state.carbide_volume_percent, 2, "n/a"));
    for (const auto& kind : kinds) {
      const double percent = state.volume_percent_of(kind);
      row.push_back(percent == 0.0 ? "-" : fixed_or(percent, 2, "n/a"));
    }
    row.push_back(fixed(state.matrix.weight_percent["C"], 3));
  }
  return internal::text_table(rows);
}

const std::string& family_of(const NamedValues& steel) {
  return hardening_family_of(steel).key;
}

/// Every warning once, and whose it is.
std::string warnings_text(const TwinStudy& study) {
  std::string text;
  const auto add = [&](const std::string& whose, const std::vector<Warning>& list) {
    for (const Warning& warning : list)
      text += internal::wrapped(
          "! " + whose + ": [" + warning.code + "] " + warning.text, kWidth, 2);
  };
  add("full-carbide steel", study.reference.warnings);
  Sweep twin = study.others;
  twin.states.insert(twin.states.begin(), study.same);
  add("twin", twin.warnings());
  add("twin", study.warnings());
  return text;
}

}  // namespace

Steel matrix_twin(const Steel& steel, Temperature t, const MatrixTwinOptions& options) {
  return matrix_twin(steel, steel.soak(t, options.soak), options);
}

Steel matrix_twin(const Steel& steel, const State& state,
                  const MatrixTwinOptions& options) {
  require_matrix(state);
  NamedValues percents = to_makeable(state.matrix.weight_percent, options.makeable);
  if (options.keep_not_modelled)
    for (const auto& [symbol, percent] : state.analysis.not_modelled)
      if (percent > 0.0) percents.set(symbol, percent);
  if (percents.empty()) percents.set("Fe", 100.0);
  return Steel(percents, {twin_name(state), steel.parameters(), false});
}

TwinStudy twin_study(const Steel& steel, Temperature t,
                     std::span<const Temperature> others,
                     const MatrixTwinOptions& options) {
  State reference = steel.soak(t, options.soak);
  Steel twin = matrix_twin(steel, reference, options);
  State same = twin.soak(t, options.soak);
  Sweep sweep = twin.sweep(others, options.soak);
  NamedValues exact = reference.matrix.weight_percent;
  return {std::move(reference), std::move(exact), std::move(twin), std::move(same),
          std::move(sweep)};
}

std::vector<Warning> TwinStudy::warnings() const {
  const std::string& of_steel = family_of(reference.analysis.modelled);
  const std::string& of_twin = family_of(twin.analysis().modelled);
  if (of_steel == of_twin) return {};
  return {{"gibbsteel.warning.357",
           "Hardening estimates of the twin are those of the family " + of_twin +
               ", of the full-carbide steel those of " + of_steel +
               ": they differ for the same austenite. Name one family for both to "
               "compare them, family=\"" +
               of_steel + "\"."}};
}

std::string TwinStudy::brief() const {
  const std::string text = twin.name() + ": " + twin.analysis().brief() + " (wt%), " +
                           internal::condition(same);
  if (!same.usable()) return text + ", " + same.solve_report.brief();
  return text + ": " + fixed_or(same.carbide_volume_percent, 2, "n/a") +
         " vol% carbide left there, " +
         fixed_or(reference.carbide_volume_percent, 2, "n/a") +
         " in the full-carbide steel";
}

std::string TwinStudy::full() const {
  const std::string warned = warnings_text(*this);
  return internal::wrapped(brief(), kWidth, 2) + "parameters: " + reference.parameters +
         "\n" + internal::basis_text(reference) + "\n" + composition_table(*this) +
         "\n" + residual_table(*this) + internal::last_digits_text(!warned.empty()) +
         "\n" + warned + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
