// Topology and accuracy of traced sections on planes whose fields are known in closed
// form: no thermodynamics, so the right answer is geometry.

#include <doctest/doctest.h>

#include <cmath>
#include <functional>

#include "section/label_place.hpp"
#include "section/outlines.hpp"
#include "section/section_lines.hpp"

using namespace gibbsteel::internal;

namespace {

/// Fields from a function of the point; changes by stepping and bisection.
class DrawnPlane : public FieldOracle {
 public:
  using Field = std::function<PhaseSet(PlanePoint)>;
  explicit DrawnPlane(Field field) : field_(std::move(field)) {}

  FieldsOnLine along(PlanePoint from, PlanePoint to, double tolerance) const override {
    const double far = length(to - from);
    const int steps = std::max(1, static_cast<int>(far / 2.0));
    FieldsOnLine fields;
    fields.sets.push_back(field_(from));
    for (int k = 0; k < steps; ++k)
      explain(from, to, double(k) / steps, double(k + 1) / steps, tolerance / far,
              fields);
    fields.soaks = 1;
    return fields;
  }

 private:
  void explain(PlanePoint from, PlanePoint to, double a, double b, double tolerance,
               FieldsOnLine& fields) const {
    const auto set = field_(between(from, to, b));
    if (set == fields.sets.back()) return;
    if (b - a < tolerance) {
      fields.at.push_back(0.5 * (a + b));
      fields.sets.push_back(set);
      return;
    }
    explain(from, to, a, 0.5 * (a + b), tolerance, fields);
    explain(from, to, 0.5 * (a + b), b, tolerance, fields);
  }
  Field field_;
};

struct Drawn {
  TracedSection section;
  SectionLines lines;
  std::vector<FieldOutline> outlines;

  bool is_shown(std::size_t field) const { return is_resolved(outlines[field]); }
  std::size_t shown_fields() const {
    std::size_t count = 0;
    for (std::size_t f = 0; f < outlines.size(); ++f) count += is_shown(f) ? 1u : 0u;
    return count;
  }
  std::size_t shown_boundaries() const {
    std::size_t count = 0;
    for (const auto& line : lines.boundaries)
      count += is_shown(line.left) && is_shown(line.right) ? 1u : 0u;
    return count;
  }
  std::size_t fields(const PhaseSet& set) const {
    std::size_t count = 0;
    for (std::size_t f = 0; f < outlines.size(); ++f)
      count += is_shown(f) && section.labels[lines.field_labels[f]] == set ? 1u : 0u;
    return count;
  }
  double area(const PhaseSet& set) const {
    double sum = 0.0;
    for (std::size_t f = 0; f < outlines.size(); ++f)
      if (section.labels[lines.field_labels[f]] == set) sum += outlines[f].area;
    return sum;
  }
};

constexpr double kWidth = 1000.0, kHeight = 700.0;

Drawn drawn(DrawnPlane::Field field, std::size_t components = 2,
            std::size_t most = 1000000) {
  const DrawnPlane plane(std::move(field));
  TraceOptions options;
  options.width = kWidth;
  options.height = kHeight;
  options.columns = options.rows = 7;
  options.most_soaks = most;
  Drawn result{trace_section(plane, options), {}, {}};
  result.lines = section_lines(result.section, components);
  result.outlines = field_outlines(result.lines);
  return result;
}

const PhaseSet kA{"A"}, kB{"B"}, kC{"C"}, kAB{"A", "B"}, kBC{"B", "C"};

}  // namespace

TEST_CASE("a plane of one field has no boundary and one outline, the frame") {
  const auto map = drawn([](PlanePoint) { return kA; });
  CHECK(map.section.stopped.empty());
  CHECK(map.lines.boundaries.empty());
  REQUIRE(map.outlines.size() == 1);
  CHECK(map.outlines[0].area == doctest::Approx(kWidth * kHeight));
  const auto place = label_place(map.outlines[0], {kWidth, kHeight});
  CHECK(place.clearance == doctest::Approx(0.5).epsilon(0.02));
}

TEST_CASE("a curved boundary is followed to half a unit, with few points") {
  const auto height = [](double x) { return 100.0 + x * x / 2000.0; };
  const auto map = drawn([&](PlanePoint p) { return p.y > height(p.x) ? kA : kB; });
  REQUIRE(map.lines.boundaries.size() == 1);
  const auto& points = map.lines.boundaries[0].points;
  CHECK(points.size() < 120);
  for (std::size_t i = 0; i < points.size(); ++i) {
    CHECK(std::abs(points[i].y - height(points[i].x)) < 0.5);
    if (i == 0) continue;
    const PlanePoint middle = between(points[i - 1], points[i], 0.5);
    CHECK(std::abs(middle.y - height(middle.x)) < 1.0);
  }
  const double below = 100.0 * kWidth + kWidth * kWidth * kWidth / 6000.0;
  CHECK(map.area(kB) == doctest::Approx(below).epsilon(1e-3));
}

TEST_CASE("three fields meet in one node, within a unit") {
  const PlanePoint node{431.3, 288.9};
  const auto map = drawn([&](PlanePoint p) {
    if (p.y < node.y) return kA;
    return p.x < node.x ? kB : kC;
  });
  REQUIRE(map.lines.meetings.size() == 1);
  CHECK(length(map.lines.meetings[0].at - node) < 1.0);
  CHECK(map.lines.meetings[0].fields.size() == 3);
  CHECK(map.lines.boundaries.size() == 3);
  CHECK(map.lines.field_labels.size() == 3);
  CHECK(map.area(kA) == doctest::Approx(node.y * kWidth).epsilon(1e-3));
}

TEST_CASE("a eutectoid: four fields meet, two boundaries are horizontal") {
  const PlanePoint node{380.2, 220.7};
  const auto map = drawn([&](PlanePoint p) {
    if (p.y < node.y) return kAB;
    if (p.y - node.y < 1.2 * (node.x - p.x)) return PhaseSet{"A", "G"};
    if (p.y - node.y < 0.9 * (p.x - node.x)) return PhaseSet{"B", "G"};
    return PhaseSet{"G"};
  });
  CHECK(map.fields(kAB) == 1);
  CHECK(map.fields({"A", "G"}) == 1);
  CHECK(map.fields({"B", "G"}) == 1);
  CHECK(map.fields({"G"}) == 1);
  CHECK(map.lines.boundaries.size() == 4);
  for (const auto& line : map.lines.boundaries)
    for (const std::size_t end : {std::size_t{0}, line.points.size() - 1})
      CHECK((length(line.points[end] - node) < 2.0 || line.points[end].x < 1e-9 ||
             line.points[end].x > kWidth - 1e-9 ||
             line.points[end].y > kHeight - 1e-9));
}

TEST_CASE("two boundaries that cross: four fields, one node") {
  const PlanePoint node{512.7, 401.1};
  for (const double rise : {-0.57, 0.19, 0.28}) {
    CAPTURE(rise);
    const auto field = [&](PlanePoint p) {
      PhaseSet set;
      if (p.y > node.y + 0.31 * (p.x - node.x)) set.push_back("A");
      if (p.y > node.y + rise * (p.x - node.x)) set.push_back("B");
      set.push_back("M");
      return set;
    };
    // Three elements: three phases do not make a reaction, so the narrow ends of the
    // fields between the two boundaries belong to the node.
    const auto map = drawn(field, 3);
    CHECK(map.shown_fields() == 4);
    CHECK(map.shown_boundaries() == 4);
    REQUIRE(map.lines.meetings.size() == 1);
    CHECK(map.lines.meetings[0].fields.size() == 4);
    CHECK(length(map.lines.meetings[0].at - node) < 1.0 / std::abs(0.31 - rise));
  }
}

TEST_CASE("an island has one closed boundary and is a hole of the field around it") {
  const PlanePoint middle{470.0, 330.0};
  const auto map =
      drawn([&](PlanePoint p) { return length(p - middle) < 140.0 ? kB : kA; });
  REQUIRE(map.lines.boundaries.size() == 1);
  CHECK(map.lines.boundaries[0].from == map.lines.boundaries[0].to);
  CHECK(map.area(kB) == doctest::Approx(M_PI * 140.0 * 140.0).epsilon(2e-3));
  CHECK(map.area(kA) + map.area(kB) == doctest::Approx(kWidth * kHeight).epsilon(1e-9));
  for (const auto& outline : map.outlines) {
    const auto place = label_place(outline, {kWidth, kHeight});
    CHECK(place.clearance > 0.1);
    CHECK(is_inside(place.at, outline));
  }
}

TEST_CASE(
    "a field narrower than the tolerance is one boundary between its neighbours") {
  const auto map = drawn([](PlanePoint p) {
    const double above = p.y - 300.3 - 0.1 * p.x;
    return above < 0.0 ? kA : above < 0.3 ? kB : kC;
  });
  CHECK(map.section.stopped.empty());
  CHECK(map.fields(kA) == 1);
  CHECK(map.fields(kC) == 1);
  CHECK(map.fields(kB) == 0);
}

TEST_CASE("a wedge that closes inside the plane keeps its tip") {
  // Fields A above, C below, and B between them to the right of x = 300.
  const auto map = drawn([](PlanePoint p) {
    const double half = p.x > 300.0 ? 0.2 * (p.x - 300.0) : 0.0;
    if (p.y > 350.7 + half) return kA;
    return p.y < 350.7 - half ? kC : kB;
  });
  CHECK(map.fields(kB) == 1);
  REQUIRE(map.lines.meetings.size() >= 1);
  double nearest = 1e9;
  for (const auto& m : map.lines.meetings)
    nearest = std::min(nearest, length(m.at - PlanePoint{300.0, 350.7}));
  CHECK(nearest < 4.0);  // the wedge is a unit wide 2.5 units from its tip
}

TEST_CASE("what is not known is a field of its own") {
  const auto map = drawn([](PlanePoint p) {
    return length(p - PlanePoint{800.0, 200.0}) < 120.0 ? PhaseSet{} : kA;
  });
  CHECK(map.fields({}) == 1);
  CHECK(map.area({}) == doctest::Approx(M_PI * 120.0 * 120.0).epsilon(2e-3));
}

TEST_CASE("a tracing that stops leaves open triangles and says why") {
  const auto map =
      drawn([](PlanePoint p) { return p.y > 300.0 + 0.1 * p.x ? kA : kB; }, 2, 60);
  CHECK(map.section.stopped == "the limit of 60 soaks was reached");
  double open = 0.0, known = 0.0;
  for (const auto& loop : open_outlines(map.section)) {
    FieldOutline outline;
    outline.outer = loop;
    for (std::size_t i = 0; i < loop.size(); ++i)
      open += 0.5 * cross(loop[i], loop[(i + 1) % loop.size()]);
  }
  for (const auto& outline : map.outlines) known += outline.area;
  CHECK(open > 0.0);
  CHECK(open + known == doctest::Approx(kWidth * kHeight).epsilon(1e-6));
}
