#include "internal/cementite_rule.hpp"

#include <algorithm>

namespace gibbsteel::internal {

Temperature all_dissolved_at(const NamedValues& steel) {
  const double carbon = steel["C"], chromium = steel["Cr"];
  return Temperature::celsius(
      470.0 + 333.0 * carbon + 62.0 * chromium + 49.0 * chromium / carbon +
      36.0 * steel["Mn"] + 43.0 * steel["Si"] - 44.0 * steel["V"] + 10.0 * steel["Ni"]);
}

bool may_keep_cementite(const NamedValues& steel, Temperature t) {
  const double molybdenum = steel["Cr"] < 1.0 ? 1.6 : 0.6;
  return steel["C"] >= 0.3 && steel["Cr"] <= std::min(3.0, 4.0 * steel["C"]) &&
         steel["Mo"] <= molybdenum && steel["W"] <= 4.0 && steel["V"] <= 0.6 &&
         t < all_dissolved_at(steel);
}

}  // namespace gibbsteel::internal
