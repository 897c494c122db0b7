/// What a little more carbon or cobalt does to a matrix-style punch steel: exact
/// slopes, and a grid of soaks. Shop and heat are invented. The notebook is
/// ../notebooks/a_little_more_carbon_or_cobalt.ipynb.

#include <cstdio>

#include "gibbsteel/gibbsteel.hpp"

namespace {

void print_slopes(const gibbsteel::Sensitivities& all) {
  for (const char* element : {"C", "Co", "Cr", "Mo", "W", "V"}) {
    const gibbsteel::StateSlope& slope = all.at(element);
    std::printf("0.1 wt%% more %-2s: carbide %+.2f vol%%, matrix carbon %+.4f wt%%\n",
                element, 0.1 * slope.carbide_volume_percent,
                0.1 * slope.matrix.weight_percent["C"]);
  }
}

void print_grid(const gibbsteel::SoakGrid& grid, const gibbsteel::Quantity& quantity) {
  std::printf("\n%s at 1120 C, long-hold limit; rows: Co, columns: C [wt%%]\n      ",
              quantity.label().c_str());
  for (const double carbon : grid.second.values) std::printf(" %6.2f", carbon);
  const auto values = grid.array(quantity);
  for (std::size_t i = 0; i < grid.rows(); ++i) {
    std::printf("\n%6.1f", grid.first.values[i]);
    for (std::size_t j = 0; j < grid.second.values.size(); ++j)
      std::printf(" %6.3f", values[i * grid.second.values.size() + j]);
  }
  std::printf("\n");
}

}  // namespace

int main() {
  using namespace gibbsteel;
  const Steel heat({{"C", 0.55},
                    {"Cr", 4.5},
                    {"Mo", 2.75},
                    {"W", 2.0},
                    {"V", 1.0},
                    {"Mn", 0.3},
                    {"Si", 0.3},
                    {"Co", 1.0}},
                   {"punch heat 7 with 1 Co", {}, false});
  const Temperature soak = Temperature::celsius(1120);
  print_slopes(sensitivities(heat, soak));
  const SoakGrid grid =
      soak_grid(heat, SweptVariable::element("Co", {0.0, 1.0, 2.0, 4.0}),
                SweptVariable::element("C", {0.48, 0.52, 0.56, 0.60}), soak);
  print_grid(grid, quantities::carbide_volume_percent());
  print_grid(grid, quantities::matrix("C"));
  std::printf(
      "Before hardening real parts try coupons; local codes and licensed practice come "
      "first.\n");
  return 0;
}
