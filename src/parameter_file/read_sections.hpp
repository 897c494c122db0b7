#pragma once
/// Reads the sections of a file other than the phases.

#include <string>

#include "draft.hpp"
#include "field_reader.hpp"
#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::parameter_file {

struct SectionReader {
  const FieldReader& top;
  const std::string& file;
  bool layer;  // sections may be left out
  const FileLimits& limits;
  Problems& problems;

  void check_units() const;
  void read_validity(Draft& draft) const;
  void read_sources(Draft& draft) const;
  void read_elements(Draft& draft) const;
  void read_curves(Draft& draft) const;
  void read_correlations(Draft& draft) const;
  void read_solidus_bounds(Draft& draft) const;

 private:
  Need need() const { return layer ? Need::optional : Need::required; }
  /// The node of a section that is an object with entries; tells in `sound` whether
  /// names of that section can be relied on.
  const JsonNode* section(std::string_view key, std::size_t most, bool& sound) const;
  DraftCurve read_curve(const JsonNode& node, const std::string& place) const;
  Placed<Correlation> read_correlation(const JsonNode& node,
                                       const std::string& place) const;
  Placed<SolidusBound> read_bound(const JsonNode& node, const std::string& place) const;
};

}  // namespace gibbsteel::parameter_file
