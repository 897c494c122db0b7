#pragma once
/// Pieces of messages. What comes from the file is shortened and stripped of control
/// characters, so that a hostile file cannot flood or garble a terminal.

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gibbsteel::parameter_file {

/// At most 60 bytes of `text`, then "...".
std::string printable(std::string_view text);
/// The same in quotes.
std::string in_quotes(std::string_view text);

/// "\"a\", \"b\" or \"c\""; at most ten of them, then "...".
std::string one_of(std::span<const std::string_view> words);
std::string one_of(const std::vector<std::string>& words);

/// The candidate that `word` may have been meant to be; empty if none is close.
std::string_view nearest(std::string_view word,
                         std::span<const std::string_view> candidates);

/// "did you mean "Cr"?" or, when nothing is close, `otherwise`.
std::string did_you_mean(std::string_view word,
                         std::span<const std::string_view> candidates,
                         const std::string& otherwise);

/// `text` as one step of a JSON pointer ("~" and "/" escaped).
std::string pointer_step(std::string_view text);

/// Names of records, for the functions above.
template <class Record>
std::vector<std::string_view> names_of(const std::vector<Record>& records,
                                       std::string Record::*name) {
  std::vector<std::string_view> names;
  names.reserve(records.size());
  for (const Record& record : records) names.push_back(record.*name);
  return names;
}

}  // namespace gibbsteel::parameter_file
