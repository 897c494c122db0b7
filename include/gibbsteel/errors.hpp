#pragma once
/// What a caller did wrong, said once, in full: a stable code, the place, what is wrong
/// and what would be right. Numerical trouble is never an exception; it is a status
/// (see minimizer.hpp). All codes are listed in ERROR_CODES.md beside this header.

#include <stdexcept>
#include <string>
#include <vector>

namespace gibbsteel {

/// One thing wrong with a parameter file or with an argument.
struct Problem {
  std::string code;    ///< stable: "gibbsteel.data.104", "gibbsteel.input.203"
  std::string place;   ///< "file.json: /phases/M6C/energy/3" or an argument name
  std::string what;    ///< what is wrong, with the offending value
  std::string remedy;  ///< what would be right

  /// "[gibbsteel.data.104] file.json: /phases/M6C/energy/3: <what>; <remedy>"
  std::string text() const;
  bool operator==(const Problem&) const = default;
};

/// Base of everything gibbsteel throws. what() holds the text of every problem, one a
/// line. Place, what and remedy are cut after 2000 bytes each, and control characters
/// in them (a name quoted from a stranger) become question marks.
class Error : public std::runtime_error {
 public:
  explicit Error(std::vector<Problem> problems);
  /// At least one entry, in the order found.
  const std::vector<Problem>& problems() const noexcept { return problems_; }
  /// Code of the first problem.
  const std::string& code() const noexcept { return problems_.front().code; }

 private:
  std::vector<Problem> problems_;
};

/// A parameter file, or several laid on top of each other, cannot be used (codes 1xx).
class DataError : public Error {
 public:
  using Error::Error;
};

/// An argument cannot be used: composition, temperature, option, phase name (codes
/// 2xx).
class InputError : public Error {
 public:
  using Error::Error;
};

}  // namespace gibbsteel
