#include "section/section_tracer.hpp"

#include <algorithm>

#include "internal/parallel_for.hpp"
#include "section/follow_boundary.hpp"

namespace gibbsteel::internal {
namespace {

constexpr double kTolerance = 0.2;  ///< of a crossing
constexpr double kSmallest = 1.0;   ///< size of a triangle that is not halved
constexpr std::size_t kBatch = 16;  ///< lines between two calls of progress

struct Stopped {
  std::string why;
};

class Tracer {
 public:
  Tracer(const FieldOracle& oracle, const TraceOptions& options)
      : oracle_(oracle),
        options_(options),
        section_{
            TriangleMesh(options.width, options.height, options.columns, options.rows),
            {},
            {},
            0,
            {},
            {}} {}

  TracedSection run() {
    try {
      while (true) {
        scan_edges();
        auto to_halve = unresolved();
        if (to_halve.empty()) to_halve = follow();
        if (to_halve.empty()) break;
        for (const std::size_t t : to_halve)
          if (!section_.mesh.triangles()[t].halved) section_.mesh.halve(t);
      }
    } catch (const Stopped& stop) {
      section_.stopped = stop.why;
    }
    section_.triangles.resize(section_.mesh.triangles().size());
    return std::move(section_);
  }

 private:
  std::size_t label(const PhaseSet& set) {
    auto& all = section_.labels;
    const auto known = std::find(all.begin(), all.end(), set);
    if (known != all.end()) return static_cast<std::size_t>(known - all.begin());
    all.push_back(set);
    return all.size() - 1;
  }

  /// Runs tasks in batches; stops between them when asked to.
  template <class Task, class Use>
  void in_batches(std::size_t count, const Task& task, const Use& use) {
    for (std::size_t first = 0; first < count; first += kBatch) {
      const std::size_t many = std::min(kBatch, count - first);
      parallel_for(many, options_.threads, [&](std::size_t k) { task(first + k); });
      for (std::size_t k = 0; k < many; ++k) use(first + k);
      if (section_.soaks > options_.most_soaks)
        throw Stopped{"the limit of " + std::to_string(options_.most_soaks) +
                      " soaks was reached"};
      if (options_.progress && !options_.progress(section_.soaks))
        throw Stopped{"cancelled"};
    }
  }

  void scan_edges() {
    auto& mesh = section_.mesh;
    std::vector<EdgeKey> open;
    corner_labels_.resize(mesh.corners().size(), kNone);
    for (const auto& [key, edge] : mesh.edges()) {
      if (edge.crossings) {
        corner_label(key.first, edge.crossings->labels.front());
        corner_label(key.second, edge.crossings->labels.back());
      } else {
        open.push_back(key);
      }
    }
    std::vector<FieldsOnLine> found(open.size());
    const auto scan = [&](std::size_t k) {
      found[k] = oracle_.along(mesh.corners()[open[k].first],
                               mesh.corners()[open[k].second], kTolerance);
    };
    in_batches(open.size(), scan, [&](std::size_t k) { enter(open[k], found[k]); });
  }

  void enter(EdgeKey key, const FieldsOnLine& found) {
    Crossings crossings;
    for (const PhaseSet& set : found.sets) crossings.labels.push_back(label(set));
    crossings.at = found.at;
    set_ends(corner_label(key.first, crossings.labels.front()),
             corner_label(key.second, crossings.labels.back()), crossings);
    merge_narrow(section_.mesh.length(key), crossings);
    section_.mesh.edges().at(key).crossings = std::move(crossings);
    section_.soaks += found.soaks;
    if (section_.reason.empty()) section_.reason = found.reason;
  }

  /// The first edge of a corner decides.
  std::size_t corner_label(std::size_t corner, std::size_t proposed) {
    std::size_t& known = corner_labels_[corner];
    if (known == kNone) known = proposed;
    return known;
  }

  std::vector<std::size_t> alive() const {
    std::vector<std::size_t> ids;
    for (std::size_t t = 0; t < section_.mesh.triangles().size(); ++t)
      if (!section_.mesh.triangles()[t].halved) ids.push_back(t);
    return ids;
  }

  /// Joins what can be joined; the triangles that must be halved.
  std::vector<std::size_t> unresolved() {
    section_.triangles.resize(section_.mesh.triangles().size());
    std::vector<std::size_t> to_look_at = alive(), open;
    while (!to_look_at.empty()) {
      const std::size_t t = to_look_at.back();
      to_look_at.pop_back();
      if (section_.triangles[t].state != TriangleState::open) continue;
      const auto around = perimeter(section_.mesh, t);
      if (auto chords = join(around))
        section_.triangles[t] = {TriangleState::joined, false, std::move(*chords)};
      else if (const auto narrow = narrow_field(around))
        take_out(around[*narrow], around[*narrow + 1], to_look_at);
      else if (section_.mesh.size(t) <= kSmallest)
        section_.triangles[t].state = TriangleState::node;
      else
        open.push_back(t);
    }
    std::sort(open.begin(), open.end());
    open.erase(std::unique(open.begin(), open.end()), open.end());
    return open;
  }

  /// Two boundaries of an edge become one; both triangles are looked at again.
  void take_out(const PerimeterCrossing& in, const PerimeterCrossing& out,
                std::vector<std::size_t>& to_look_at) {
    MeshEdge& edge = section_.mesh.edges().at(in.edge);
    merge_at(std::min(in.index, out.index), *edge.crossings);
    for (const std::size_t t : edge.triangles) {
      if (t == kNone) continue;
      section_.triangles[t] = {};
      to_look_at.push_back(t);
    }
  }

  BoundaryPiece piece(const std::vector<PerimeterCrossing>& around,
                      const Chord& chord) const {
    const PerimeterCrossing& from = around[chord.from];
    return {from.point,
            around[chord.to].point,
            section_.labels[from.before],
            section_.labels[from.after],
            {options_.width, options_.height}};
  }

  /// The triangles in which a boundary is not what its ends let expect.
  std::vector<std::size_t> follow() {
    struct Work {
      std::size_t triangle, chord;
      BoundaryPiece piece;
    };
    std::vector<Work> work;
    for (const std::size_t t : alive()) {
      const TracedTriangle& triangle = section_.triangles[t];
      if (triangle.state != TriangleState::joined || triangle.followed) continue;
      const auto around = perimeter(section_.mesh, t);
      for (std::size_t c = 0; c < triangle.chords.size(); ++c)
        work.push_back({t, c, piece(around, triangle.chords[c])});
    }
    std::vector<FollowedBoundary> found(work.size());
    std::vector<std::size_t> failed;
    const auto use = [&](std::size_t k) {
      TracedTriangle& triangle = section_.triangles[work[k].triangle];
      section_.soaks += found[k].soaks;
      triangle.followed = true;
      if (found[k].inner)
        triangle.chords[work[k].chord].inner = *found[k].inner;
      else if (section_.mesh.size(work[k].triangle) > kSmallest)
        failed.push_back(work[k].triangle);
    };
    in_batches(
        work.size(),
        [&](std::size_t k) { found[k] = follow_boundary(oracle_, work[k].piece); },
        use);
    return failed;
  }

  const FieldOracle& oracle_;
  const TraceOptions& options_;
  TracedSection section_;
  std::vector<std::size_t> corner_labels_;
};

}  // namespace

TracedSection trace_section(const FieldOracle& oracle, const TraceOptions& options) {
  return Tracer(oracle, options).run();
}

}  // namespace gibbsteel::internal
