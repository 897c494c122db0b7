#include "gibbsteel/hardening_window.hpp"

#include <algorithm>

#include "gibbsteel/melting.hpp"
#include "internal/distinct_warnings.hpp"
#include "internal/family_borders.hpp"
#include "internal/kind_names.hpp"
#include "internal/left_out.hpp"
#include "internal/liquid_share.hpp"
#include "internal/melting_rule.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "internal/quantity_warnings.hpp"
#include "internal/solidus_bounds.hpp"
#include "internal/window_remarks.hpp"
#include "internal/window_rules.hpp"
#include "internal/window_spans.hpp"
#include "internal/window_text.hpp"
#include "scan/phase_changes_of_scan.hpp"
#include "scan/value_crossings.hpp"

namespace gibbsteel {
namespace {

using internal::shortest;
using internal::TemperatureScan;

const SolidusBound* bound_for(const ParameterSet& set, const NamedValues& analysis) {
  const SolidusBound* chosen = nullptr;
  for (const SolidusBound* bound : internal::resembling(set.solidus_bounds, analysis))
    if (!chosen || internal::weighs_more(*bound, *chosen, analysis)) chosen = bound;
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
    window_.at_floor = window_.at_ceiling = scan_.problem.blank;
    if (internal::has_hardness_rule(rules_))
      window_.by_family = internal::hardness_of(rules_).by_family();
    window_.temperature_unit = scan_.problem.options.temperature_unit;
    add_rules();
    conclude();
    window_.text = internal::window_text(window_);
    return std::move(window_);
  }

 private:
  void add_rules() {
    changes_ = internal::changes_of(scan_);
    stopped_ = changes_.stopped;
    reached_ = changes_.high.temperature;
    if (rules_.no_ferrite)
      add(WindowRule::ferrite, "no ferrite",
          internal::without_kind(changes_, "ferrite", WindowRule::ferrite),
          changes_.gaps);
    if (internal::has_hardness_rule(rules_))
      add_least(WindowRule::hardness, internal::hardness_of(rules_),
                *rules_.least_hardness);
    if (rules_.least_pinning_volume_percent)
      add_least(WindowRule::pinning, internal::pinning_of(rules_),
                *rules_.least_pinning_volume_percent);
    add_solidus();
    if (may_melt_) add_melting();
    add_left_out();
  }

  void add_least(WindowRule rule, const Quantity& quantity, double least) {
    auto found = internal::find_crossings(scan_, quantity, least, search_);
    internal::count_as_gaps(found.no_value, found.gaps);
    // Where there is no austenite, nothing hardens: the rule is not kept there.
    const auto soft =
        rule == WindowRule::hardness
            ? internal::take_gaps_without(changes_, "austenite", found.gaps)
            : std::vector<PhaseGap>{};
    auto spans = internal::at_least(found, rule);
    for (const PhaseGap& gap : soft) spans = internal::less(spans, gap, rule);
    note_stop(found);
    add(rule,
        quantity.name() + " at least " + shortest(least) +
            (quantity.unit().empty() ? "" : " " + quantity.unit()),
        known_part(std::move(spans)), found.gaps);
  }

  /// Such a search goes upwards; what it found is sure.
  void note_stop(const TemperatureSearch& found) {
    if (found.stopped.empty()) return;
    stopped_ = found.stopped;
    reached_ = std::min(reached_, found.crossings.empty()
                                      ? scan_.range.low
                                      : found.crossings.back().temperature);
  }

  internal::WindowSpans known_part(internal::WindowSpans spans) const {
    if (stopped_.empty()) return spans;
    return internal::less(spans, {reached_, scan_.range.high, stopped_},
                          WindowRule::unknown);
  }

  void add_solidus() {
    const NamedValues& steel = steel_.analysis().modelled;
    const SolidusBound* bound = bound_for(scan_.problem.system.parameters(), steel);
    known_solidus_ = bound != nullptr;
    if (!bound) return;
    const double margin = internal::is_seen(*bound) ? rules_.solidus_margin : 0.0;
    const Temperature most =
        Temperature::celsius(internal::least_solidus(*bound, steel) - margin);
    const TemperatureRange& range = scan_.range;
    internal::WindowSpans spans;
    if (range.low < most)
      spans.push_back({{range.low, std::min(range.high, most)},
                       WindowRule::range,
                       most < range.high ? WindowRule::solidus : WindowRule::range});
    add(WindowRule::solidus,
        internal::solidus_text(*bound, margin,
                               internal::sooner_by_carbon(*bound, steel),
                               window_.temperature_unit),
        std::move(spans));
  }

  /// Where nothing is known of a steel like this, from the lower end of the error bar.
  void add_melting() {
    const double error = known_solidus_ ? 0.0 : kSolidusError;
    const auto rule = internal::below_melting(
        changes_, rules_.solidus_margin, error, [&](const TemperatureRange& beyond) {
          return internal::changes_of(internal::scan_temperatures(
              steel_, beyond, scan_.problem.options, search_));
        });
    add(WindowRule::melting, rule.text, rule.spans, changes_.gaps);
  }

  void add_left_out() {
    const auto melt =
        internal::possible_melt(window_.analysis, window_.temperature_unit);
    const TemperatureRange& range = scan_.range;
    if (!melt || melt->from >= range.high) return;
    internal::WindowSpans spans;
    if (range.low < melt->from)
      spans.push_back(
          {{range.low, melt->from}, WindowRule::range, WindowRule::left_out});
    add(WindowRule::left_out, melt->text, std::move(spans),
        {{std::max(range.low, melt->from), range.high, melt->text}});
  }

  /// @param gaps  where it is not known whether the rule is kept
  void add(WindowRule rule, std::string text, internal::WindowSpans spans,
           std::vector<PhaseGap> gaps = {}) {
    window_.spans =
        window_.rules.empty() ? spans : internal::intersection(window_.spans, spans);
    window_.rules.push_back({rule, std::move(text), std::move(spans)});
    gaps_.push_back(std::move(gaps));
  }

  /// No rule is certain to be broken all over the gap.
  bool matters(const PhaseGap& gap) const {
    for (std::size_t i = 0; i < gaps_.size(); ++i) {
      const auto& own = gaps_[i];
      if (std::find(own.begin(), own.end(), gap) == own.end() &&
          internal::less(window_.rules[i].spans, gap, {}) == window_.rules[i].spans)
        return false;
    }
    return true;
  }

  void note_gaps() {
    auto& noted = window_.gaps;
    for (const auto& own : gaps_)
      for (const PhaseGap& gap : own)
        if (std::find(noted.begin(), noted.end(), gap) == noted.end() && matters(gap))
          noted.push_back(gap);
    std::sort(noted.begin(), noted.end(),
              [](const PhaseGap& a, const PhaseGap& b) { return a.low < b.low; });
  }

  bool all_known() const { return window_.gaps.empty() && stopped_.empty(); }

  void conclude() {
    if (window_.rules.empty()) take_all_known();
    window_.spans = known_part(std::move(window_.spans));
    note_gaps();
    if (window_.spans.empty())
      window_.status = all_known() ? WindowStatus::no_window : WindowStatus::not_known;
    else
      take(window_.spans.front());
    const bool known =
        may_melt_ || known_solidus_ ||
        internal::possible_melt(window_.analysis, window_.temperature_unit).has_value();
    const std::string melting =
        known ? "" : internal::no_melting_known(scan_.problem.system.parameters());
    window_.remarks =
        internal::window_remarks(window_, rules_, melting, stopped_, reached_);
  }

  void take_all_known() {
    window_.spans = {{scan_.range, {}, {}}};
    for (const PhaseGap& gap : changes_.gaps)
      window_.spans = internal::less(window_.spans, gap, WindowRule::unknown);
    gaps_.push_back(changes_.gaps);
  }

  void take(const WindowSpan& lowest) {
    window_.status = WindowStatus::found;
    window_.floor_rule = lowest.floor;
    window_.ceiling_rule = lowest.ceiling;
    if (lowest.floor != WindowRule::range) window_.floor = lowest.range.low;
    if (lowest.ceiling != WindowRule::range) window_.ceiling = lowest.range.high;
    const auto soak = [&](Temperature t) {
      return scan_.problem.state_of(scan_.problem.solve(t));
    };
    window_.at_floor = soak(lowest.range.low);
    window_.at_ceiling = soak(lowest.range.high);
    if (internal::has_hardness_rule(rules_))
      window_.of_hardness = internal::warnings_where_known(
          internal::hardness_of(rules_), {&window_.at_floor, &window_.at_ceiling});
  }

  const Steel& steel_;
  const WindowRules& rules_;
  const TemperatureScan& scan_;
  const SearchOptions& search_;
  const bool may_melt_ = internal::may_melt(scan_.problem.blank);
  HardeningWindow window_;
  PhaseChanges changes_;
  std::vector<std::vector<PhaseGap>> gaps_;  ///< of each rule
  std::string stopped_;  ///< why the range is not known above `reached_`; else empty
  Temperature reached_ = Temperature::kelvin(0.0);
  bool known_solidus_ = false;
};

}  // namespace

HardeningWindow hardening_window(const Steel& steel, const WindowRules& rules,
                                 const TemperatureRange& range, const SoakOptions& soak,
                                 const SearchOptions& search) {
  internal::check_rules(rules, internal::kind_names(*steel.parameters()));
  if (rules.hardness)
    internal::require_known({&*rules.hardness, 1}, *steel.parameters());
  const auto scan = internal::scan_temperatures(steel, range, soak, search);
  return WindowSearch(steel, rules, scan, search).run();
}

std::vector<Warning> HardeningWindow::warnings() const {
  std::vector<Warning> all = internal::distinct_warnings({&at_floor, &at_ceiling});
  for (const Warning& warning : of_hardness) internal::add_distinct(warning, all);
  if (by_family) internal::add_distinct(internal::near_border(analysis.modelled), all);
  internal::add_distinct(internal::left_out_warning(analysis, temperature_unit), all);
  return all;
}

}  // namespace gibbsteel
