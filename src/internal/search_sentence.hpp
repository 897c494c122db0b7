#pragma once
/// What a search for a value found, in one sentence: the same for temperatures and for
/// weight percents of an element.

#include <cmath>
#include <string>

#include "gibbsteel/temperature_for.hpp"
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

/// @param words  found, jumps, span (of a search), number (of a search and a value),
///               where (of a search and a stretch: "below 801 C")
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
      return words.span(search) + " in the range and never " + target + no_value;
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
