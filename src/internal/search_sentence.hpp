#pragma once
/// What a search for a value found, in one sentence: the same for temperatures and for
/// weight percents of an element.

#include <cmath>
#include <string>

#include "gibbsteel/temperature_for.hpp"
#include "internal/number_format.hpp"
#include "scan/why_no_value.hpp"

namespace gibbsteel::internal {

/// "; no value below 801 C: no austenite", one for each stretch.
template <class Search, class Words>
std::string no_value_text(const Search& search, const Words& words) {
  std::string text;
  for (const auto& stretch : search.no_value)
    text += "; no value " + words.where(search, stretch) + reason_text(stretch.reason);
  return text;
}

/// ", flat here" or ", 1 HRC in 62 C, measured perhaps 58.9 to 65.4": how steep an
/// estimate is, from which error of it moves the answer how far, and the band of the
/// estimate. Empty where that is not known.
/// @param across    what was searched, in units of the input
/// @param distance  text of a difference of the input
template <class Search, class Crossing, class Distance>
std::string estimate_text(const Search& search, const Crossing& crossing, double across,
                          const Distance& distance) {
  if (!search.by_family || !(std::abs(crossing.slope) > 0.0)) return "";
  const bool single = search.unit == "HRC" || search.unit == "vol%";
  const double amount = single ? 1.0 : 10.0;
  const double apart = amount / std::abs(crossing.slope);
  const std::string text = apart > across ? ", flat here"
                                          : (single ? ", 1 " : ", 10 ") + search.unit +
                                                " in " + distance(apart);
  if (std::isnan(crossing.band.low)) return text;
  return text + ", measured perhaps " + significant(crossing.band.low, 3) + " to " +
         significant(crossing.band.high, 3);
}

/// ", though a measurement may lie between 60.9 HRC and 67.5 HRC at 1175 C", where that
/// holds the target.
template <class Search, class Words>
std::string nearest_text(const Search& search, const Words& words) {
  const Quantity::Ends& band = search.band_of_nearest;
  if (!(band.low <= search.target && search.target <= band.high)) return "";
  const bool up = search.target > search.highest.value;
  return ", though a measurement may lie between " + words.number(search, band.low) +
         " and " + words.number(search, band.high) + " at " +
         words.place(search, up ? search.highest : search.lowest);
}

/// @param words  found, jumps, span (of a search), number (of a search and a value),
///               where (of a search and a stretch: "below 801 C"), place (of a search
///               and its lowest or highest value)
template <class Search, class Words>
std::string search_sentence(const Search& search, const Words& words) {
  const std::string target = words.number(search, search.target);
  const std::string no_value = no_value_text(search, words);
  const std::string limits =
      no_value + (search.complete() ? "" : "; part of the range is not known");
  switch (search.status) {
    case TargetStatus::found:
      return words.found(search) + limits;
    case TargetStatus::jumps_over:
      return words.jumps(search) + limits;
    case TargetStatus::never_reached:
      return words.span(search) + " in the range and never " + target +
             nearest_text(search, words) + no_value;
    case TargetStatus::always_equal:
      return search.quantity + " is " + target + " in the whole range";
    case TargetStatus::not_computable:
      return search.quantity + " has no value anywhere in the range";
    case TargetStatus::not_known:
      break;
  }
  if (std::isnan(search.lowest.value))
    return search.no_value.empty() ? "nothing is known of the range"
                                   : "nothing else is known of the range" + no_value;
  return words.span(search) + " where it is known and not " + target + " there" +
         limits;
}

}  // namespace gibbsteel::internal
