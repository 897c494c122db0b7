#include "scan/uncertain_changes.hpp"

#include <algorithm>
#include <limits>

#include "internal/file_scatter.hpp"
#include "internal/phase_change_text.hpp"

namespace gibbsteel::internal {
namespace {

/// Where the phase is absent its driving force is 0 at the temperature of the change.
double uncertainty_of(const TemperatureScan& scan, const LineEvent& event,
                      const FileScatter& scatter) {
  const bool appears = !event.appears.empty();
  const std::size_t node = appears ? event.below : event.above;
  const std::string& kind = (appears ? event.appears : event.disappears).front();
  const State there = scan.state(appears ? event.above : event.below);
  // Of a phase whose energies are all taken as exact next to nothing is known.
  if (!scatter.acts_on(kind, there)) return Occurrence::kUnknown;
  const auto slopes = scatter.slopes(scan.problem, scan.scan.nodes[node].result,
                                     scan.state(node), quantities::driving_force(kind));
  return scatter.of_temperature(slopes, scatter.none());
}

/// How far the fields beside a change reach [K]: farther away slopes are others.
double room_beside(const PhaseChanges& found, Temperature t) {
  double room = std::numeric_limits<double>::infinity();
  for (const PhaseField& field : found.fields)
    if (field.low == t || field.high == t)
      room = std::min(room, field.high.in_kelvin() - field.low.in_kelvin());
  return room;
}

}  // namespace

void add_uncertainties(const TemperatureScan& scan, PhaseChanges& found) {
  const FileScatter scatter(scan.problem.system.parameters());
  if (scatter.empty()) return;
  for (std::size_t i = 0; i < found.changes.size(); ++i) {
    const LineEvent& event = scan.scan.events[i];
    if (event.appears.size() + event.disappears.size() != 1) continue;
    PhaseChange& change = found.changes[i];
    const double first_order = uncertainty_of(scan, event, scatter);  // may be NaN
    change.uncertainty_at_least =
        std::min(first_order, room_beside(found, change.temperature));
    change.text = change_text(change, found.temperature_unit);
  }
}

}  // namespace gibbsteel::internal
