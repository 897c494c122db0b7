#include "gibbsteel/errors.hpp"

#include "internal/control_characters.hpp"

namespace gibbsteel {

namespace {

constexpr std::size_t kLongestText = 2000;  // [bytes]

bool continues_character(char byte) {
  return (static_cast<unsigned char>(byte) & 0xC0u) == 0x80u;
}

/// A message may quote a name that the caller passed on from a stranger: no control
/// characters, which could steer a terminal or forge a second line, and no flood.
void clean(std::string& text) {
  if (text.size() > kLongestText) {
    std::size_t end = kLongestText;
    while (end > 0 && continues_character(text[end])) --end;
    text.resize(end);
    text += "...";
  }
  text = internal::without_controls(text);
}

std::vector<Problem> cleaned(std::vector<Problem> problems) {
  for (Problem& problem : problems) {
    clean(problem.place);
    clean(problem.what);
    clean(problem.remedy);
  }
  return problems;
}

std::string joined(const std::vector<Problem>& problems) {
  std::string text;
  for (const Problem& problem : problems) {
    if (!text.empty()) text += '\n';
    text += problem.text();
  }
  return text;
}

}  // namespace

std::string Problem::text() const {
  return "[" + code + "] " + place + ": " + what + "; " + remedy;
}

Error::Error(std::vector<Problem> problems)
    : std::runtime_error(joined(cleaned(problems))),
      problems_(cleaned(std::move(problems))) {}

}  // namespace gibbsteel
