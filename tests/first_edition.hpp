#pragma once
/// The first edition of the shipped file, for tests whose purpose needs its state: no
/// standard deviations, no M23C6 in high-speed steels.

#include "gibbsteel/parameter_file.hpp"

inline gibbsteel::SharedParameters first_edition() {
  static const gibbsteel::SharedParameters kSet = gibbsteel::load_parameters(
      GIBBSTEEL_SOURCE_DIR "/thermo_data/editions/2026-11-25.json");
  return kSet;
}
