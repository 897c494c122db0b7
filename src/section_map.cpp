#include "gibbsteel/section_map.hpp"

#include <algorithm>
#include <iterator>

#include "internal/error_codes.hpp"
#include "internal/missing_carbon.hpp"
#include "internal/number_format.hpp"
#include "internal/temperature_text.hpp"
#include "section/label_place.hpp"
#include "section/line_thinning.hpp"
#include "section/section_conditions.hpp"
#include "section/section_text.hpp"

namespace gibbsteel {
namespace {

using internal::PhaseSet;
using internal::PlanePoint;
using Kinds = std::vector<std::string>;

constexpr double kShortest = 10.0;  ///< [tolerances] beside fields not shown
constexpr double kThinning = 0.3;   ///< what leaving out points may cost, in tolerances

Kinds only_in(Kinds a, Kinds b) {
  std::sort(a.begin(), a.end());
  std::sort(b.begin(), b.end());
  Kinds rest;
  std::set_difference(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(rest));
  return rest;
}

/// Puts a traced plane into words and the units of the axes.
class MapMaker {
 public:
  MapMaker(const internal::SectionRequest& request, const internal::SoakPlane& plane,
           const internal::TracedSection& traced)
      : request_(request),
        plane_(plane),
        traced_(traced),
        lines_(internal::section_lines(traced, components())) {
    for (auto& line : lines_.boundaries)
      line.points = internal::thinned(line.points, kThinning);
    outlines_ = internal::field_outlines(lines_);
  }

  void fill(SectionMap& map) const {
    map.soaks = traced_.soaks;
    map.stopped = traced_.stopped;
    for (std::size_t f = 0; f < outlines_.size(); ++f)
      if (set_of(f).empty())
        map.gaps.push_back({in_units(outlines_[f].outer), traced_.reason});
      else if (is_shown(f))
        add_field(f, map);
    std::stable_sort(map.fields.begin(), map.fields.end(),
                     [](const SectionField& a, const SectionField& b) {
                       return a.area_share > b.area_share;
                     });
    for (const auto& line : lines_.boundaries)
      if (is_shown(line)) add_boundary(line, map);
    for (const auto& meeting : lines_.meetings) add_node(meeting, map);
    for (const auto& loop : internal::open_outlines(traced_))
      map.gaps.push_back({in_units(loop), "not searched: " + traced_.stopped});
  }

 private:
  const PhaseSet& set_of(std::size_t field) const {
    return traced_.labels[lines_.field_labels[field]];
  }
  bool is_shown(std::size_t field) const {
    return internal::is_resolved(outlines_[field]);
  }
  /// A short line beside a field within the accuracy is part of a node.
  bool is_shown(const internal::SectionLine& line) const {
    return (is_shown(line.left) && is_shown(line.right)) ||
           (line.from != line.to && internal::length_of(line) > kShortest);
  }

  std::size_t components() const { return plane_.problem().system.elements().size(); }

  SectionPoint in_units(PlanePoint p) const {
    const double y_low = request_.y ? request_.y->low : request_.low.in_celsius();
    return {request_.x.low + p.x * request_.x_tolerance(),
            y_low + p.y * request_.y_tolerance()};
  }
  std::vector<SectionPoint> in_units(const std::vector<PlanePoint>& points) const {
    std::vector<SectionPoint> converted;
    for (const PlanePoint p : points) converted.push_back(in_units(p));
    return converted;
  }

  /// In the order of the parameter file.
  Kinds ordered(const PhaseSet& set) const {
    Kinds kinds;
    for (const std::string& kind : plane_.problem().blank.kinds)
      kinds.insert(kinds.end(),
                   static_cast<std::size_t>(std::count(set.begin(), set.end(), kind)),
                   kind);
    return kinds;
  }

  void add_field(std::size_t f, SectionMap& map) const {
    const PlanePoint extent = request_.extent();
    const auto place = internal::label_place(outlines_[f], extent);
    SectionField field;
    field.phases = ordered(set_of(f));
    field.label = internal::field_label(field.phases);
    field.label_point = in_units(place.at);
    field.label_room = place.clearance;
    field.area_share = outlines_[f].area / (extent.x * extent.y);
    field.outline = in_units(outlines_[f].outer);
    for (const auto& hole : outlines_[f].holes) field.holes.push_back(in_units(hole));
    map.fields.push_back(std::move(field));
  }

  void add_boundary(const internal::SectionLine& line, SectionMap& map) const {
    SectionBoundary boundary;
    boundary.left = ordered(set_of(line.left));
    boundary.right = ordered(set_of(line.right));
    boundary.of_gap = boundary.left.empty() || boundary.right.empty();
    if (!boundary.of_gap) {
      boundary.left_only = only_in(boundary.left, boundary.right);
      boundary.right_only = only_in(boundary.right, boundary.left);
    }
    boundary.invariant =
        !boundary.of_gap &&
        internal::is_reaction(set_of(line.left), set_of(line.right), components());
    boundary.closed = line.from == line.to;
    boundary.points = in_units(line.points);
    map.boundaries.push_back(std::move(boundary));
  }

  void add_node(const internal::SectionMeeting& meeting, SectionMap& map) const {
    SectionNode node{in_units(meeting.at), {}};
    for (const std::size_t field : meeting.fields)
      if (is_shown(field))
        node.fields.push_back(internal::field_label(ordered(set_of(field))));
    std::sort(node.fields.begin(), node.fields.end());
    node.fields.erase(std::unique(node.fields.begin(), node.fields.end()),
                      node.fields.end());
    if (node.fields.size() > 2) map.nodes.push_back(std::move(node));
  }

  const internal::SectionRequest& request_;
  const internal::SoakPlane& plane_;
  const internal::TracedSection& traced_;
  internal::SectionLines lines_;
  std::vector<internal::FieldOutline> outlines_;
};

/// The map itself shows it.
bool tells_of_phases(const Warning& warning) {
  return warning.code == codes::kMatrixNotAustenite ||
         warning.code == codes::kPartlyMolten || warning.code == codes::kNotUnique ||
         warning.code == codes::kNotUsable;
}

/// What soaks at the corners and in the middle warn of, each code once.
std::vector<Warning> warnings_of(const internal::SectionRequest& request,
                                 const SoakOptions& soak) {
  std::vector<Warning> all;
  const PlanePoint extent = request.extent();
  for (const auto& [x, y] : {std::pair{0.5, 0.5}, {1.0, 1.0}, {0.0, 1.0}, {1.0, 0.0}}) {
    const PlanePoint at{x * extent.x, y * extent.y};
    const Steel steel = request.steel_at(at);
    const Temperature t = request.temperature_at(at);
    const std::string where = "at " + steel.analysis().brief() + ", " +
                              internal::degrees(t, soak.temperature_unit) + ": ";
    for (const Warning& warning : steel.soak(t, soak).warnings) {
      const auto same = [&](const Warning& w) { return w.code == warning.code; };
      if (!tells_of_phases(warning) && std::none_of(all.begin(), all.end(), same))
        all.push_back({warning.code, where + warning.text});
    }
  }
  internal::forget_swept_carbon(
      {request.x.element, request.y ? request.y->element : std::string()}, all);
  return all;
}

SectionMap make_map(const internal::SectionRequest& request, const SoakOptions& soak) {
  internal::check(request);
  const internal::SoakPlane plane = internal::soak_plane(request, soak);
  SectionMap map;
  map.steel = request.steel.name();
  map.analysis = request.steel.analysis();
  map.x = {request.x.element, request.x.low, request.x.high};
  if (request.y) {
    map.y = {request.y->element, request.y->low, request.y->high};
    map.temperature = request.low;
  } else {
    map.y = {"", request.low.in_celsius(), request.high.in_celsius()};
  }
  map.x_tolerance = request.x_tolerance();
  map.y_tolerance = request.y_tolerance();
  map.temperature_unit = soak.temperature_unit;
  map.parameters = plane.problem().blank.parameters;
  map.parameters_hash = plane.problem().blank.parameters_hash;
  const SectionOptions& options = request.options;
  const PlanePoint extent = request.extent();
  const auto traced = internal::trace_section(
      plane, {extent.x, extent.y, options.columns, options.rows, options.most_soaks,
              options.threads, options.progress});
  MapMaker(request, plane, traced).fill(map);
  map.warnings = warnings_of(request, soak);
  if (!map.complete())
    map.warnings.push_back({std::string(codes::kMapNotComplete),
                            map.stopped.empty()
                                ? "soaks were not usable: see the gaps"
                                : "the search stopped: " + map.stopped});
  return map;
}

}  // namespace

std::vector<Problem> SectionOptions::problems() const {
  std::vector<Problem> all;
  const auto need = [&](bool fine, const std::string& name, double value,
                        const std::string& remedy) {
    if (!fine)
      all.push_back({"gibbsteel.input.282", "options." + name,
                     "is " + internal::shortest(value), remedy});
  };
  need(temperature_tolerance >= internal::kLeastTemperatureTolerance &&
           temperature_tolerance <= 50.0,
       "temperature_tolerance", temperature_tolerance, "give 0.001 to 50 K");
  need(
      percent_tolerance >= internal::kLeastPercentTolerance && percent_tolerance <= 5.0,
      "percent_tolerance", percent_tolerance, "give 0.00001 to 5 wt%");
  need(columns >= 2 && columns <= 200, "columns", static_cast<double>(columns),
       "give 2 to 200");
  need(rows >= 2 && rows <= 200, "rows", static_cast<double>(rows), "give 2 to 200");
  need(most_soaks >= 100, "most_soaks", static_cast<double>(most_soaks),
       "give 100 or more");
  return all;
}

std::size_t SectionMap::points() const noexcept {
  std::size_t sum = 0;
  for (const SectionBoundary& boundary : boundaries) sum += boundary.points.size();
  return sum;
}

const SectionField* SectionMap::field_at(SectionPoint at) const {
  const auto loop = [](const std::vector<SectionPoint>& points) {
    internal::PlaneLoop converted;
    for (const SectionPoint& p : points) converted.push_back({p.x, p.y});
    return converted;
  };
  for (const SectionField& field : fields) {
    internal::FieldOutline outline{loop(field.outline), {}, 0.0};
    for (const auto& hole : field.holes) outline.holes.push_back(loop(hole));
    if (internal::is_inside({at.x, at.y}, outline)) return &field;
  }
  return nullptr;
}

SectionMap section_map(const Steel& steel, const SweptElement& x,
                       const TemperatureRange& y, const SoakOptions& soak,
                       const SectionOptions& options) {
  return make_map({steel, x, std::nullopt, y.low, y.high, options}, soak);
}

SectionMap section_map(const Steel& steel, const SweptElement& x, const SweptElement& y,
                       Temperature t, const SoakOptions& soak,
                       const SectionOptions& options) {
  return make_map({steel, x, y, t, t, options}, soak);
}

}  // namespace gibbsteel
