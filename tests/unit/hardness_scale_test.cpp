// Vickers to Rockwell C against the table that the trade uses.

#include "gibbsteel/hardness_scale.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace gibbsteel;

namespace {

/// ASTM E140, table 1, non-austenitic steels: HV of 20, 21, ... 68 HRC, from memory.
constexpr double kTable[]{
    238, 243, 248, 254, 260, 266, 272, 279, 286, 294, 302, 310, 318, 327, 336, 345, 354,
    363, 372, 382, 392, 402, 412, 423, 434, 446, 458, 471, 484, 498, 513, 528, 544, 560,
    577, 595, 613, 633, 653, 674, 697, 720, 746, 772, 800, 832, 865, 900, 940};

}  // namespace

TEST_CASE("Rockwell C from Vickers: the table of ASTM E140") {
  double hrc = 20.0, largest = 0.0, sum = 0.0;
  for (const double hv : kTable) {
    const double off = hrc_from_hv(hv) - hrc;
    largest = std::max(largest, std::abs(off));
    sum += off;
    hrc += 1.0;
  }
  CHECK(hrc == 69.0);
  MESSAGE("largest difference " << largest << " HRC, mean " << sum / 49.0);
  CHECK(largest <= 0.3);
  CHECK(std::abs(sum / 49.0) <= 0.05);
}

TEST_CASE("Vickers from Rockwell C: the way back") {
  for (const double hv : {238.0, 400.0, 654.0, 940.0})
    CHECK(hv_from_hrc(hrc_from_hv(hv)) == doctest::Approx(hv).epsilon(1e-12));
  // Steps of one HRC in the table are 5 to 40 HV.
  for (int i = 0; i < 49; ++i)
    CHECK(std::abs(hv_from_hrc(20.0 + i) - kTable[i]) <= 0.3 * 40.0);
}
