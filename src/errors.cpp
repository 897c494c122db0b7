#include "gibbsteel/errors.hpp"

namespace gibbsteel {

namespace {

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
    : std::runtime_error(joined(problems)), problems_(std::move(problems)) {}

}  // namespace gibbsteel
