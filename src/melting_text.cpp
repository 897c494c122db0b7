#include "internal/melting_text.hpp"

#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/phase_change_text.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::degrees;
using internal::degrees_with_error;

constexpr std::size_t kWidth = 78;

/// "begins to melt at 1265 C +-30 (solidus, out of austenite + MC)"
std::string solidus_text(const MeltingRange& found) {
  return "begins to melt at " +
         degrees_with_error(*found.solidus, kSolidusError, found.temperature_unit) +
         " (solidus, out of " + internal::joined(found.solids_at_solidus) + ")";
}

/// "molten above 1470 C +-15 (liquidus, ferrite melts last)"
std::string liquidus_text(const MeltingRange& found) {
  const auto& last = found.primary_solids;
  return "molten above " +
         degrees_with_error(*found.liquidus, kLiquidusError, found.temperature_unit) +
         " (liquidus, " + internal::joined(last) +
         (last.size() == 1 ? " melts" : " melt") + " last)";
}

std::string known_part(const MeltingRange& found, const std::vector<PhaseGap>& gaps) {
  std::string text = "part of the range is not known";
  for (const PhaseGap& gap : gaps)
    text += ", " + degrees(TemperatureRange{gap.low, gap.high}, found.temperature_unit);
  if (found.solidus) text += "; " + solidus_text(found);
  if (found.liquidus) text += "; " + liquidus_text(found);
  return text;
}

/// Compositions of the first liquid and of what melts last.
std::string composition_table(const MeltingRange& found) {
  std::vector<std::vector<std::string>> rows{{"weight percent in"}};
  const auto add = [&](const std::string& label, const Occurrence& o) {
    if (rows.size() == 1)
      for (const auto& [symbol, percent] : o.weight_percent) rows[0].push_back(symbol);
    rows.push_back(internal::composition_row(label, o.weight_percent));
  };
  for (const Occurrence& o : found.at_solidus.occurrences)
    if (o.kind == internal::kLiquid) add("first liquid", o);
  for (const Occurrence& o : found.at_liquidus.occurrences)
    if (o.kind != internal::kLiquid) add("last " + o.name, o);
  return rows.size() == 1 ? ""
                          : internal::text_table(rows) +
                                internal::last_digits_text(!found.noted.empty());
}

}  // namespace

std::string_view to_string(MeltingStatus status) noexcept {
  switch (status) {
    case MeltingStatus::found:
      return "found";
    case MeltingStatus::solidus_only:
      return "solidus only";
    case MeltingStatus::liquidus_only:
      return "liquidus only";
    case MeltingStatus::partly_molten:
      return "partly molten";
    case MeltingStatus::solid:
      return "solid";
    case MeltingStatus::molten:
      return "molten";
    case MeltingStatus::no_liquid:
      return "no liquid";
    case MeltingStatus::not_known:
      break;
  }
  return "not known";
}

std::string internal::melting_text(const MeltingRange& found, const std::string& remedy,
                                   const std::vector<PhaseGap>& gaps) {
  const TemperatureUnit unit = found.temperature_unit;
  switch (found.status) {
    case MeltingStatus::found:
      return solidus_text(found) + ", " + liquidus_text(found);
    case MeltingStatus::solidus_only:
      return solidus_text(found) + ", not yet molten at the high end of the range, " +
             degrees(found.range.high, unit);
    case MeltingStatus::liquidus_only:
      return "partly molten already at the low end of the range, " +
             degrees(found.range.low, unit) + "; " + liquidus_text(found);
    case MeltingStatus::partly_molten:
      return "partly molten at both ends of the range, " + degrees(found.range, unit);
    case MeltingStatus::solid:
      return "no liquid forms in the range, " + degrees(found.range, unit);
    case MeltingStatus::molten:
      return "molten all over the range, " + degrees(found.range, unit);
    case MeltingStatus::no_liquid:
      return remedy;
    case MeltingStatus::not_known:
      break;
  }
  return known_part(found, gaps);
}

std::string MeltingRange::brief() const {
  return (steel.empty() ? "steel" : steel) + ", melting, long-hold limit: " + text;
}

std::string MeltingRange::full() const {
  std::string result =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      internal::wrapped("parameters: " + parameters, kWidth, 2) + "\n";
  if (!fields.empty())
    result += internal::fields_table(fields, temperature_unit) + "\n";
  const std::string compositions = composition_table(*this);
  if (!compositions.empty()) result += compositions + "\n";
  if (status != MeltingStatus::no_liquid)
    result += internal::wrapped(
        "Of the mean composition: carbide streaks of a bar, segregated places of a "
        "casting, and steels with P, S or B, begin to melt lower (incipient melting); "
        "places with 20 % more carbon and alloy by up to 60 C.",
        kWidth, 2);
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
