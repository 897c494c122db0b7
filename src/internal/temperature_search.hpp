#pragma once
/// temperature_for() with a target that may move with the numbers of the file.

#include <functional>

#include "gibbsteel/temperature_for.hpp"
#include "internal/file_scatter.hpp"

namespace gibbsteel::internal {

/// Scatters of the target, as FileScatter::Slopes::scatters.
using TargetScatter = std::function<Eigen::VectorXd(const FileScatter&)>;

TemperatureSearch search_temperatures(const Steel& steel, const Quantity& quantity,
                                      double value, const TemperatureRange& range,
                                      const SoakOptions& soak,
                                      const SearchOptions& search,
                                      const TargetScatter& target);

}  // namespace gibbsteel::internal
