#pragma once
/// Where the edge of a mesh crosses the boundaries of fields.

#include <cstddef>
#include <utility>
#include <vector>

namespace gibbsteel::internal {

/// Fields that an edge runs through, as indices into a table of phase sets.
struct Crossings {
  std::vector<std::size_t> labels;  ///< one more than `at`
  std::vector<double> at;           ///< ascending, in [0, 1]
  bool operator==(const Crossings&) const = default;
};

/// Makes the ends those that the corners of the mesh have: an end that lies on a
/// boundary to within the tolerance can be found on either side of it.
void set_ends(std::size_t first, std::size_t last, Crossings& edge);

/// Fields narrower than one unit are taken out: their two boundaries become one, or
/// none.
void merge_narrow(double length, Crossings& edge);

/// The boundaries k and k + 1 become one; equal fields on both sides grow together.
void merge_at(std::size_t k, Crossings& edge);

std::pair<Crossings, Crossings> halves(const Crossings& edge);

Crossings reversed(const Crossings& edge);

}  // namespace gibbsteel::internal
