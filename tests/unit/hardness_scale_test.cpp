// Vickers to Rockwell C against the table that the trade uses.

#include "gibbsteel/hardness_scale.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "gibbsteel/trade_indices.hpp"
#include "messages.hpp"

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
  for (const double hrc : {20.0, 44.0, 68.0, 68.3})
    CHECK(hrc_from_hv(hv_from_hrc(hrc)) == doctest::Approx(hrc).epsilon(1e-12));
}

TEST_CASE("outside the table there is no hardness") {
  const double nan = std::nan(""), infinity = std::numeric_limits<double>::infinity();
  for (const double hv : {-1000.0, -223.5, 0.0, 236.3, 941.7, 1e6, infinity, nan})
    CHECK(std::isnan(hrc_from_hv(hv)));
  for (const double hrc : {-1.0, 19.9, 68.4, 99.8, 100.0, infinity, nan})
    CHECK(std::isnan(hv_from_hrc(hrc)));
}

TEST_CASE("what cannot be a mixture has no hardness") {
  for (const auto hardness : {&mixture_hardness, &quenched_hardness}) {
    CHECK(hardness(800.0, 0.0, 0.0, 1500.0) == 800.0);
    CHECK(hardness(800.0, 1.0, 0.0, 1500.0) == kAusteniteHardness);
    for (const double fraction : {-0.01, 1.01, std::nan("")}) {
      CHECK(std::isnan(hardness(800.0, fraction, 0.1, 1500.0)));
      CHECK(std::isnan(hardness(800.0, 0.1, fraction, 1500.0)));
    }
    CHECK(std::isnan(hardness(-1.0, 0.1, 0.1, 1500.0)));
    CHECK(std::isnan(hardness(800.0, 0.1, 0.1, -1.0)));
    CHECK(std::isnan(hardness(std::nan(""), 0.1, 0.1, 1500.0)));
  }
}

TEST_CASE("hardness of what is no carbide, indices of what is no composition") {
  CHECK(message([] { carbide_hardness("cementite"); }) ==
        "[gibbsteel.input.205] kind: there is no phase 'cementite'; did you mean "
        "'M3C'? choose from: MC, M6C, M7C3, M23C6, M3C, M2C, M3C2, hexagonal MC");
  CHECK(message([] { carbide_hardness("ferrite"); }) ==
        "[gibbsteel.input.205] kind: there is no phase 'ferrite'; choose from: MC, "
        "M6C, M7C3, M23C6, M3C, M2C, M3C2, hexagonal MC");
  CHECK(carbide_hardness("hexagonal MC") == 1500.0);
  CHECK(message([] {
          trade_indices({{"Mo", -5.0}, {"W", std::nan("")}, {"CR", 1.0}, {"V", 101.0}});
        }) ==
        "[gibbsteel.input.203] composition, Mo: is negative: -5; give weight percent, "
        "from 0 to 100\n"
        "[gibbsteel.input.202] composition, W: is nan, not a number; give weight "
        "percent, or leave the element out where it was not measured\n"
        "[gibbsteel.input.201] composition: 'CR' is not the symbol of an element; did "
        "you mean 'Cr'?\n"
        "[gibbsteel.input.204] composition, V: is above 100: 101; give weight percent, "
        "from 0 to 100");
}
