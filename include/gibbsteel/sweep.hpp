#pragma once
/// Many soaks of one steel.

#include <string>
#include <vector>

#include "gibbsteel/state.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel {

struct Sweep {
  std::string steel;
  std::vector<State> states;  ///< in the order asked for
  bool cancelled = false;  ///< true: stopped by the caller, `states` is the part done

  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  /// Kinds of all carbides that occur anywhere in the sweep, in order of first
  /// appearance.
  std::vector<std::string> carbide_kinds() const;
  /// The distinct warnings of all states, in order of first appearance.
  std::vector<Warning> warnings() const;
  /// Number of states that are not usable.
  std::size_t failures() const noexcept;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table: carbides by kind, matrix composition
};

}  // namespace gibbsteel
