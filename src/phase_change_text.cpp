#include "internal/phase_change_text.hpp"

#include <cmath>

#include "internal/number_format.hpp"
#include "internal/result_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace internal {
namespace {

double mole_percent(const State& state, const std::string& kind) {
  double sum = 0.0;
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind) sum += o.mole_percent;
  return sum;
}

/// Kinds whose amount falls (sign -1) or grows (+1) by more than the change could move
/// without a reaction.
std::vector<std::string> moved(const PhaseChange& change, double sign) {
  constexpr double kJump = 0.1;  // [mole percent]
  std::vector<std::string> kinds;
  for (const std::string& kind : change.below.kinds) {
    const double moved =
        mole_percent(change.above, kind) - mole_percent(change.below, kind);
    if (sign * moved > kJump) kinds.push_back(kind);
  }
  return kinds;
}

std::string verb(const std::vector<std::string>& names, const char* one,
                 const char* several) {
  return joined(names, " and ") + " " + (names.size() == 1 ? one : several);
}

std::string edge_text(Temperature t, Edge edge, const char* range,
                      TemperatureUnit unit) {
  std::string text = degrees(t, unit);
  if (edge == Edge::range) text += std::string(" (") + range + " of the range)";
  if (edge == Edge::gap) text += " (nothing known beyond)";
  return text;
}

}  // namespace

std::string joined(const std::vector<std::string>& names, const char* between) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : between) + name;
  return text;
}

std::string change_text(const PhaseChange& change, TemperatureUnit unit) {
  const std::string where = degrees(change.temperature, unit) +
                            in_brackets(at_least(change.uncertainty_at_least, unit)) +
                            " on heating: ";
  if (change.invariant)
    return where + joined(moved(change, -1.0)) + " -> " + joined(moved(change, 1.0)) +
           " (invariant)";
  std::string text;
  if (!change.disappears.empty())
    text = verb(change.disappears, "disappears", "disappear");
  if (!change.appears.empty())
    text += (text.empty() ? "" : ", ") + verb(change.appears, "appears", "appear");
  return where + text;
}

std::string fields_table(const std::vector<PhaseField>& fields, TemperatureUnit unit) {
  std::vector<std::vector<std::string>> rows;
  for (const PhaseField& field : fields)
    rows.push_back({"  " + joined(field.phases),
                    degrees(TemperatureRange{field.low, field.high}, unit)});
  return "phases present\n" + text_table(rows);
}

std::string interval_text(const PhaseField& interval, TemperatureUnit unit) {
  return edge_text(interval.low, interval.low_edge, "low end", unit) + " to " +
         edge_text(interval.high, interval.high_edge, "high end", unit);
}

}  // namespace internal

namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

std::string table_of(const PhaseChanges& changes) {
  std::string text =
      internal::fields_table(changes.fields, changes.temperature_unit) + "\nchanges\n";
  if (changes.changes.empty()) text += "  none\n";
  for (const PhaseChange& change : changes.changes)
    text += internal::wrapped("  " + change.text, kWidth, 4);
  return text;
}

std::string limits_text(const PhaseChanges& changes) {
  const auto line = [](const char* name, const TransformationLimit& limit) {
    return internal::wrapped(std::string(name) + ": " + limit.text, kWidth, 2);
  };
  return line("Ae1", changes.ae1) + line("Ae3", changes.ae3) + line("Acm", changes.acm);
}

std::string unknown_text(const PhaseChanges& changes) {
  std::string text;
  for (const PhaseGap& gap : changes.gaps)
    text +=
        internal::wrapped("NOT KNOWN from " +
                              internal::degrees(TemperatureRange{gap.low, gap.high},
                                                changes.temperature_unit) +
                              ": " + gap.reason + ". Changes in there are not listed.",
                          kWidth, 2);
  if (!changes.stopped.empty())
    text += internal::wrapped(
        "NOT COMPLETE: " + changes.stopped + "; nothing is known above " +
            internal::degrees(changes.high.temperature, changes.temperature_unit) + ".",
        kWidth, 2);
  return text;
}

}  // namespace

std::string PhaseChanges::brief() const {
  std::string text = (steel.empty() ? "steel" : steel) + ", " +
                     internal::degrees(range, temperature_unit) +
                     ", long-hold limit: " + std::to_string(changes.size()) +
                     (changes.size() == 1 ? " phase change" : " phase changes");
  if (!gaps.empty())
    text += ", " + std::to_string(gaps.size()) + (gaps.size() == 1 ? " GAP" : " GAPS");
  return stopped.empty() ? text : text + ", NOT COMPLETE (" + stopped + ")";
}

std::string PhaseChanges::full() const {
  std::string text = brief() + "\n" + internal::analysis_text(low) +
                     "parameters: " + low.parameters + "\n\n" + table_of(*this) + "\n" +
                     limits_text(*this) + unknown_text(*this) + "\n";
  for (const Warning& warning : warnings())
    // The table has the matrix of every field.
    if (warning.code != "gibbsteel.warning.305")
      text += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return text + internal::wrapped(internal::kCaution, kWidth, 0);
}

}  // namespace gibbsteel
