#pragma once
/// How phase changes are told.

#include "gibbsteel/phase_changes.hpp"

namespace gibbsteel::internal {

/// "727 C on heating: ferrite + M3C -> austenite (invariant)"
std::string change_text(const PhaseChange& change, TemperatureUnit unit);

/// "phases present", a row for each field.
std::string fields_table(const std::vector<PhaseField>& fields, TemperatureUnit unit);

/// "700 C (start of the range) to 812 C"
std::string interval_text(const PhaseField& interval, TemperatureUnit unit);

/// "austenite + MC", "ferrite + ferrite"
std::string joined(const std::vector<std::string>& names, const char* between = " + ");

}  // namespace gibbsteel::internal
