#include "internal/composition_search_text.hpp"

#include <algorithm>
#include <cmath>

#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/search_sentence.hpp"
#include "internal/temperature_text.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::fixed;

constexpr std::size_t kWidth = 78;

std::string percent(const CompositionSearch& search, double value) {
  return fixed(value, search.element == "C" ? 3 : 2) + " wt% " + search.element;
}

std::string number(const CompositionSearch& search, double value) {
  return internal::significant(value, 4) +
         (search.unit.empty() ? "" : " " + search.unit);
}

std::string crossing_text(const CompositionSearch& search,
                          const CompositionCrossing& crossing) {
  const std::string text = percent(search, crossing.weight_percent);
  const std::string end = internal::melting_mark(crossing.state) + ")";
  const auto apart = [](double percents) {
    return internal::significant(percents, 2) + " wt%";
  };
  if (crossing.kind == CrossingKind::crossing)
    return text + (crossing.rising ? " (rising" : " (falling") +
           internal::estimate_text(search, crossing,
                                   search.range.high - search.range.low, apart) +
           end;
  return text + " (jump from " + number(search, crossing.below) + " to " +
         number(search, crossing.above) + end;
}

bool is_jump(const CompositionCrossing& crossing) {
  return crossing.kind == CrossingKind::jump;
}

/// "at 727 C (from 94.16 to 48.27 vol%), ..."
std::string jumps_text(const CompositionSearch& search) {
  std::string text = search.quantity + " jumps over " + number(search, search.target);
  for (std::size_t i = 0; i < search.crossings.size(); ++i) {
    const CompositionCrossing& crossing = search.crossings[i];
    text += (i == 0 ? " at " : ", ") + percent(search, crossing.weight_percent) +
            " (from " + internal::significant(crossing.below, 4) + " to " +
            number(search, crossing.above) + internal::melting_mark(crossing.state) +
            ")";
  }
  return text;
}

std::string found_text(const CompositionSearch& search) {
  std::string text = search.quantity + " is " + number(search, search.target);
  for (std::size_t i = 0; i < search.crossings.size(); ++i)
    text += (i == 0 ? " at " : ", ") + crossing_text(search, search.crossings[i]);
  bool first = search.crossings.empty();
  for (const WeightPercentRange& range : search.equal) {
    text += (first ? " from " : ", and all the way from ") +
            percent(search, range.low) + " to " + percent(search, range.high);
    first = false;
  }
  return text;
}

std::string span_text(const CompositionSearch& search) {
  return search.quantity + " is between " + number(search, search.lowest.value) + " (" +
         percent(search, search.lowest.weight_percent) + ") and " +
         number(search, search.highest.value) + " (" +
         percent(search, search.highest.weight_percent) + ")";
}

TargetStatus status_of(const CompositionSearch& search) {
  const bool everywhere = search.crossings.empty() && search.equal.size() == 1 &&
                          search.equal.front() == search.range;
  if (everywhere) return TargetStatus::always_equal;
  const auto& crossings = search.crossings;
  const bool jumps = !crossings.empty() && search.equal.empty() &&
                     std::all_of(crossings.begin(), crossings.end(), is_jump);
  if (jumps) return TargetStatus::jumps_over;
  if (!crossings.empty() || !search.equal.empty()) return TargetStatus::found;
  if (!search.complete()) return TargetStatus::not_known;
  return std::isfinite(search.lowest.value) ? TargetStatus::never_reached
                                            : TargetStatus::not_computable;
}

/// "below 0.52 wt% Cr"
std::string where(const CompositionSearch& search, const PercentGap& gap) {
  if (gap.low == search.range.low) return "below " + percent(search, gap.high);
  if (gap.high == search.range.high) return "above " + percent(search, gap.low);
  return "from " + percent(search, gap.low) + " to " + percent(search, gap.high);
}

struct Words {
  std::string found(const CompositionSearch& search) const {
    return found_text(search);
  }
  std::string jumps(const CompositionSearch& search) const {
    return jumps_text(search);
  }
  std::string span(const CompositionSearch& search) const { return span_text(search); }
  std::string number(const CompositionSearch& search, double value) const {
    return gibbsteel::number(search, value);
  }
  std::string where(const CompositionSearch& search, const PercentGap& gap) const {
    return gibbsteel::where(search, gap);
  }
  std::string place(const CompositionSearch& search, const ValueAtPercent& at) const {
    return percent(search, at.weight_percent);
  }
};

std::string table_of(const CompositionSearch& search) {
  std::vector<std::vector<std::string>> rows{
      {"", search.quantity + (search.unit.empty() ? "" : ", " + search.unit),
       "matrix C" + internal::long_hold_mark(search.quantity) + ", wt%",
       "carbide" + internal::long_hold_mark(search.quantity) + ", vol%"}};
  for (const CompositionCrossing& crossing : search.crossings) {
    const State& state = crossing.state;
    rows.push_back({crossing_text(search, crossing),
                    internal::significant(crossing.value, 5),
                    internal::fixed_or(quantities::matrix("C").value(state), 3, "n/a"),
                    internal::fixed_or(state.carbide_volume_percent, 2, "n/a")});
  }
  return search.crossings.empty() ? "" : "\n" + internal::text_table(rows);
}

std::string unknown_text(const CompositionSearch& search) {
  std::string text;
  for (const PercentGap& gap : search.gaps)
    text += internal::wrapped("NOT KNOWN from " + percent(search, gap.low) + " to " +
                                  percent(search, gap.high) + ": " + gap.reason + ".",
                              kWidth, 2);
  if (!search.stopped.empty())
    text += internal::wrapped("NOT COMPLETE: " + search.stopped + ".", kWidth, 2);
  return text;
}

}  // namespace

void internal::conclude(CompositionSearch& search) {
  search.status = status_of(search);
  search.text = internal::search_sentence(search, Words{});
}

std::string CompositionSearch::brief() const {
  return (steel.empty() ? "steel" : steel) + " with " + internal::shortest(range.low) +
         " to " + internal::shortest(range.high) + " wt% " + element + " at " +
         internal::degrees(temperature, temperature_unit) + ", " +
         internal::condition_of(quantity) + ": " + std::string(to_string(status)) +
         ": " + text;
}

std::string CompositionSearch::full() const {
  std::string result =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      "parameters: " + parameters + "\n" + table_of(*this) + unknown_text(*this) + "\n";
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::caution_of(quantity), kWidth, 0);
}

}  // namespace gibbsteel
