#pragma once
/// One equation of the trade: what it takes, what it gives, where it comes from, where
/// it holds, how far off it is.

#include <functional>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/named_values.hpp"

namespace gibbsteel {

/// What an equation is for, and the unit of what it gives.
enum class PropertyKind {
  martensite_start,     ///< [C]
  retained_austenite,   ///< fraction of the austenite that stays, 0 to 1
  martensite_hardness,  ///< of martensite without retained austenite or carbide [HV]
  grain_pinning,        ///< diameter at which carbide stops grain growth [um]
};

/// "martensite start", "retained austenite", "martensite hardness", "grain pinning".
std::string_view property_kind_name(PropertyKind kind);
/// "C", "", "HV", "um".
std::string_view property_unit(PropertyKind kind);

/// Everything an equation may read; each kind reads its own part.
struct PropertyInput {
  static constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

  NamedValues weight_percent;           ///< of the austenite
  double martensite_start = kUnknown;   ///< [C], for retained austenite
  double coldest_celsius = 20.0;        ///< coldest temperature of the quench [C]
  double cooling_rate = 36000.0;        ///< at 700 C [C/h], for martensite hardness
  double particle_diameter = kUnknown;  ///< mean of the carbide [um], for pinning
  double carbide_fraction = 0.0;        ///< of the volume, 0 to 1, for pinning
};

/// Derivatives of an equation with respect to what it reads.
struct PropertySlope {
  NamedValues weight_percent;     ///< per wt%; elements that do not matter left out
  double martensite_start = 0.0;  ///< per C
  double carbide_fraction = 0.0;  ///< per unit of the fraction
};

/// Weight percents within which the source says that its equation holds.
struct EquationRange {
  std::string element;
  double low = 0.0;
  double high = 100.0;
  bool operator==(const EquationRange&) const = default;
};

struct PropertyEquation {
  using Value = std::function<double(const PropertyInput&)>;
  using Slope = std::function<PropertySlope(const PropertyInput&)>;

  PropertyKind kind = PropertyKind::martensite_start;
  std::string key;      ///< by which it is chosen: "van-bohemen"
  std::string label;    ///< of the table of equations, "H7"; empty for a user's own
  std::string formula;  ///< as text, with units
  std::string source;   ///< citation; "from memory" where it was not looked up again
  std::vector<EquationRange> ranges;   ///< empty: none stated
  std::vector<std::string> elements;  ///< that it has a term for; empty: not known
  double error = 0.0;  ///< typical, one standard deviation, in the unit of the kind
  std::string note;    ///< what to know when using it; may be empty
  Value value;
  Slope slope;  ///< when left out, central differences of `value` are used

  /// Derivatives: `slope` where given, central differences otherwise.
  PropertySlope slope_at(const PropertyInput& input) const;
  /// One sentence for every range that the composition leaves.
  std::vector<std::string> range_remarks(const NamedValues& weight_percent) const;
  /// One for every element above 0.5 wt% for which there is no term.
  std::vector<std::string> term_remarks(const NamedValues& weight_percent) const;
  std::string brief() const;  ///< one line
};

}  // namespace gibbsteel
