#pragma once
/// The shipped file with the layer that adds liquid.

#include "gibbsteel/parameter_file.hpp"

inline gibbsteel::SharedParameters with_liquid() {
  static const gibbsteel::SharedParameters kSet =
      gibbsteel::load_parameters(GIBBSTEEL_SOURCE_DIR "/thermo_data/layers/liquid.json",
                                 gibbsteel::default_parameters());
  return kSet;
}
