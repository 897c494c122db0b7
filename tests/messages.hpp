#pragma once
/// What an error says, and which warnings a state carries.

#include <string>
#include <vector>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/state.hpp"

namespace gibbsteel {

/// Of the InputError that the call throws; empty when it throws none.
template <class Call>
std::string message(Call call) {
  try {
    call();
  } catch (const InputError& error) {
    return error.what();
  }
  return "";
}

/// The last three digits of each.
inline std::vector<std::string> codes(const State& state) {
  std::vector<std::string> found;
  for (const Warning& warning : state.warnings)
    found.push_back(warning.code.substr(warning.code.size() - 3));
  return found;
}

}  // namespace gibbsteel
