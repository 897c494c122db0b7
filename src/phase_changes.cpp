#include "gibbsteel/phase_changes.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "gibbsteel/errors.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/kind_names.hpp"
#include "internal/number_format.hpp"
#include "internal/phase_change_text.hpp"
#include "internal/transformation_limits.hpp"
#include "scan/phase_changes_of_scan.hpp"
#include "scan/uncertain_changes.hpp"

namespace gibbsteel {
namespace {

using internal::TemperatureScan;

/// A change within a bracket as narrow as the tolerance cannot move more than this
/// share of the atoms unless amounts jump.
constexpr double kJump = 0.1;  // [mole percent]

double mole_percent(const State& state, const std::string& kind) {
  double sum = 0.0;
  for (const Occurrence& o : state.occurrences)
    if (o.kind == kind) sum += o.mole_percent;
  return sum;
}

bool jumps(const PhaseChange& change) {
  for (const State* state : {&change.below, &change.above})
    for (const Occurrence& o : state->occurrences)
      if (std::abs(mole_percent(change.above, o.kind) -
                   mole_percent(change.below, o.kind)) > kJump)
        return true;
  return false;
}

PhaseChange change_of(const TemperatureScan& scan, const internal::LineEvent& event) {
  PhaseChange change;
  change.temperature = scan.temperature_of(event);
  change.below = scan.state(event.below);
  change.above = scan.state(event.above);
  change.bracket_width =
      change.above.temperature.in_kelvin() - change.below.temperature.in_kelvin();
  change.appears = event.appears;
  change.disappears = event.disappears;
  change.invariant =
      event.appears.size() + event.disappears.size() > 1 && jumps(change);
  change.text = internal::change_text(change, scan.problem.options.temperature_unit);
  return change;
}

/// An edge between two fields: where the lower one ends and the upper one begins.
struct Border {
  double end = 0.0, begin = 0.0;
  Edge edge = Edge::range;
};

std::vector<Border> borders_of(const TemperatureScan& scan) {
  std::vector<Border> borders;
  const auto& nodes = scan.scan.nodes;
  for (const auto& event : scan.scan.events) {
    const double s = std::midpoint(nodes[event.below].s, nodes[event.above].s);
    borders.push_back({s, s, Edge::change});
  }
  for (const auto& gap : scan.scan.gaps)
    borders.push_back({gap.from, gap.to, Edge::gap});
  std::sort(borders.begin(), borders.end(),
            [](const Border& a, const Border& b) { return a.end < b.end; });
  return borders;
}

/// The phases of the first usable node in [from, to], in the order of the file.
std::vector<std::string> phases_between(const TemperatureScan& scan, double from,
                                        double to) {
  for (const auto& node : scan.scan.nodes) {
    if (node.s < from || node.s > to || !node.usable()) continue;
    std::vector<std::string> phases;
    for (const std::string& kind : scan.problem.blank.kinds)
      phases.insert(phases.end(),
                    static_cast<std::size_t>(
                        std::count(node.kinds.begin(), node.kinds.end(), kind)),
                    kind);
    return phases;
  }
  return {};
}

std::vector<PhaseField> fields_of(const TemperatureScan& scan) {
  std::vector<PhaseField> fields;
  auto borders = borders_of(scan);
  borders.push_back({scan.scan.reached, scan.scan.reached, Edge::range});
  Border last{0.0, 0.0, Edge::range};
  for (const Border& border : borders) {
    auto phases = phases_between(scan, last.begin, border.end);
    // A gap at an end of the range leaves no field there.
    if (!phases.empty())
      fields.push_back({scan.at(last.begin), scan.at(border.end), last.edge,
                        border.edge, std::move(phases)});
    last = border;
  }
  return fields;
}

}  // namespace

PhaseChanges internal::changes_of(const TemperatureScan& scan) {
  PhaseChanges found;
  found.steel = scan.problem.blank.steel;
  found.range = scan.range;
  found.tolerance = scan.tolerance;
  found.temperature_unit = scan.problem.options.temperature_unit;
  for (const auto& event : scan.scan.events)
    found.changes.push_back(change_of(scan, event));
  found.fields = fields_of(scan);
  for (const auto& gap : scan.scan.gaps)
    found.gaps.push_back({scan.at(gap.from), scan.at(gap.to), gap.reason});
  found.low = scan.state(0);
  found.high = scan.state(scan.scan.nodes.size() - 1);
  found.soaks = scan.scan.nodes.size();
  found.stopped = scan.scan.stopped;
  find_limits(found);
  return found;
}

PhaseChanges phase_changes(const Steel& steel, const TemperatureRange& range,
                           const SoakOptions& soak, const SearchOptions& search) {
  const auto scan = internal::scan_temperatures(steel, range, soak, search);
  PhaseChanges found = internal::changes_of(scan);
  internal::add_uncertainties(scan, found);
  return found;
}

Dissolution dissolution_temperature(const Steel& steel, const std::string& kind,
                                    const TemperatureRange& range,
                                    const SoakOptions& soak,
                                    const SearchOptions& search) {
  const auto known = internal::kind_names(*steel.parameters());
  if (std::find(known.begin(), known.end(), kind) == known.end())
    throw InputError({internal::no_such_kind(known, kind, "kind")});
  return phase_changes(steel, range, soak, search).dissolution(kind);
}

std::vector<std::string> PhaseChanges::kinds() const {
  std::vector<std::string> present;
  for (const std::string& kind : low.kinds)
    if (std::any_of(fields.begin(), fields.end(), [&](const PhaseField& field) {
          return std::count(field.phases.begin(), field.phases.end(), kind) > 0;
        }))
      present.push_back(kind);
  return present;
}

std::vector<PhaseField> PhaseChanges::intervals(std::string_view kind) const {
  if (std::find(low.kinds.begin(), low.kinds.end(), kind) == low.kinds.end())
    throw InputError({internal::no_such_kind(low.kinds, kind, "kind")});
  std::vector<PhaseField> found;
  bool open = false;  // the last one goes on in the next field
  for (const PhaseField& field : fields) {
    const bool here =
        std::find(field.phases.begin(), field.phases.end(), kind) != field.phases.end();
    const bool joined = open && field.low_edge == Edge::change;
    if (here && joined) {
      found.back().high = field.high;
      found.back().high_edge = field.high_edge;
    } else if (here) {
      found.push_back(field);
      found.back().phases = {std::string(kind)};
    }
    open = here;
  }
  return found;
}

std::vector<Warning> PhaseChanges::warnings() const {
  std::vector<const State*> states{&low};
  for (const PhaseChange& change : changes) {
    states.push_back(&change.below);
    states.push_back(&change.above);
  }
  states.push_back(&high);
  return internal::distinct_warnings(states);
}

}  // namespace gibbsteel
