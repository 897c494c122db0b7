/// Spheres that dissolve, Eqs. (B6) and (B7): against formulas and against the full
/// diffusion field in a shell, which is worked out here by finite volumes.

#include "short_soak/shrinking_spheres.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <optional>

#include "short_soak/particle_surface.hpp"

using gibbsteel::internal::crowding;
using gibbsteel::internal::Dissolving;
using gibbsteel::internal::DissolvingSpeed;
using gibbsteel::internal::seconds_to;
using gibbsteel::internal::shares_left;

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// 0: not at all, infinite: at once, NaN: not known.
DissolvingSpeed of(const std::function<double(double)>& speed) {
  return {speed, [speed](double share) {
            const double v = speed(share);
            if (std::isnan(v)) return Dissolving::unknown;
            if (std::isinf(v)) return Dissolving::at_once;
            return v > 0.0 ? Dissolving::slowly : Dissolving::not_at_all;
          }};
}

/// Content of a metal: of the spheres, of the surface, and of the austenite before.
struct Contents {
  double share, sphere, surface, before;
};

/// Eq. (B6) of one metal with D = 1.
double steady_speed(const Contents& c, double share) {
  const double all = c.share * c.sphere + (1.0 - c.share) * c.before;
  const double mean = (all - share * c.sphere) / (1.0 - share);
  return (c.surface - mean) / (c.sphere - c.surface) / crowding(share);
}

/// The field around a sphere of radius 1 in a shell that nothing leaves, D = 1: fully
/// implicit finite volumes that follow the surface, remapped so that nothing is lost.
class Field {
 public:
  /// @param left  share after a first stage that left the content of the sphere around
  ///        it; nothing: no such stage
  explicit Field(const Contents& c, std::optional<double> left = std::nullopt)
      : c_(c), outer_(std::cbrt(1.0 / c.share)), u_(kCells, c.before) {
    place(left ? std::cbrt(*left / c.share) : 1.0);
    if (!left) return;
    for (std::size_t i = 0; i < kCells; ++i) {
      const double low = cube(faces_[i]), high = cube(faces_[i + 1]);
      const double shell = std::clamp((1.0 - low) / (high - low), 0.0, 1.0);
      u_[i] = shell * c.sphere + (1.0 - shell) * c.before;
    }
  }

  double share_after(double time) {
    for (double t = 0.0; t < time;) {
      const double dt = std::min({dt_, time - t, 5e-4 * radius_ * radius_});
      step(dt);
      t += dt;
      dt_ *= 1.05;
    }
    return c_.share * radius_ * radius_ * radius_;
  }

 private:
  static constexpr std::size_t kCells = 200;

  void place(double radius) {
    radius_ = radius;
    faces_.resize(kCells + 1);
    for (std::size_t i = 0; i <= kCells; ++i) {
      const double x = static_cast<double>(i) / kCells;
      faces_[i] = radius + (outer_ - radius) * x * x;
    }
  }

  static double cube(double x) { return x * x * x; }

  void step(double dt) {
    diffuse(dt);
    const double middle = 0.5 * (faces_[0] + faces_[1]);
    const double flux = (c_.surface - u_[0]) / (middle - radius_);
    const double radius = radius_ - flux / (c_.sphere - c_.surface) * dt;
    // Content from the new surface outwards, the uncovered shell at that of the
    // surface.
    std::vector<double> at{cube(radius), cube(radius_)};
    std::vector<double> sum{0.0, c_.surface * (at[1] - at[0])};
    for (std::size_t i = 0; i < kCells; ++i) {
      at.push_back(cube(faces_[i + 1]));
      sum.push_back(sum.back() + u_[i] * (at.back() - cube(faces_[i])));
    }
    place(radius);
    const auto content = [&](double x) {
      std::size_t i = 1;
      while (i + 1 < at.size() && at[i] < x) ++i;
      const double part = (x - at[i - 1]) / (at[i] - at[i - 1]);
      return sum[i - 1] + part * (sum[i] - sum[i - 1]);
    };
    for (std::size_t i = 0; i < kCells; ++i) {
      const double low = cube(faces_[i]), high = cube(faces_[i + 1]);
      u_[i] = (content(high) - content(low)) / (high - low);
    }
  }

  void diffuse(double dt) {
    const auto middle = [&](std::size_t i) {
      return 0.5 * (faces_[i] + faces_[i + 1]);
    };
    std::vector<double> in(kCells), left(kCells), right(kCells, 0.0);
    for (std::size_t i = 0; i < kCells; ++i) {
      const double from = i == 0 ? radius_ : middle(i - 1);
      left[i] = faces_[i] * faces_[i] / (middle(i) - from);
      if (i > 0) right[i - 1] = left[i];
    }
    std::vector<double> diagonal(kCells);
    for (std::size_t i = 0; i < kCells; ++i) {
      const double volume = (cube(faces_[i + 1]) - cube(faces_[i])) / 3.0 / dt;
      diagonal[i] = volume + left[i] + right[i];
      in[i] = volume * u_[i] + (i == 0 ? left[0] * c_.surface : 0.0);
    }
    for (std::size_t i = 1; i < kCells; ++i) {
      const double factor = left[i] / diagonal[i - 1];
      diagonal[i] -= factor * right[i - 1];
      in[i] += factor * in[i - 1];
    }
    for (std::size_t i = kCells; i-- > 0;)
      u_[i] = (in[i] + (i + 1 < kCells ? right[i] * u_[i + 1] : 0.0)) / diagonal[i];
  }

  Contents c_;
  double outer_, radius_ = 1.0, dt_ = 1e-6;
  std::vector<double> faces_, u_;
};

}  // namespace

TEST_CASE("at a constant speed r squared falls evenly, to nothing") {
  const double k = 0.3, radius = 2.0;
  const auto left = shares_left(of([=](double) { return k; }), 0.12, radius,
                                {0.0, 1.0, 4.0, 6.0, 6.6, 7.0});
  for (std::size_t i = 0; i < 5; ++i) {
    const double time[5]{0.0, 1.0, 4.0, 6.0, 6.6};
    const double part = 1.0 - 2.0 * k * time[i] / (radius * radius);
    CHECK(left[i] == doctest::Approx(0.12 * std::pow(part, 1.5)).epsilon(1e-5));
  }
  CHECK(left[5] == 0.0);
}

TEST_CASE("time goes with the square of the diameter") {
  const auto speed = of([](double share) { return std::max(share - 0.02, 0.0); });
  const auto small = shares_left(speed, 0.14, 1.0, {5.0, 20.0, 80.0});
  const auto large = shares_left(speed, 0.14, 3.0, {45.0, 180.0, 720.0});
  for (std::size_t i = 0; i < small.size(); ++i)
    CHECK(large[i] == doctest::Approx(small[i]).epsilon(1e-9));
}

TEST_CASE("what takes no time is gone at once, and nothing falls below the end") {
  const auto speed = of([](double share) {
    if (share > 0.1) return kInfinite;
    return share > 0.03 ? (share - 0.03) / (0.1 - share + 1e-3) : 0.0;
  });
  const auto left = shares_left(speed, 0.14, 1.0, {0.0, 0.5, 1e9});
  CHECK(left[0] == doctest::Approx(0.1).epsilon(1e-9));
  CHECK(left[1] < left[0]);
  CHECK(left[2] == doctest::Approx(0.03).epsilon(1e-9));
  const auto still = shares_left(of([](double) { return 0.0; }), 0.14, 1.0, {1.0});
  CHECK(still[0] == 0.14);
  const auto nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(std::isnan(shares_left(of([=](double) { return nan; }), 0.1, 1.0, {1.0})[0]));
  const auto later = of([=](double share) {
    return share > 0.06 ? 1.0 : share > 0.02 ? nan : 0.0;
  });
  CHECK(std::isnan(shares_left(later, 0.1, 1.0, {1.0})[0]));
}

TEST_CASE("seconds to a share are the inverse of the share after seconds") {
  const auto speed = of([](double share) {
    if (share > 0.12) return kInfinite;
    return share > 0.02 ? share - 0.02 : 0.0;
  });
  for (const double share : {0.11, 0.07, 0.03}) {
    const auto seconds = seconds_to(speed, 0.14, 0.5, share);
    REQUIRE(seconds);
    CHECK(shares_left(speed, 0.14, 0.5, {*seconds})[0] ==
          doctest::Approx(share).epsilon(1e-5));
  }
  CHECK(*seconds_to(speed, 0.14, 0.5, 0.13) == 0.0);
  CHECK_FALSE(seconds_to(speed, 0.14, 0.5, 0.02));
  CHECK_FALSE(seconds_to(speed, 0.14, 0.5, 0.01));
  const auto nan = std::numeric_limits<double>::quiet_NaN();
  CHECK(std::isnan(*seconds_to(of([=](double) { return nan; }), 0.14, 0.5, 0.1)));
}

TEST_CASE("neighbours: g is 1 for a lone sphere and falls") {
  CHECK(crowding(0.0) == 1.0);
  double before = 1.0;
  for (const double share : {1e-6, 1e-3, 0.01, 0.05, 0.15, 0.3}) {
    CHECK(crowding(share) < before);
    before = crowding(share);
  }
  // Steady field in a shell, integrated here: D u'' + 2 u'/r = s, u' = 0 outside.
  const double share = 0.1, outer = std::cbrt(1.0 / share);
  double u = 0.0, content = 0.0, volume = 0.0;
  const int n = 20000;
  const double h = (outer - 1.0) / n;
  for (int i = 0; i < n; ++i) {
    const double r = 1.0 + (i + 0.5) * h;
    const double slope = (outer * outer * outer / (r * r) - r) / 3.0;
    u += 0.5 * h * slope;
    content += u * r * r * h;
    u += 0.5 * h * slope;
    volume += r * r * h;
  }
  const double flux = (1.0 / share - 1.0) / 3.0;
  CHECK(crowding(share) == doctest::Approx(content / volume / flux).epsilon(1e-4));
}

TEST_CASE("the steady field is near the full one") {
  // As cementite of 52100 near 845 C; times in r0^2 / D, half an hour is near 0.2.
  for (const double surface : {0.035, 0.025, 0.02}) {
    const Contents c{0.14, 0.1, surface, 0.003};
    const std::vector<double> times{0.005, 0.02, 0.1, 0.2, 0.3, 0.6};
    const auto steady = shares_left(
        of([&](double share) { return steady_speed(c, share); }), c.share, 1.0, times);
    for (std::size_t i = 0; i < times.size(); ++i) {
      const double full = Field(c).share_after(times[i]);
      MESSAGE("surface ", surface, ", time ", times[i], ": full field ", full,
              ", steady field ", steady[i]);
      const double allowed = times[i] < 0.1 ? 0.014 : 0.008;
      CHECK(std::abs(full - steady[i]) < allowed);
    }
  }
}

TEST_CASE("after a first stage the field comes back to the curve without one") {
  // 52100 near 845 C, as (B7) has it: what carbon alone leaves stands still until then.
  // By local equilibrium it even grows again first, which (B7) leaves out.
  const Contents c{0.139, 0.096, 0.025, 0.003};
  const double left = 0.057;
  for (const double time : {0.05, 0.1, 0.3, 1.0}) {
    const double with = Field(c, left).share_after(time);
    const double without = Field(c).share_after(time);
    MESSAGE("time ", time, ": with a first stage ", with, ", without ", without);
    CHECK(with <= without + 0.002);
    if (time >= 0.3) CHECK(std::abs(with - without) < 0.004);
  }
}
