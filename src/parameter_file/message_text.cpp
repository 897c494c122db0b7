#include "message_text.hpp"

#include <algorithm>
#include <cstddef>

#include "internal/control_characters.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr std::size_t kLongestQuote = 60;  // [bytes]
constexpr std::size_t kMostWords = 10;

bool continues_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0u) == 0x80u;
}

/// Number of single-character edits (insert, delete, replace) from a to b; stops
/// counting once there are more than `most`.
std::size_t edit_distance(std::string_view a, std::string_view b, std::size_t most) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t replaced = diagonal + (a[i - 1] == b[j - 1] ? 0u : 1u);
      diagonal = row[j];
      row[j] = std::min({row[j] + 1, row[j - 1] + 1, replaced});
    }
    if (*std::min_element(row.begin(), row.end()) > most) return most + 1;
  }
  return row[b.size()];
}

std::string joined_words(std::span<const std::string_view> words) {
  std::string text;
  const std::size_t shown = std::min(words.size(), kMostWords);
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) text += (i + 1 == words.size()) ? " or " : ", ";
    text += in_quotes(words[i]);
  }
  if (shown < words.size()) text += ", ...";
  return text;
}

}  // namespace

std::string printable(std::string_view text) {
  const bool shortened = text.size() > kLongestQuote;
  if (shortened) {
    std::size_t end = kLongestQuote;
    while (end > 0 && continues_character(text[end])) --end;
    text = text.substr(0, end);
  }
  const std::string result = internal::without_controls(text);
  return shortened ? result + "..." : result;
}

std::string in_quotes(std::string_view text) { return '"' + printable(text) + '"'; }

std::string one_of(std::span<const std::string_view> words) {
  return joined_words(words);
}

std::string one_of(const std::vector<std::string>& words) {
  const std::vector<std::string_view> views(words.begin(), words.end());
  return joined_words(views);
}

std::string_view nearest(std::string_view word,
                         std::span<const std::string_view> candidates) {
  constexpr std::size_t kMostEdits = 3;
  std::string_view best;
  std::size_t fewest = kMostEdits + 1;
  for (const std::string_view candidate : candidates) {
    const std::size_t longer = std::max(word.size(), candidate.size());
    const std::size_t shorter = std::min(word.size(), candidate.size());
    if (longer - shorter > kMostEdits || shorter < 3) continue;
    const std::size_t edits = edit_distance(word, candidate, kMostEdits);
    if (edits < fewest && 2 * edits < longer) {
      fewest = edits;
      best = candidate;
    }
  }
  return best;
}

std::string did_you_mean(std::string_view word,
                         std::span<const std::string_view> candidates,
                         const std::string& otherwise) {
  const std::string_view close = nearest(word, candidates);
  return close.empty() ? otherwise : "did you mean " + in_quotes(close) + "?";
}

std::string pointer_step(std::string_view text) {
  std::string step;
  for (const char byte : internal::without_controls(text)) {
    if (byte == '~')
      step += "~0";
    else if (byte == '/')
      step += "~1";
    else
      step += byte;
  }
  return step;
}

}  // namespace gibbsteel::parameter_file
