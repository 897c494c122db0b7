#include "scan/value_line.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <boost/math/tools/toms748_solve.hpp>

#include "internal/short_soak_quantity.hpp"
#include "scan/cubic_bounds.hpp"
#include "scan/stopped.hpp"
#include "scan/value_samples.hpp"
#include "scan/why_no_value.hpp"

namespace gibbsteel::internal {
namespace {

bool known(const ValueSample& sample) { return std::isfinite(sample.excess); }

class CrossingSearch {
 public:
  CrossingSearch(const ValueLine& line, const Quantity& quantity, double target)
      : scan_(*line.scan),
        quantity_(quantity),
        samples_(line, quantity, target),
        closest_(line.tolerance / 3.0) {
    found_.target = target;
    found_.stopped = line.scan->stopped;
  }

  LineSearch run() {
    try {
      walk();
    } catch (const Stopped& stop) {
      found_.stopped = stop.why;
    }
    note_extremes();
    found_.soaks = samples_.soaks();
    return std::move(found_);
  }

 private:
  void walk() {
    const auto& nodes = scan_.nodes;
    auto event = scan_.events.begin();
    std::size_t last = nodes.size();  // the last usable one; none yet
    for (std::size_t i = 0; i < nodes.size(); ++i) {
      if (!nodes[i].usable()) continue;
      if (last != nodes.size() && !inside_gap(nodes[last].s, nodes[i].s)) {
        const bool change = event != scan_.events.end() && event->below == last;
        if (change) ++event;
        step(samples_.at(nodes[last].s), samples_.at(nodes[i].s), change);
      }
      last = i;
    }
    for (const LineGap& gap : scan_.gaps) add_gap(gap, found_.gaps);
    std::sort(found_.gaps.begin(), found_.gaps.end(),
              [](const LineGap& a, const LineGap& b) { return a.from < b.from; });
  }

  bool inside_gap(double from, double to) const {
    const auto& gaps = scan_.gaps;
    return std::any_of(gaps.begin(), gaps.end(), [&](const LineGap& gap) {
      return gap.from <= from && to <= gap.to;
    });
  }

  void step(ValueSample& a, ValueSample& b, bool change) {
    if (!change) return within(a, b);
    if (!known(a) && !known(b)) return add_unknown(a, b);
    if (!known(a) || !known(b)) return;  // as narrow as the tolerance
    if (a.excess == 0.0 && b.excess == 0.0) return add_equal(a, b);
    if (!differ(a, b)) return;
    add_crossing(a, b, is_jump(a, b));
    found_.crossings.back().width = b.s - a.s;
  }

  static bool differ(const ValueSample& a, const ValueSample& b) {
    if (a.excess == 0.0 || b.excess == 0.0) return a.excess != b.excess;
    return std::signbit(a.excess) != std::signbit(b.excess);
  }

  /// More than both slopes together explain; where these are not its own, or none,
  /// more than shrinks with the bracket.
  bool is_jump(ValueSample& a, ValueSample& b) {
    constexpr double kFar = 10.0, kNoise = 1e-6;
    const double step = std::abs(b.excess - a.excess);
    if (!(step > kNoise * std::max(1.0, std::abs(found_.target)))) return false;
    const double smooth = (b.s - a.s) * std::max(std::abs(samples_.slope(a)),
                                                 std::abs(samples_.slope(b)));
    const bool told = quantity_.has_slope() && std::isfinite(smooth);
    return told ? step > kFar * smooth + kNoise : stays(a, b);
  }

  /// Where no phase changes: neither end has the value.
  bool is_closed_jump(ValueSample& a, ValueSample& b) {
    return a.excess != 0.0 && b.excess != 0.0 && is_jump(a, b);
  }

  /// True when the step is still there in an eighth of the bracket.
  bool stays(const ValueSample& a, const ValueSample& b) {
    constexpr int kHalvings = 3;
    const ValueSample *low = &a, *high = &b;
    for (int i = 0; i < kHalvings; ++i) {
      const ValueSample& middle = samples_.at(std::midpoint(low->s, high->s));
      if (!known(middle)) return false;
      (differ(*low, middle) ? high : low) = &middle;
    }
    return std::abs(high->excess - low->excess) > 0.5 * std::abs(b.excess - a.excess);
  }

  /// Everything between two soaks with the same phases.
  void within(ValueSample& a, ValueSample& b) {
    if (!known(a) && !known(b)) return add_unknown(a, b);
    if (a.excess == 0.0 && b.excess == 0.0) return add_equal(a, b);
    const bool narrow = b.s - a.s <= closest_;
    if (!known(a) || !known(b)) return narrow ? add_unknown(a, b) : split(a, b);
    const bool crosses = differ(a, b);
    if (narrow) {
      if (crosses) add_crossing(a, b, is_closed_jump(a, b));
      return;
    }
    const double sign = a.excess + b.excess < 0.0 ? -1.0 : 1.0;
    const EndValues ends{sign * a.excess, sign * b.excess, sign * samples_.slope(a),
                         sign * samples_.slope(b)};
    const double h = b.s - a.s;
    if (!crosses && stays_positive(ends, h, 0.0)) return;
    if (!crosses || !is_monotonic(ends, h)) return split(a, b);
    if (!locate(a, b)) split(a, b);
  }

  void split(ValueSample& a, ValueSample& b) {
    ValueSample& middle = samples_.at(std::midpoint(a.s, b.s));
    within(a, middle);
    within(middle, b);
  }

  /// The only root between two soaks. @return false when a soak was not usable
  bool locate(ValueSample& a, ValueSample& b) {
    constexpr double kPart = 0.03;  // of the distance at which phase changes are known
    bool lost = false;
    const auto value = [&](double s) {
      const double excess = samples_.at(s).excess;
      lost = lost || !std::isfinite(excess);
      return lost ? 0.0 : excess;  // 0 ends the search
    };
    const auto close = [&](double from, double to) {
      return std::abs(to - from) <= kPart * closest_;
    };
    if (a.excess != 0.0 && b.excess != 0.0) {
      std::uintmax_t most = 100;
      const auto [low, high] = boost::math::tools::toms748_solve(
          value, a.s, b.s, a.excess, b.excess, close, most);
      if (lost) return false;
      ValueSample &below = samples_.at(low), &above = samples_.at(high);
      add_crossing(below, above, is_closed_jump(below, above));
    } else {
      add_crossing(a, b, false);
    }
    return true;
  }

  void add_crossing(const ValueSample& a, const ValueSample& b, bool jump) {
    const ValueSample& root = jump || std::abs(a.excess) <= std::abs(b.excess) ? a : b;
    const bool again = !found_.crossings.empty() && root.excess == 0.0 &&
                       found_.crossings.back().s == root.s;
    if (again) return;
    LineCrossing crossing;
    crossing.s = root.s;
    crossing.width = root.excess == 0.0 ? 0.0 : b.s - a.s;
    crossing.kind = jump ? CrossingKind::jump : CrossingKind::crossing;
    crossing.rising = a.excess == b.excess ? samples_.slope(samples_.at(a.s)) > 0.0
                                           : b.excess > a.excess;
    crossing.value = root.excess + found_.target;
    crossing.below = a.excess + found_.target;
    crossing.above = b.excess + found_.target;
    if (!jump && !quantity_.may_rest_on_more())
      crossing.slope = samples_.slope_of_input(samples_.at(root.s));
    crossing.state = root.state;
    crossing.band = quantity_.band(root.state);
    crossing.result = *root.result;
    found_.crossings.push_back(std::move(crossing));
  }

  void add_equal(const ValueSample& a, const ValueSample& b) {
    if (!found_.equal.empty() && found_.equal.back().to == a.s)
      found_.equal.back().to = b.s;
    else
      found_.equal.push_back({a.s, b.s});
  }

  /// At least one of the two has no value.
  void add_unknown(const ValueSample& a, const ValueSample& b) {
    for (const ValueSample* sample : {&a, &b})
      if (!sample->state.usable())
        return add_gap({a.s, b.s, sample->state.solve_report.reason}, found_.gaps);
    const State& without = (known(a) ? b : a).state;
    // A soak of minutes has a number there, but no estimate of it.
    const std::string refused = why_no_short_soak(quantity_, without);
    if (!refused.empty()) return add_gap({a.s, b.s, refused}, found_.gaps);
    add_gap({a.s, b.s, why_no_value(quantity_, without)}, found_.no_value);
  }

  /// Reasons of soaks differ by the numbers in them.
  static std::string without_digits(std::string reason) {
    std::erase_if(reason, [](char c) { return c >= '0' && c <= '9'; });
    return reason;
  }

  static void add_gap(const LineGap& gap, std::vector<LineGap>& gaps) {
    const bool joins = !gaps.empty() && gaps.back().to == gap.from &&
                       without_digits(gaps.back().reason) == without_digits(gap.reason);
    if (joins)
      gaps.back().to = gap.to;
    else
      gaps.push_back(gap);
  }

  void note_extremes() {
    found_.low = samples_.all().begin()->second.state;
    found_.high = samples_.all().rbegin()->second.state;
    for (const auto& [s, sample] : samples_.all()) {
      if (!known(sample)) continue;
      const LineValue here{sample.excess + found_.target, s};
      note_extreme(found_.lowest, here, -1.0);
      note_extreme(found_.highest, here, 1.0);
    }
    if (found_.crossings.empty() && found_.equal.empty()) note_band();
  }

  void note_band() {
    const double up = found_.target - found_.highest.value;
    const double down = found_.lowest.value - found_.target;
    if (std::isnan(up)) return;
    const LineValue& nearest = up > down ? found_.highest : found_.lowest;
    found_.band_of_nearest = quantity_.band(samples_.at(nearest.s).state);
  }

  /// On a plateau, the first point of it: what differs by rounding counts as equal.
  static void note_extreme(LineValue& extreme, const LineValue& here, double sign) {
    constexpr double kRounding = 1e-9;  // relative
    const double beyond = sign * (here.value - extreme.value);
    if (beyond <= 0.0) return;
    if (!(beyond <= kRounding * std::abs(extreme.value)))
      extreme.s = here.s;  // NaN too
    extreme.value = here.value;
  }

  const LineScan& scan_;
  const Quantity& quantity_;
  ValueSamples samples_;
  double closest_;
  LineSearch found_;
};

}  // namespace

LineSearch search_line(const ValueLine& line, const Quantity& quantity, double target) {
  return CrossingSearch(line, quantity, target).run();
}

}  // namespace gibbsteel::internal
