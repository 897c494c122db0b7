#pragma once
/// What a section map asks: which phases are present along a straight line.

#include <string>
#include <vector>

#include "section/plane_point.hpp"

namespace gibbsteel::internal {

/// Kinds of the phases that are present, sorted; two of a kind are listed twice. Empty:
/// not known, because the calculation gave no usable result.
using PhaseSet = std::vector<std::string>;

struct FieldsOnLine {
  std::vector<PhaseSet> sets;  ///< one more than `at`, in order
  std::vector<double> at;      ///< where they change, ascending, in [0, 1]
  std::string reason;          ///< why a set is not known; else empty
  std::size_t soaks = 0;
};

class FieldOracle {
 public:
  virtual ~FieldOracle() = default;
  /// All changes on the way from `from` to `to`, each located to `tolerance` units. May
  /// be called from several threads.
  virtual FieldsOnLine along(PlanePoint from, PlanePoint to,
                             double tolerance) const = 0;
};

}  // namespace gibbsteel::internal
