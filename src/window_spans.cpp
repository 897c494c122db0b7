#include "internal/window_spans.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

WindowRule rule_at(Edge edge, WindowRule rule) {
  if (edge == Edge::range) return WindowRule::range;
  return edge == Edge::gap ? WindowRule::unknown : rule;
}

Temperature moved(Temperature t, double kelvin) {
  return Temperature::kelvin(t.in_kelvin() + kelvin);
}

bool has(const PhaseField& field, const std::string& kind) {
  return std::find(field.phases.begin(), field.phases.end(), kind) !=
         field.phases.end();
}

/// The gap lies where phases are known, and the kind is not among them but within the
/// bracket of a change.
bool lacks(const PhaseChanges& changes, const std::string& kind, const PhaseGap& gap) {
  const double close = 2.0 * changes.tolerance;  // [K]
  double covered = 0.0;
  for (const PhaseField& field : changes.fields) {
    const double length = std::min(field.high, gap.high).in_kelvin() -
                          std::max(field.low, gap.low).in_kelvin();
    if (length <= 0.0) continue;
    if (has(field, kind) && length > close) return false;
    covered += length;
  }
  return covered >= gap.high.in_kelvin() - gap.low.in_kelvin() - close;
}

}  // namespace

WindowSpans without_kind(const PhaseChanges& changes, const std::string& kind,
                         WindowRule rule) {
  WindowSpans spans;
  bool open = false;  // the last span goes on
  for (const PhaseField& field : changes.fields) {
    if (has(field, kind)) {
      open = false;
      continue;
    }
    // The kind is certain to be absent on the far side of the bracket of its change.
    const Temperature high = field.high_edge == Edge::change
                                 ? moved(field.high, -changes.tolerance)
                                 : field.high;
    // Between two fields without the kind the change is one of other phases.
    if (open && field.low_edge == Edge::change)
      spans.back().range.high = high;
    else
      spans.push_back(
          {{field.low_edge == Edge::change ? moved(field.low, changes.tolerance)
                                           : field.low,
            high},
           rule_at(field.low_edge, rule),
           rule});
    spans.back().ceiling = rule_at(field.high_edge, rule);
    open = true;
  }
  if (!changes.stopped.empty() && open) spans.back().ceiling = WindowRule::unknown;
  return spans;
}

WindowSpans at_least(const TemperatureSearch& search, WindowRule rule) {
  const bool never_below = search.lowest.value >= search.target;
  const bool holds_at_first =
      search.crossings.empty() ? never_below : !search.crossings.front().rising;
  WindowSpans spans;
  if (holds_at_first) spans.push_back({search.range, WindowRule::range, rule});
  for (const Crossing& crossing : search.crossings) {
    // The soak of a jump is that below it.
    const bool jump = crossing.kind == CrossingKind::jump;
    if (crossing.rising)
      spans.push_back(
          {{moved(crossing.temperature, jump ? crossing.bracket_width : 0.0),
            search.range.high},
           rule,
           rule});
    else if (!spans.empty())
      spans.back().range.high = crossing.temperature;
  }
  if (!spans.empty() && spans.back().range.high == search.range.high)
    spans.back().ceiling = WindowRule::range;
  for (const PhaseGap& gap : search.gaps) spans = less(spans, gap, WindowRule::unknown);
  return spans;
}

WindowSpans less(const WindowSpans& spans, const PhaseGap& gap, WindowRule rule) {
  WindowSpans rest;
  for (const WindowSpan& span : spans) {
    if (span.range.low < gap.low)
      rest.push_back({{span.range.low, std::min(span.range.high, gap.low)},
                      span.floor,
                      gap.low < span.range.high ? rule : span.ceiling});
    if (gap.high < span.range.high)
      rest.push_back({{std::max(span.range.low, gap.high), span.range.high},
                      span.range.low < gap.high ? rule : span.floor,
                      span.ceiling});
  }
  return rest;
}

void count_as_gaps(const std::vector<PhaseGap>& no_value, std::vector<PhaseGap>& gaps) {
  gaps.insert(gaps.end(), no_value.begin(), no_value.end());
  std::sort(gaps.begin(), gaps.end(),
            [](const PhaseGap& a, const PhaseGap& b) { return a.low < b.low; });
}

std::vector<PhaseGap> take_gaps_without(const PhaseChanges& changes,
                                        const std::string& kind,
                                        std::vector<PhaseGap>& gaps) {
  const auto rest = std::stable_partition(
      gaps.begin(), gaps.end(),
      [&](const PhaseGap& gap) { return !lacks(changes, kind, gap); });
  std::vector<PhaseGap> taken(rest, gaps.end());
  gaps.erase(rest, gaps.end());
  return taken;
}

WindowSpans intersection(const WindowSpans& a, const WindowSpans& b) {
  WindowSpans both;
  for (const WindowSpan& p : a)
    for (const WindowSpan& q : b) {
      // Where two ends agree, a rule is told rather than the end of the range.
      const bool p_floor = p.range.low > q.range.low ||
                           (p.range.low == q.range.low && p.floor != WindowRule::range);
      const bool p_ceiling =
          p.range.high < q.range.high ||
          (p.range.high == q.range.high && p.ceiling != WindowRule::range);
      const TemperatureRange range{std::max(p.range.low, q.range.low),
                                   std::min(p.range.high, q.range.high)};
      if (range.low < range.high)
        both.push_back(
            {range, p_floor ? p.floor : q.floor, p_ceiling ? p.ceiling : q.ceiling});
    }
  std::sort(both.begin(), both.end(), [](const WindowSpan& p, const WindowSpan& q) {
    return p.range.low < q.range.low;
  });
  return both;
}

}  // namespace gibbsteel::internal
