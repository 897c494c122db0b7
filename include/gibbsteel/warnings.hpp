#pragma once
/// What a user should know about a result that is no error: codes 3xx.

#include <string>
#include <vector>

namespace gibbsteel {

struct Warning {
  std::string code;  ///< stable: "gibbsteel.warning.301"
  std::string text;  ///< one or two plain sentences, with numbers
  bool operator==(const Warning&) const = default;
};

}  // namespace gibbsteel
