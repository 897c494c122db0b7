#pragma once
/// From a scan to what a metallurgist reads.

#include "gibbsteel/phase_changes.hpp"
#include "scan/temperature_scan.hpp"

namespace gibbsteel::internal {

PhaseChanges changes_of(const TemperatureScan& scan);

}  // namespace gibbsteel::internal
