#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "gibbsteel/evidence.hpp"
#include "internal/left_out.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

constexpr std::size_t kWidth = 78;
constexpr const char* kLegend =
    "missed by: in stated uncertainties, 1 or less is met; f: numbers of the "
    "shipped "
    "file were fitted to it; m: quoted from memory; l: low confidence. Away: 1 is 0.15 "
    "% "
    "C or a tenth of it, 0.5 % or a fifth of another element, or 75 C; up to 1 a steel "
    "of this kind, up to 3 a related one.";

std::string away(const Distance& distance) {
  return internal::fixed(distance.value, 1) + " away" +
         (distance.by.empty() ? "" : " (" + distance.by + ")");
}

bool one_soak(const EvidenceRow& a, const EvidenceRow& b) {
  return a.steel == b.steel && a.temperature == b.temperature &&
         a.weight_percent == b.weight_percent && a.phases == b.phases;
}

std::string composition(const NamedValues& percents) {
  std::string text;
  for (const auto& [symbol, percent] : percents)
    if (symbol != "Fe") text += " " + internal::shortest(percent) + symbol;
  return text;
}

std::string marks(const EvidenceRow& row) {
  std::string text;
  if (row.fitted_to) text += "f";
  if (row.from_memory) text += "m";
  if (row.confidence == "low") text += "l";
  return text;
}

std::vector<std::string> cells(const EvidenceRow& row, std::size_t source) {
  const std::string unit = row.unit.empty() ? "" : ", " + row.unit;
  const std::string mark = marks(row);
  return {"  " + row.quantity + unit,
          internal::significant(row.value, 4) + " +-" +
              internal::significant(row.uncertainty, 3),
          internal::rounded_or(row.computed, 3, "n/a"),
          row.reason.empty() ? internal::fixed(std::abs(row.miss()), 1) : "n/a",
          mark + (mark.empty() ? "[" : " [") + std::to_string(source) + "]"};
}

/// Distinct citations, in order of appearance; the number of each row's.
struct Sources {
  std::vector<std::string> citations;

  std::size_t number_of(const std::string& citation) {
    const auto found = std::find(citations.begin(), citations.end(), citation);
    const auto index = static_cast<std::size_t>(found - citations.begin());
    if (found == citations.end()) citations.push_back(citation);
    return index + 1;
  }
};

std::string remarks(const std::vector<EvidenceRow>& rows, std::size_t from,
                    std::size_t end) {
  std::string text;
  for (std::size_t i = from; i < end; ++i) {
    const EvidenceRow& row = rows[i];
    if (!row.reason.empty())
      text += internal::wrapped(row.quantity + ", not computed: " + row.reason + ".",
                                kWidth, 2);
    else if (!row.met() && !row.remark.empty())
      text += internal::wrapped(row.quantity + ", why: " + row.remark, kWidth, 2);
  }
  return text;
}

std::string only_phases(const EvidenceRow& row) {
  if (!row.phases) return "";
  std::string text;
  for (const std::string& phase : *row.phases)
    text += (text.empty() ? "; only " : ", ") + phase;
  return text;
}

/// The rows of one soak: heading, table, why numbers are missed.
std::string block(const Evidence& evidence, std::size_t from, std::size_t end,
                  Sources& sources) {
  const EvidenceRow& first = evidence.rows[from];
  std::string text = "\n";
  text += internal::wrapped(
      first.steel + " at " +
          internal::degrees(first.temperature, evidence.temperature_unit) + ", " +
          away(first.distance) + ":" + composition(first.weight_percent) +
          only_phases(first),
      kWidth, 2);
  std::vector<std::vector<std::string>> table{
      {"", "measured", "computed", "missed by", "source"}};
  for (std::size_t i = from; i < end; ++i)
    table.push_back(
        cells(evidence.rows[i], sources.number_of(evidence.rows[i].source)));
  return text + internal::text_table(table) + remarks(evidence.rows, from, end);
}

/// ", of carbide and matrix nothing" where only hardening was measured so near.
std::string what_is_missing(const std::vector<EvidenceRow>& rows, double up_to) {
  for (const EvidenceRow& row : rows)
    if (row.distance.value <= up_to && !row.by_hardening) return "";
  return ", hardening only, of carbide and matrix nothing";
}

std::string count_text(const Evidence& evidence, double up_to) {
  return std::to_string(evidence.met(up_to)) + " of " +
         std::to_string(evidence.computed(up_to)) + " numbers met";
}

/// Nothing where all of them are shown.
std::string shown_text(const Evidence& evidence) {
  const std::size_t shown = evidence.rows.size();
  if (shown == 0 || shown == evidence.measurements) return "";
  return "shown: the nearest " + std::to_string(shown) + " of " +
         std::to_string(evidence.measurements) + " measurements\n";
}

std::string how_near(const Evidence& evidence) {
  const double value = evidence.nearest().value;
  if (value > kRelated)
    return "no measurement is near this soak: how far off the numbers are is not known";
  const bool this_kind =
      value <= kOfThisKind && internal::left_out_text(evidence.analysis).empty();
  const double up_to = this_kind ? kOfThisKind : kRelated;
  return std::string("measured on ") +
         (this_kind ? "steels of this kind" : "related steels only") +
         what_is_missing(evidence.rows, up_to) + ": " + count_text(evidence, up_to);
}

}  // namespace

std::string Evidence::brief() const {
  std::string text = (steel.empty() ? "steel" : steel) + " at " +
                     internal::degrees(temperature, temperature_unit) +
                     ", long-hold limit: ";
  if (rows.empty()) return text + "no measurement is known";
  const std::string missing = internal::left_out_text(analysis);
  if (!missing.empty()) text += "computed without " + missing + ", not modelled: ";
  return text + how_near(*this) + "; nearest " + rows.front().steel + ", " +
         away(nearest());
}

std::string Evidence::full() const {
  std::string text =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      internal::wrapped("computed with: " + parameters, kWidth, 2) + shown_text(*this);
  Sources sources;
  for (std::size_t from = 0; from < rows.size();) {
    std::size_t end = from + 1;
    while (end < rows.size() && one_soak(rows[from], rows[end])) ++end;
    text += block(*this, from, end, sources);
    from = end;
  }
  text += "\n" + internal::wrapped(kLegend, kWidth, 0) +
          "Remarks are about the file that ships.\n";
  for (std::size_t i = 0; i < sources.citations.size(); ++i)
    text += internal::wrapped("[" + std::to_string(i + 1) + "] " + sources.citations[i],
                              kWidth, 4);
  return text + internal::wrapped(internal::kCaution, kWidth, 0);
}

bool EvidenceRow::operator==(const EvidenceRow& o) const {
  const bool same =
      computed == o.computed || (std::isnan(computed) && std::isnan(o.computed));
  return same && steel == o.steel && record == o.record && source == o.source &&
         confidence == o.confidence && remark == o.remark &&
         weight_percent == o.weight_percent && temperature == o.temperature &&
         distance == o.distance && quantity == o.quantity && unit == o.unit &&
         value == o.value && uncertainty == o.uncertainty && phases == o.phases &&
         by_hardening == o.by_hardening && from_memory == o.from_memory &&
         fitted_to == o.fitted_to && reason == o.reason;
}

}  // namespace gibbsteel
