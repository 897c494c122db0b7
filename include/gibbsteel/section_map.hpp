#pragma once
/// Which phases are stable where: a map over temperature and one element, or over two
/// elements at one temperature, with its boundaries as lines.

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "gibbsteel/steel.hpp"
#include "gibbsteel/temperature_range.hpp"

namespace gibbsteel {

/// Weight percent of one element, balance Fe, from low to high.
struct SweptElement {
  std::string element;
  double low = 0.0, high = 0.0;  ///< [wt%], 0 <= low < high
};

struct SectionOptions {
  /// What a boundary may be off: in temperature [K], in [0.001, 50] ...
  double temperature_tolerance = 0.1;
  /// ... or in composition [wt%], in [1e-5, 5]. Of a short axis a tenth of it.
  double percent_tolerance = 0.001;
  /// Of the mesh of lines that the search starts from, each in [2, 200].
  std::size_t columns = 12, rows = 12;
  std::size_t most_soaks = 200000;  ///< the search stops there and says so, >= 100
  std::size_t threads = 0;          ///< 0: all cores; the map does not depend on it
  /// Called now and then with the number of soaks done; return false to stop.
  std::function<bool(std::size_t)> progress;

  /// Every option out of its range (gibbsteel.input.282); empty when all are valid.
  std::vector<Problem> problems() const;
};

struct SectionAxis {
  std::string element;           ///< empty: temperature
  double low = 0.0, high = 0.0;  ///< [wt%] or [C]
  std::string unit() const;      ///< "wt%" or "C"
  std::string label() const;     ///< "C [wt%]", "temperature [C]"
  bool operator==(const SectionAxis&) const = default;
};

/// In the units of the axes.
struct SectionPoint {
  double x = 0.0, y = 0.0;
  bool operator==(const SectionPoint&) const = default;
};

/// A line between two fields, from node to node, to the border, or closed.
struct SectionBoundary {
  std::vector<std::string> left, right;  ///< phases beside it, walking along the points
  std::vector<std::string> left_only, right_only;  ///< what changes across it
  /// A reaction at one temperature: several phases change, and by the phase rule there
  /// are as many on both sides as there are elements. Where more than one phase changes
  /// across another boundary, two of them run closer together than the tolerance.
  bool invariant = false;
  bool closed = false;
  bool of_gap = false;  ///< on one side nothing is known
  std::vector<SectionPoint> points;
  bool operator==(const SectionBoundary&) const = default;
};

/// A region with one set of phases.
struct SectionField {
  std::vector<std::string> phases;  ///< kinds, in the order of the parameter file
  std::string label;                ///< "austenite + M3C"
  SectionPoint label_point;         ///< inside, as far from the outline as can be
  double label_room = 0.0;  ///< its distance from the outline, as a share of the axes
  double area_share = 0.0;  ///< of the map
  std::vector<SectionPoint> outline;             ///< closed; the first is not repeated
  std::vector<std::vector<SectionPoint>> holes;  ///< fields inside it
  bool operator==(const SectionField&) const = default;
};

/// A point where boundaries meet.
struct SectionNode {
  SectionPoint at;
  std::vector<std::string> fields;  ///< labels
  bool operator==(const SectionNode&) const = default;
};

/// A region of which nothing is known. Its outline is no phase boundary.
struct SectionGap {
  std::vector<SectionPoint> outline;
  std::string reason;
  bool operator==(const SectionGap&) const = default;
};

struct SectionMap {
  std::string steel;
  MillAnalysis analysis;  ///< of the steel that the axes change
  SectionAxis x, y;
  std::optional<Temperature> temperature;       ///< of a map over two elements
  double x_tolerance = 0.0, y_tolerance = 0.0;  ///< used: a tenth of a short axis
  std::vector<SectionBoundary> boundaries;
  std::vector<SectionField> fields;  ///< largest first
  std::vector<SectionNode> nodes;
  std::vector<SectionGap> gaps;
  std::vector<Warning> warnings;  ///< of soaks at the corners and in the middle
  std::string parameters, parameters_hash;
  std::size_t soaks = 0;  ///< that the search took
  std::string stopped;    ///< why it is not complete; else empty
  TemperatureUnit temperature_unit = TemperatureUnit::celsius;  ///< beside C in texts

  /// True when nothing in the map is unknown.
  bool complete() const noexcept { return gaps.empty() && stopped.empty(); }
  /// Points on all boundaries.
  std::size_t points() const noexcept;
  /// The field that holds a point; nullptr in a gap, outside, and on a boundary to the
  /// last bits.
  const SectionField* field_at(SectionPoint at) const;
  std::string brief() const;  ///< one line
  std::string full() const;   ///< table of fields, reactions and nodes; cautions
};

/// Temperature against one element. Points are (wt%, C).
///
/// Boundaries are lines on which every point is located to a fifth of the tolerances,
/// and which are off by less than the tolerances between their points. Fields narrower
/// than the tolerances are taken as part of the boundary. An axis has at least 0.0001
/// wt% or 0.01 K. Where two boundaries cross at
/// a small angle the node is located to the tolerances across them, less well along
/// them. A field that touches no line of the mesh and no boundary followed is not
/// found.
///
/// Long-hold limit: shop soaks of minutes lie beside it.
/// @throws InputError gibbsteel.input.280 (range), .281 (element), .282 (options; an
/// axis
///         that is too short), .283 (bound tramp elements), .210 (temperatures), .250
///         (temperature range), and as Steel and Steel::soak()
SectionMap section_map(const Steel& steel, const SweptElement& x,
                       const TemperatureRange& y, const SoakOptions& soak = {},
                       const SectionOptions& options = {});

/// Two elements at one temperature. Points are (wt%, wt%).
SectionMap section_map(const Steel& steel, const SweptElement& x, const SweptElement& y,
                       Temperature t, const SoakOptions& soak = {},
                       const SectionOptions& options = {});

}  // namespace gibbsteel
