#pragma once
/// Which parts of the edges of a mesh belong to one field.

#include <map>

#include "section/section_tracer.hpp"

namespace gibbsteel::internal {

/// Fields of a traced mesh, as connected sets of parts of its edges. A part lies
/// between two neighbouring crossings, or a crossing and a corner.
class FieldParts {
 public:
  explicit FieldParts(const TracedSection& section);

  /// Number of the field that fills a part; parts of open triangles only have none of
  /// their own and must not be asked for.
  std::size_t field(EdgeKey edge, std::size_t part) const;
  const std::vector<std::size_t>& labels() const noexcept { return labels_; }

 private:
  std::size_t part_id(EdgeKey edge, std::size_t part) const;
  std::size_t root(std::size_t part) const;
  void unite(std::size_t a, std::size_t b);
  void unite_inside(const TracedSection& section, std::size_t triangle);

  std::map<EdgeKey, std::size_t> first_part_;
  std::vector<std::size_t> parent_;
  std::vector<std::size_t> number_;  ///< of the field, by root
  std::vector<std::size_t> labels_;
};

}  // namespace gibbsteel::internal
