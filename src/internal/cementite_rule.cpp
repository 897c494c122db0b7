#include "internal/cementite_rule.hpp"

#include <algorithm>

namespace gibbsteel::internal {
namespace {

constexpr double kAbove = 10.0;  ///< a warning too many costs less than one too few [C]

}  // namespace

Temperature all_dissolved_at(const NamedValues& steel) {
  const double carbon = steel["C"], chromium = steel["Cr"];
  return Temperature::celsius(
      458.0 + 348.0 * carbon + 54.0 * chromium + 52.0 * chromium / carbon +
      36.0 * steel["Mn"] + 46.0 * steel["Si"] - 63.0 * steel["V"] + 9.0 * steel["Ni"]);
}

bool may_keep_cementite(const NamedValues& steel, Temperature t) {
  const double molybdenum = steel["Cr"] < 1.0 ? 1.6 : 0.6;
  return steel["C"] >= 0.3 && steel["Cr"] <= std::min(3.0, 4.0 * steel["C"]) &&
         steel["Mo"] <= molybdenum && steel["W"] <= 4.0 && steel["V"] <= 0.6 &&
         t.in_celsius() < all_dissolved_at(steel).in_celsius() + kAbove;
}

}  // namespace gibbsteel::internal
