#pragma once
/// Where a quantity has a value, along temperatures whose phase changes are known.

#include "gibbsteel/temperature_for.hpp"
#include "internal/file_scatter.hpp"
#include "scan/temperature_scan.hpp"

namespace gibbsteel::internal {

/// What the file states, and what it does to the target.
struct CrossingScatter {
  const FileScatter* file;
  Eigen::VectorXd target;
};

/// Fills everything of the search but its text, which needs the status first: see
/// temperature_search_text.hpp.
/// @param scatter  without it no crossing has an uncertainty
TemperatureSearch find_crossings(
    const TemperatureScan& scan, const Quantity& quantity, double target,
    const SearchOptions& search,
    const std::optional<CrossingScatter>& scatter = std::nullopt);

}  // namespace gibbsteel::internal
