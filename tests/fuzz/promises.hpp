#pragma once
/// What every fuzzing program checks besides crashes. A broken promise is thrown and
/// not caught, which ends the program like a crash, so that libFuzzer keeps the input;
/// tests that use the same checks report it as a failure.

#include <algorithm>
#include <cstdint>
#include <stdexcept>
#include <string>

#include "gibbsteel/errors.hpp"
#include "internal/control_characters.hpp"

/// libFuzzer calls it for every input; replay_main.cpp does for stored ones.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace gibbsteel::fuzz {

inline void promise(bool kept, const char* what) {
  if (!kept) throw std::logic_error(std::string("broken promise: ") + what);
}

inline bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// "gibbsteel.data.123" for the prefix "gibbsteel.data."
inline bool is_code(const std::string& code, const std::string& prefix) {
  return code.size() == prefix.size() + 3 &&
         code.compare(0, prefix.size(), prefix) == 0 &&
         std::all_of(code.end() - 3, code.end(), is_digit);
}

/// No character that could steer a terminal or forge a second line.
inline bool is_printable(const std::string& text) {
  for (std::size_t i = 0; i < text.size(); ++i)
    if (internal::control_size(std::string_view(text).substr(i)) > 0) return false;
  return true;
}

/// Every problem complete, the list and its text of bounded length.
inline void check_error(const Error& error, const std::string& prefix) {
  constexpr std::size_t kMostProblems = 201, kLongestProblem = 6100;
  promise(!error.problems().empty(), "an error names a problem");
  promise(error.problems().size() <= kMostProblems, "the list of problems ends");
  for (const Problem& problem : error.problems()) {
    promise(is_code(problem.code, prefix), "an error has a code of its kind");
    promise(!problem.place.empty() && !problem.what.empty() && !problem.remedy.empty(),
            "an error says where, what and what would be right");
    promise(is_printable(problem.text()), "a message has no control characters");
    promise(problem.text().size() <= kLongestProblem, "a message is not endless");
  }
}

/// Runs `action`; true when it went through, false when it was refused as it may be.
/// Anything else that is thrown ends the program.
template <typename Refusal, typename Action>
bool accepted(const std::string& prefix, const Action& action) {
  try {
    action();
    return true;
  } catch (const Refusal& error) {
    check_error(error, prefix);
    return false;
  }
}

template <typename Action>
bool file_accepted(const Action& action) {
  return accepted<DataError>("gibbsteel.data.", action);
}

template <typename Action>
bool input_accepted(const Action& action) {
  return accepted<InputError>("gibbsteel.input.", action);
}

}  // namespace gibbsteel::fuzz
