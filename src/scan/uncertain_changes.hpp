#pragma once
/// How sure the temperatures of phase changes are.

#include "gibbsteel/phase_changes.hpp"
#include "scan/temperature_scan.hpp"

namespace gibbsteel::internal {

/// Fills PhaseChange::uncertainty_at_least, and texts that tell it.
/// @param found  changes_of(scan)
void add_uncertainties(const TemperatureScan& scan, PhaseChanges& found);

}  // namespace gibbsteel::internal
