#include "short_soak/shrinking_spheres.hpp"

#include <algorithm>
#include <array>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <limits>

namespace gibbsteel::internal {
namespace {

/// The share falls from `first` to `last` as last + (first - last) exp(-s): time is a
/// smooth function of s, at both ends as well.
class Course {
 public:
  Course(const DissolvingSpeed& speed, double start, double radius)
      : speed_(speed), start_(start), radius_(radius) {
    known_ = speed_.regime(start) != Dissolving::unknown;
    first_ = border([](Dissolving d) { return d == Dissolving::at_once; }, start);
    last_ = border([](Dissolving d) { return d != Dissolving::not_at_all; }, first_);
  }

  bool known() const noexcept { return known_; }
  /// Nothing dissolves slowly.
  bool stands_still() const { return !(first_ - last_ > 1e-12 * start_); }
  double first() const noexcept { return first_; }
  double last() const noexcept { return last_; }
  double share(double s) const { return last_ + (first_ - last_) * std::exp(-s); }

  /// Seconds from s = low to high; Gauss and Legendre with three points.
  double seconds(double low, double high) const {
    constexpr std::array<double, 3> kPoints{-0.7745966692414834, 0.0,
                                            0.7745966692414834};
    constexpr std::array<double, 3> kWeights{5.0 / 9.0, 8.0 / 9.0, 5.0 / 9.0};
    const double half = 0.5 * (high - low);
    double sum = 0.0;
    for (std::size_t i = 0; i < kPoints.size(); ++i)
      sum += kWeights[i] * slope(low + half * (1.0 + kPoints[i]));
    return half * sum;
  }

 private:
  /// Lowest share down from `high` at which `holds` is true all the way.
  template <typename Condition>
  double border(const Condition& holds, double high) const {
    if (high <= 0.0 || !holds(speed_.regime(high))) return high;
    if (holds(speed_.regime(0.0))) return 0.0;
    double low = 0.0;
    for (int i = 0; i < 60 && high - low > 1e-15; ++i) {
      const double middle = 0.5 * (low + high);
      (holds(speed_.regime(middle)) ? high : low) = middle;
    }
    return high;
  }

  /// dt/ds.
  double slope(double s) const {
    const double here = share(s);
    const double radius = radius_ * std::cbrt(here / start_);
    return (here - last_) * radius * radius / (3.0 * here * speed_.at(here));
  }

  const DissolvingSpeed& speed_;
  double start_, radius_;
  double first_ = 0.0, last_ = 0.0;
  bool known_ = true;
};

/// Beyond it less than a millionth of the way is left.
constexpr double kLongest = 14.0;
constexpr double kPanel = 0.5;

/// @param panel  seconds of the whole panel, more than `seconds`
double within_panel(const Course& course, double low, double panel, double seconds) {
  if (seconds <= 0.0) return course.share(low);
  std::uintmax_t steps = 40;
  const auto late = [&](double s) { return course.seconds(low, s) - seconds; };
  const auto [a, b] = boost::math::tools::toms748_solve(
      late, low, low + kPanel, -seconds, panel - seconds,
      boost::math::tools::eps_tolerance<double>(30), steps);
  return course.share(0.5 * (a + b));
}

}  // namespace

std::vector<double> shares_left(const DissolvingSpeed& speed, double start,
                                double radius, const std::vector<double>& seconds) {
  const Course course(speed, start, radius);
  constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
  std::vector<double> shares(seconds.size(), course.known() ? course.last() : kNaN);
  if (!course.known() || course.stands_still()) return shares;
  double s = 0.0, passed = 0.0;
  std::size_t next = 0;
  while (next < seconds.size() && s < kLongest) {
    const double panel = course.seconds(s, s + kPanel);
    if (std::isnan(panel)) {
      std::fill(shares.begin() + static_cast<std::ptrdiff_t>(next), shares.end(), kNaN);
      return shares;
    }
    if (std::isinf(panel)) {  // nothing moves any more
      std::fill(shares.begin() + static_cast<std::ptrdiff_t>(next), shares.end(),
                course.share(s));
      return shares;
    }
    for (; next < seconds.size() && seconds[next] < passed + panel; ++next)
      shares[next] = within_panel(course, s, panel, seconds[next] - passed);
    passed += panel;
    s += kPanel;
  }
  return shares;
}

std::optional<double> seconds_to(const DissolvingSpeed& speed, double start,
                                 double radius, double share) {
  const Course course(speed, start, radius);
  if (!course.known()) return std::numeric_limits<double>::quiet_NaN();
  if (share >= course.first()) return 0.0;
  if (course.stands_still()) return std::nullopt;
  // All of it goes in finite time; a share in equilibrium is never quite reached.
  const bool all = course.last() == 0.0;
  const double least = course.last() + 1e-6 * (course.first() - course.last());
  if (share < (all ? 0.0 : least)) return std::nullopt;
  const double wanted = std::log((course.first() - course.last()) /
                                 (std::max(share, least) - course.last()));
  double passed = 0.0, s = 0.0;
  for (; s + kPanel < wanted; s += kPanel) passed += course.seconds(s, s + kPanel);
  passed += course.seconds(s, wanted);
  if (std::isinf(passed)) return std::nullopt;
  return passed;
}

}  // namespace gibbsteel::internal
