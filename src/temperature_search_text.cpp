#include "internal/temperature_search_text.hpp"

#include <algorithm>
#include <cmath>

#include "internal/liquid_share.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_condition.hpp"
#include "internal/result_text.hpp"
#include "internal/search_sentence.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel {
namespace {

using internal::degrees;
using internal::degrees_inside;

constexpr std::size_t kWidth = 78;

std::string number(const TemperatureSearch& search, double value) {
  return internal::significant(value, 4) +
         (search.unit.empty() ? "" : " " + search.unit);
}

std::string crossing_text(const TemperatureSearch& search, const Crossing& crossing) {
  const std::string end = internal::melting_mark(crossing.state) + ")";
  const auto apart = [&](double kelvin) {
    return internal::degrees_apart_inside(kelvin, search.temperature_unit);
  };
  const std::string estimate = internal::estimate_text(
      search, crossing, search.range.high.in_kelvin() - search.range.low.in_kelvin(),
      apart);
  const std::string error =  // of an estimate, its own is larger than that of the file
      estimate.empty()
          ? internal::at_least(crossing.uncertainty_at_least, search.temperature_unit)
          : "";
  if (crossing.kind == CrossingKind::crossing)
    return degrees(crossing.temperature, search.temperature_unit) +
           (crossing.rising ? " (rising" : " (falling") + estimate +
           (error.empty() ? "" : ", " + error) + end;
  return degrees(crossing.temperature, search.temperature_unit) + " (jump from " +
         number(search, crossing.below) + " to " + number(search, crossing.above) + end;
}

bool is_jump(const Crossing& crossing) { return crossing.kind == CrossingKind::jump; }

/// "at 727 C (from 94.16 to 48.27 vol%), ..."
std::string jumps_text(const TemperatureSearch& search) {
  std::string text = search.quantity + " jumps over " + number(search, search.target);
  for (std::size_t i = 0; i < search.crossings.size(); ++i) {
    const Crossing& crossing = search.crossings[i];
    text += (i == 0 ? " at " : ", ") +
            degrees(crossing.temperature, search.temperature_unit) + " (from " +
            internal::significant(crossing.below, 4) + " to " +
            number(search, crossing.above) + internal::melting_mark(crossing.state) +
            ")";
  }
  return text;
}

std::string found_text(const TemperatureSearch& search) {
  const TemperatureUnit unit = search.temperature_unit;
  std::string text = search.quantity + " is " + number(search, search.target);
  for (std::size_t i = 0; i < search.crossings.size(); ++i)
    text += (i == 0 ? " at " : ", ") + crossing_text(search, search.crossings[i]);
  bool first = search.crossings.empty();
  for (const TemperatureRange& range : search.equal) {
    text += (first ? " from " : ", and all the way from ") + degrees(range.low, unit) +
            " to " + degrees(range.high, unit);
    first = false;
  }
  return text;
}

std::string span_text(const TemperatureSearch& search) {
  return search.quantity + " is between " + number(search, search.lowest.value) + " (" +
         degrees_inside(search.lowest.temperature, search.temperature_unit) + ") and " +
         number(search, search.highest.value) + " (" +
         degrees_inside(search.highest.temperature, search.temperature_unit) + ")";
}

bool equal_everywhere(const TemperatureSearch& search) {
  return search.crossings.empty() && search.equal.size() == 1 &&
         search.equal.front() == search.range;
}

TargetStatus status_of(const TemperatureSearch& search) {
  if (equal_everywhere(search)) return TargetStatus::always_equal;
  const auto& crossings = search.crossings;
  const bool jumps = !crossings.empty() && search.equal.empty() &&
                     std::all_of(crossings.begin(), crossings.end(), is_jump);
  if (jumps) return TargetStatus::jumps_over;
  if (!crossings.empty() || !search.equal.empty()) return TargetStatus::found;
  if (!search.complete()) return TargetStatus::not_known;
  return std::isfinite(search.lowest.value) ? TargetStatus::never_reached
                                            : TargetStatus::not_computable;
}

/// "below 801 C"
std::string where(const TemperatureSearch& search, const PhaseGap& gap) {
  const TemperatureUnit unit = search.temperature_unit;
  if (gap.low == search.range.low) return "below " + degrees(gap.high, unit);
  if (gap.high == search.range.high) return "above " + degrees(gap.low, unit);
  return "from " + degrees(TemperatureRange{gap.low, gap.high}, unit);
}

struct Words {
  std::string found(const TemperatureSearch& search) const {
    return found_text(search);
  }
  std::string jumps(const TemperatureSearch& search) const {
    return jumps_text(search);
  }
  std::string span(const TemperatureSearch& search) const { return span_text(search); }
  std::string number(const TemperatureSearch& search, double value) const {
    return gibbsteel::number(search, value);
  }
  std::string where(const TemperatureSearch& search, const PhaseGap& gap) const {
    return gibbsteel::where(search, gap);
  }
  std::string place(const TemperatureSearch& search, const ValueAt& at) const {
    return degrees(at.temperature, search.temperature_unit);
  }
};

std::string table_of(const TemperatureSearch& search) {
  std::vector<std::vector<std::string>> rows{
      {"", search.quantity + (search.unit.empty() ? "" : ", " + search.unit),
       "matrix C" + internal::long_hold_mark(search.quantity) + ", wt%",
       "carbide" + internal::long_hold_mark(search.quantity) + ", vol%"}};
  for (const Crossing& crossing : search.crossings) {
    const State& state = crossing.state;
    rows.push_back({crossing_text(search, crossing),
                    internal::significant(crossing.value, 5),
                    internal::fixed_or(quantities::matrix("C").value(state), 3, "n/a"),
                    internal::fixed_or(state.carbide_volume_percent, 2, "n/a")});
  }
  return search.crossings.empty() ? "" : "\n" + internal::text_table(rows);
}

std::string unknown_text(const TemperatureSearch& search) {
  std::string text;
  for (const PhaseGap& gap : search.gaps)
    text += internal::wrapped(
        "NOT KNOWN from " +
            degrees(TemperatureRange{gap.low, gap.high}, search.temperature_unit) +
            ": " + gap.reason + ".",
        kWidth, 2);
  if (!search.stopped.empty())
    text += internal::wrapped("NOT COMPLETE: " + search.stopped + ".", kWidth, 2);
  return text;
}

}  // namespace

void internal::conclude(TemperatureSearch& search) {
  search.status = status_of(search);
  search.text = internal::search_sentence(search, Words{});
}

std::string TemperatureSearch::brief() const {
  return (steel.empty() ? "steel" : steel) + ", " + degrees(range, temperature_unit) +
         ", " + internal::condition_of(quantity) + ": " +
         std::string(to_string(status)) + ": " + text;
}

std::string TemperatureSearch::full() const {
  std::string result =
      internal::wrapped(brief(), kWidth, 2) +
      internal::wrapped("analysis, wt%: " + analysis.brief(), kWidth, 2) +
      "parameters: " + parameters + "\n" + table_of(*this) + unknown_text(*this) + "\n";
  for (const Warning& warning : warnings())
    result += internal::wrapped("! [" + warning.code + "] " + warning.text, kWidth, 2);
  return result + internal::wrapped(internal::caution_of(quantity), kWidth, 0);
}

}  // namespace gibbsteel
