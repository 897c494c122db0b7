/// How HardeningEstimates print; see hardening.hpp.

#include "gibbsteel/hardening.hpp"
#include "internal/family_mix.hpp"
#include "internal/hardening_warnings.hpp"
#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace internal {

// tests/reference counts the hardnesses.
std::string bands_are(const BandsShown& shown) {
  if (!shown.measured && !shown.grain_limit) return "";
  std::string text = "low to high: ";
  if (shown.measured) text += "about two in three measurements, for this austenite";
  if (shown.hardness)
    text += "; of hardness all 38 that were compared, 15 of them fitted to";
  if (!shown.grain_limit) return text;
  return text + (shown.measured ? "; " : "") +
         "of the grain limit from the model hillert (H22) to zener (H23)";
}

}  // namespace internal

namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

std::string heading(const HardeningEstimates& e) {
  return (e.steel.empty() ? "steel" : e.steel) + " quenched from " +
         internal::celsius_and_fahrenheit(e.soak) + " to " +
         internal::celsius_and_fahrenheit(e.coldest) +
         (e.condition.empty() ? "" : ", " + e.condition);
}

/// Nothing for estimates that an earlier version pickled without it.
std::string origin_text(const HardeningEstimates& e) {
  if (e.parameters.empty()) return "";
  return internal::analysis_text(e.analysis) +
         internal::wrapped("parameters: " + e.parameters + ", " + e.parameters_hash,
                           kWidth, 2);
}

std::vector<const Estimate*> estimates(const HardeningEstimates& e) {
  return {&e.martensite_start, &e.retained_austenite, &e.retained_austenite_of_matrix,
          &e.hardness_hv,      &e.hardness_hrc,       &e.grain_diameter};
}

std::string austenite_text(const HardeningEstimates& e) {
  std::string text;
  for (const auto& [symbol, percent] : e.austenite)
    if (symbol != "Fe" && percent >= 0.005)
      text += (text.empty() ? "" : " ") + fixed(percent, 2) + symbol;
  if (text.empty()) return "";
  return internal::wrapped("austenite, wt%: " + text + ", balance Fe", kWidth, 2);
}

std::string values_table(const HardeningEstimates& e) {
  std::vector<std::vector<std::string>> rows{{"", "value", "low", "high", "unit"}};
  for (const Estimate* each : estimates(e)) {
    const int digits = each->unit == "C" || each->unit == "HV" ? 0 : 1;
    const auto text = [&](double x) { return internal::fixed_or(x, digits, "-"); };
    rows.push_back(
        {each->name, text(each->value), text(each->low), text(each->high), each->unit});
  }
  return internal::text_table(rows);
}

/// Equation, source and remarks; the two ways to state retained austenite share them.
std::string equations_text(const HardeningEstimates& e) {
  std::string text;
  for (const Estimate* each : estimates(e)) {
    if (each == &e.retained_austenite_of_matrix || each == &e.hardness_hv) continue;
    std::string line = each->name + ": ";
    if (!each->equation.empty()) line += each->equation + "; " + each->source + ".";
    for (const std::string& remark : each->remarks)
      line += (line.back() == ' ' ? "" : " ") + remark + ".";
    text += internal::wrapped(line, kWidth, 2);
  }
  return text;
}

std::string indices_table(const HardeningEstimates& e) {
  const auto row = [](const char* name, double matrix, double steel) {
    return std::vector<std::string>{name, internal::fixed_or(matrix, 2, "n/a"),
                                    fixed(steel, 2)};
  };
  const TradeIndices &matrix = e.matrix_indices, &steel = e.steel_indices;
  return internal::text_table(
      {{"indices, from wt%", "matrix", "steel"},
       row("Mo + W/2", matrix.molybdenum_equivalent, steel.molybdenum_equivalent),
       row("C - 0.033W - 0.063Mo - 0.06Cr - 0.2V", matrix.carbon_balance,
           steel.carbon_balance),
       row("Cr + 3.3(Mo + W/2) + 16N", matrix.pitting_index, steel.pitting_index)});
}

std::string family_text(const HardeningEstimates& e) {
  if (internal::is_between(e.family_shares))
    return "between " + internal::shares_text(e.family_shares) + ", by composition";
  return e.family.name + " (" + e.family.key + ", " +
         (e.family_chosen ? "as asked for" : "by composition") + ")";
}

}  // namespace

std::string HardeningEstimates::brief() const {
  if (!martensite_start.known())
    return heading(*this) + ": no estimate, " +
           (martensite_start.remarks.empty() ? "" : martensite_start.remarks.back());
  return heading(*this) + ": " + martensite_start.brief() + ", " +
         retained_austenite.brief() + ", " +
         (hardness_hrc.known() ? hardness_hrc.brief() : hardness_hv.brief());
}

std::string HardeningEstimates::full() const {
  std::string text = internal::wrapped(heading(*this) + ", estimates", kWidth, 2);
  text += origin_text(*this) +
          internal::wrapped("family: " + family_text(*this), kWidth, 2);
  text += austenite_text(*this) + "\n" + values_table(*this);
  text += internal::wrapped(internal::bands_are({true, true, grain_diameter.known()}),
                            kWidth, 2) +
          internal::wrapped(internal::kFullyMartensitic, kWidth, 2) + "\n";
  text += equations_text(*this) + "\n" + indices_table(*this) + "\n";
  for (const Warning& warning : warnings)
    text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text + internal::wrapped(internal::caution_of(*this), kWidth, 0);
}

bool HardeningEstimates::operator==(const HardeningEstimates& o) const {
  const bool shares = austenite_percent == o.austenite_percent ||
                      (austenite_percent != austenite_percent &&
                       o.austenite_percent != o.austenite_percent);
  return steel == o.steel && analysis == o.analysis && parameters == o.parameters &&
         parameters_hash == o.parameters_hash && condition == o.condition &&
         soak == o.soak && coldest == o.coldest && family == o.family &&
         family_chosen == o.family_chosen && family_shares == o.family_shares &&
         austenite == o.austenite && shares && martensite_start == o.martensite_start &&
         retained_austenite == o.retained_austenite &&
         retained_austenite_of_matrix == o.retained_austenite_of_matrix &&
         hardness_hv == o.hardness_hv && hardness_hrc == o.hardness_hrc &&
         grain_diameter == o.grain_diameter && matrix_indices == o.matrix_indices &&
         steel_indices == o.steel_indices && warnings == o.warnings;
}

}  // namespace gibbsteel
