#include "gibbsteel/hardening_window.hpp"

#include <algorithm>
#include <cmath>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/melting.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/kind_names.hpp"
#include "internal/liquid_share.hpp"
#include "internal/melting_rule.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/soak_warnings.hpp"
#include "internal/window_spans.hpp"
#include "internal/window_text.hpp"
#include "scan/phase_changes_of_scan.hpp"
#include "scan/value_crossings.hpp"

namespace gibbsteel {
namespace {

using internal::shortest;
using internal::TemperatureScan;

void check(const WindowRules& rules, const std::vector<std::string>& kinds) {
  std::vector<Problem> problems;
  const auto require = [&](bool good, const char* name, double value,
                           const char* remedy) {
    if (!good)
      problems.push_back(
          {"gibbsteel.input.254", name, "is " + shortest(value), remedy});
  };
  if (rules.hardness)
    require(std::isfinite(rules.least_hardness), "least_hardness", rules.least_hardness,
            "give a number");
  if (rules.least_pinning_volume_percent) {
    const double least = *rules.least_pinning_volume_percent;
    require(least > 0.0 && least < 100.0, "least_pinning_volume_percent", least,
            "give a number above 0, below 100 [vol%]");
  }
  require(rules.solidus_margin >= 0.0 && std::isfinite(rules.solidus_margin),
          "solidus_margin", rules.solidus_margin, "give 0 or more [K]");
  if (!rules.pinning_kind.empty() &&
      std::find(kinds.begin(), kinds.end(), rules.pinning_kind) == kinds.end())
    problems.push_back(
        internal::no_such_kind(kinds, rules.pinning_kind, "pinning_kind"));
  if (!problems.empty()) throw InputError(std::move(problems));
}

bool is_seen(const SolidusBound& bound) {
  return bound.sense != SolidusSense::at_least;
}

/// Melting may begin here [C]: the lower end of the error bar where it was seen.
double least_solidus(const SolidusBound& bound) {
  return bound.celsius - (is_seen(bound) ? bound.uncertainty : 0.0);
}

/// What was seen to melt weighs more than "free of melt up to"; then the lower one.
const SolidusBound* bound_for(const ParameterSet& set, const NamedValues& analysis) {
  const SolidusBound* chosen = nullptr;
  for (const SolidusBound& bound : set.solidus_bounds) {
    if (!internal::resembles(bound, analysis)) continue;
    const bool better =
        !chosen || (is_seen(bound) != is_seen(*chosen)
                        ? is_seen(bound)
                        : least_solidus(bound) < least_solidus(*chosen));
    if (better) chosen = &bound;
  }
  return chosen;
}

class WindowSearch {
 public:
  WindowSearch(const Steel& steel, const WindowRules& rules,
               const TemperatureScan& scan, const SearchOptions& search)
      : steel_(steel), rules_(rules), scan_(scan), search_(search) {}

  HardeningWindow run() {
    window_.steel = steel_.name();
    window_.range = scan_.range;
    window_.analysis = steel_.analysis();
    window_.parameters = scan_.problem.blank.parameters;
    window_.by_family = rules_.hardness && rules_.hardness->by_family();
    add_rules();
    conclude();
    window_.text = internal::window_text(window_);
    return std::move(window_);
  }

 private:
  void add_rules() {
    const bool may_melt = internal::may_melt(scan_.problem.blank);
    PhaseChanges changes;
    if (rules_.no_ferrite || may_melt) {
      changes = internal::changes_of(scan_);
      note_unknown(changes.complete());
    }
    if (rules_.no_ferrite)
      add(WindowRule::ferrite, "no ferrite",
          internal::without_kind(changes, "ferrite", WindowRule::ferrite));
    if (rules_.hardness)
      add_least(WindowRule::hardness, *rules_.hardness, rules_.least_hardness);
    if (rules_.least_pinning_volume_percent)
      add_least(WindowRule::pinning,
                rules_.pinning_kind.empty()
                    ? quantities::carbide_volume_percent()
                    : quantities::volume_percent(rules_.pinning_kind),
                *rules_.least_pinning_volume_percent);
    add_solidus();
    if (may_melt) add_melting(changes);
    if (!may_melt && !known_solidus_)
      window_.remarks.push_back(
          "No start of melting is known of a steel like this: no rule keeps the "
          "ceiling away from it.");
  }

  void add_least(WindowRule rule, const Quantity& quantity, double least) {
    const auto found = internal::find_crossings(scan_, quantity, least, search_);
    note_unknown(found.complete());
    add(rule,
        quantity.name() + " at least " + shortest(least) +
            (quantity.unit().empty() ? "" : " " + quantity.unit()),
        internal::at_least(found, rule));
  }

  void add_solidus() {
    const SolidusBound* bound =
        bound_for(scan_.problem.system.parameters(), steel_.analysis().modelled);
    known_solidus_ = bound != nullptr;
    if (!bound) return;
    const Temperature most =
        Temperature::celsius(least_solidus(*bound) - rules_.solidus_margin);
    const TemperatureRange& range = scan_.range;
    internal::WindowSpans spans;
    if (range.low < most)
      spans.push_back({{range.low, std::min(range.high, most)},
                       WindowRule::range,
                       most < range.high ? WindowRule::solidus : WindowRule::range});
    add(WindowRule::solidus,
        internal::fixed(rules_.solidus_margin, 0) + " K below " +
            internal::solidus_text(*bound),
        std::move(spans));
  }

  /// Where nothing is known of a steel like this, from the lower end of the error bar.
  void add_melting(const PhaseChanges& changes) {
    const double error = known_solidus_ ? 0.0 : kSolidusError;
    const auto rule = internal::below_melting(
        changes, rules_.solidus_margin, error, [&](const TemperatureRange& beyond) {
          return internal::changes_of(internal::scan_temperatures(
              steel_, beyond, scan_.problem.options, search_));
        });
    add(WindowRule::melting, rule.text, rule.spans);
  }

  void add(WindowRule rule, std::string text, internal::WindowSpans spans) {
    window_.spans =
        window_.rules.empty() ? spans : internal::intersection(window_.spans, spans);
    window_.rules.push_back({rule, std::move(text), std::move(spans)});
  }

  void note_unknown(bool complete) { unknown_ = unknown_ || !complete; }

  void conclude() {
    if (window_.rules.empty()) window_.spans = {{scan_.range, {}, {}}};
    if (unknown_)
      window_.remarks.push_back("Part of the range is not known; it is left out.");
    if (window_.spans.empty()) {
      window_.status = unknown_ ? WindowStatus::not_known : WindowStatus::no_window;
      return;
    }
    const WindowSpan& lowest = window_.spans.front();
    window_.status = WindowStatus::found;
    window_.floor = lowest.range.low;
    window_.ceiling = lowest.range.high;
    window_.floor_rule = lowest.floor;
    window_.ceiling_rule = lowest.ceiling;
    const auto soak = [&](Temperature t) {
      return scan_.problem.state_of(scan_.problem.solve(t));
    };
    window_.at_floor = soak(lowest.range.low);
    window_.at_ceiling = soak(lowest.range.high);
  }

  const Steel& steel_;
  const WindowRules& rules_;
  const TemperatureScan& scan_;
  const SearchOptions& search_;
  HardeningWindow window_;
  bool unknown_ = false, known_solidus_ = false;
};

}  // namespace

HardeningWindow hardening_window(const Steel& steel, const WindowRules& rules,
                                 const TemperatureRange& range, const SoakOptions& soak,
                                 const SearchOptions& search) {
  check(rules, internal::kind_names(*steel.parameters()));
  if (rules.hardness)
    internal::require_known({&*rules.hardness, 1}, *steel.parameters());
  const auto scan = internal::scan_temperatures(steel, range, soak, search);
  return WindowSearch(steel, rules, scan, search).run();
}

std::vector<Warning> HardeningWindow::warnings() const {
  std::vector<Warning> all = internal::distinct_warnings({&at_floor, &at_ceiling});
  if (by_family) internal::add_distinct(internal::near_border(analysis.modelled), all);
  return all;
}

}  // namespace gibbsteel
