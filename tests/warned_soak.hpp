#pragma once
/// Soaks that are warned of, for tests of warnings.

#include <string>

#include "gibbsteel/steel.hpp"

namespace gibbsteel {

inline State soak(const NamedValues& weight_percent, double celsius,
                  const SoakOptions& options = {}) {
  return Steel(weight_percent).soak(Temperature::celsius(celsius), options);
}

/// Texts of all warnings of a state with this code, one a line.
inline std::string texts(const State& state, const std::string& number) {
  std::string text;
  for (const Warning& warning : state.warnings)
    if (warning.code == "gibbsteel.warning." + number)
      text += (text.empty() ? "" : "\n") + warning.text;
  return text;
}

inline const NamedValues kHighSpeed{{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2},
                                    {"V", 1.9},  {"Mn", 0.3}, {"Si", 0.3}};

}  // namespace gibbsteel
