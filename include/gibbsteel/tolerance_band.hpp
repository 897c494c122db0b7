#pragma once
/// What the scatter of a heat, a furnace and a segregated place does to the numbers of
/// a state: the result of tolerance_band() (tolerance.hpp). Plain data.

#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/band.hpp"
#include "gibbsteel/temperature_unit.hpp"

namespace gibbsteel {

/// What carbon does where the alloy content is segregated.
enum class SegregatedCarbon {
  equal_activity,  ///< Eq. (U4); about five soaks instead of one
  scaled,          ///< approximation: carbon goes up and down with the alloy content
  unchanged,       ///< approximation: the same carbon everywhere
};

std::string_view to_string(SegregatedCarbon) noexcept;

struct ToleranceBand : Band {
  SegregatedCarbon segregated_carbon = SegregatedCarbon::equal_activity;
  std::size_t corners = 0;  ///< distinct corners soaked, the unusable ones included
  std::vector<UnusableSample> unusable_corners;
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  std::string brief() const;  ///< one line
  std::string full() const;   ///< tables with units, warnings and cautions
};

}  // namespace gibbsteel
