#pragma once
/// Finds the fields of a plane: a mesh of lines on which all changes are known, refined
/// until the boundaries can be joined inside every triangle, or boundaries meet in a
/// triangle as small as the tolerance (a node). Then each boundary is followed between
/// its crossings with the mesh by lines across it.
///
/// What it cannot see: a field that touches no line of the mesh and no line across a
/// boundary.

#include <functional>
#include <string>
#include <vector>

#include "section/chords.hpp"
#include "section/field_oracle.hpp"

namespace gibbsteel::internal {

struct TraceOptions {
  double width = 0.0, height = 0.0;  ///< of the plane, in tolerances
  std::size_t columns = 12, rows = 12;
  std::size_t most_soaks = 0;  ///< the tracing stops there
  std::size_t threads = 0;     ///< 0: all cores; the result does not depend on it
  /// Called between lines with the soaks done; return false to stop.
  std::function<bool(std::size_t)> progress;
};

enum class TriangleState {
  open,    ///< not yet known
  joined,  ///< chords hold all boundaries; there may be none
  node,    ///< boundaries meet inside
};

struct TracedTriangle {
  TriangleState state = TriangleState::open;
  bool followed = false;  ///< the inner points of the chords are known
  std::vector<Chord> chords;
};

struct TracedSection {
  TriangleMesh mesh;
  std::vector<PhaseSet> labels;
  std::vector<TracedTriangle> triangles;  ///< as mesh.triangles()
  std::size_t soaks = 0;
  std::string reason;   ///< why somewhere a set is not known; else empty
  std::string stopped;  ///< why triangles are open; else empty
};

TracedSection trace_section(const FieldOracle& oracle, const TraceOptions& options);

}  // namespace gibbsteel::internal
