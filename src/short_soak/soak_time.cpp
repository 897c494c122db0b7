#include "short_soak/soak_time.hpp"

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"

namespace gibbsteel::internal {

void check_soak_time(const std::vector<double>& minutes, double micrometres) {
  constexpr double kSmallest = 0.05, kLargest = 50.0;
  std::vector<Problem> problems;
  for (const double m : minutes)
    if (!(m > 0.0 && m <= kMostMinutes))
      problems.push_back({std::string(codes::kSoakTime), "minutes", "is " + shortest(m),
                          "give minutes at temperature, above 0 and at most 100000"});
  if (!(micrometres >= kSmallest && micrometres <= kLargest))
    problems.push_back({std::string(codes::kSoakTime), "particle_micrometres",
                        "is " + shortest(micrometres),
                        "give the diameter of annealed cementite in micrometres, 0.05 "
                        "to 50; 0.5 to 1 is common"});
  if (!problems.empty()) throw InputError(std::move(problems));
}

std::string minutes_text(double minutes) {
  return rounded_or(minutes, 4, "n/a") + " min";
}

std::string after(double minutes) { return "state after " + minutes_text(minutes); }

}  // namespace gibbsteel::internal
