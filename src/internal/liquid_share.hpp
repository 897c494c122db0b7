#pragma once
/// How much of a state is molten.

#include <string>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel::internal {

/// Name of the phase model in parameter files.
inline constexpr const char* kLiquid = "liquid";

/// How much of a state is of one kind of phase.
struct KindShare {
  double percent = 0.0;  ///< of the volume, or of the mass
  bool by_mass = false;  ///< a phase has no volume data
  bool nothing_else = false;
  bool partly() const noexcept { return percent > 0.0 && !nothing_else; }
};

/// Nothing for a state that is not usable.
KindShare share_of(const State& state, const std::string& kind);
KindShare liquid_share(const State& state);

/// "13.4 vol%", "less than 0.1 vol%"
std::string percent_text(const KindShare& share);

/// ", partly molten", ", molten" or nothing.
std::string melting_mark(const State& state);

/// Warning 315 of states with that much liquid; of one state, both are the same.
Warning melting_warning(const KindShare& least, const KindShare& most);

/// True when liquid was among the phases that may form.
bool may_melt(const State& state);

}  // namespace gibbsteel::internal
