#pragma once
/// Measurements made up from a parameter set that is shifted, for the tests of
/// calibrations. Everything here is invented. The sets below are the first edition of
/// the shipped file: without standard deviations.

#include <string>
#include <vector>

#include "first_edition.hpp"
#include "gibbsteel/calibrate.hpp"
#include "gibbsteel/parameter_file.hpp"
#include "parameter_file/parameter_numbers.hpp"

namespace calibration_helpers {

using namespace gibbsteel;

struct Shift {
  std::string place;
  double by = 0.0;
};

/// Numbers of M6C, M7C3 and of tungsten and vanadium in austenite and MC that carbides
/// and matrix of the steels below feel.
inline const std::vector<Shift>& shifts() {
  static const std::vector<Shift> kShifts{
      {"/phases/M6C/energy/2/terms/1", -2000.0},
      {"/phases/austenite/energy/56/terms/1", 1500.0},
      {"/phases/austenite/energy/59/terms/1", -3000.0},
  };
  return kShifts;
}

inline SharedParameters shifted_set(const std::vector<Shift>& shifts) {
  ParameterSet set = *first_edition();
  for (const auto& number : parameter_file::parameter_numbers(set))
    for (const Shift& shift : shifts)
      if (number.place == shift.place)
        parameter_file::number_in(set, number) += shift.by;
  return std::make_shared<const ParameterSet>(std::move(set));
}

inline std::vector<FreeNumber> freed(const std::vector<Shift>& shifts,
                                     double prior_deviation = 10000.0) {
  std::vector<FreeNumber> numbers;
  for (const Shift& shift : shifts) numbers.push_back({shift.place, prior_deviation});
  return numbers;
}

struct Heat {
  std::string name;
  NamedValues weight_percent;
};

inline const std::vector<Heat>& heats() {
  static const std::vector<Heat> kHeats{
      {"M2", {{"C", 0.85}, {"Cr", 4.1}, {"Mo", 5.0}, {"W", 6.2}, {"V", 1.9}}},
      {"T1", {{"C", 0.75}, {"Cr", 4.1}, {"W", 18.0}, {"V", 1.1}}},
      {"D2", {{"C", 1.55}, {"Cr", 11.8}, {"Mo", 0.8}, {"V", 0.8}}},
      {"A2", {{"C", 1.0}, {"Cr", 5.2}, {"Mo", 1.1}, {"V", 0.25}}}};
  return kHeats;
}

/// Four quantities of each heat at each temperature as `truth` has them, with an
/// uncertainty of this part of the value (and a little where there is no carbide).
inline std::vector<Measurement> measured(const SharedParameters& truth,
                                         const std::vector<double>& celsius,
                                         double relative_uncertainty) {
  std::vector<Measurement> all;
  for (const Heat& heat : heats())
    for (const double c : celsius) {
      const Temperature t = Temperature::celsius(c);
      const Steel steel(heat.weight_percent, {heat.name, truth, false});
      const State state = steel.soak(t);
      for (const Quantity& q :
           {quantities::matrix("C"), quantities::matrix("Cr"), quantities::matrix("V"),
            quantities::carbide_volume_percent()})
        all.push_back({heat.name, heat.weight_percent, t, q, q.value(state),
                       relative_uncertainty * (q.value(state) + 0.1),
                       heat.name + "/" + std::to_string(all.size())});
    }
  return all;
}

}  // namespace calibration_helpers
