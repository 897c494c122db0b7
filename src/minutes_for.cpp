#include "gibbsteel/minutes_for.hpp"

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

#include "gibbsteel/errors.hpp"
#include "internal/error_codes.hpp"
#include "internal/number_format.hpp"
#include "internal/quantity_checks.hpp"
#include "short_soak/soak_time.hpp"
#include "short_soak/timed_dissolution.hpp"

namespace gibbsteel {
namespace {

using internal::significant;
using internal::TimedDissolution;

void check(const State& state, const std::string& element, double weight_percent) {
  internal::require_element(element);
  if (!std::isfinite(weight_percent))
    throw InputError({{std::string(codes::kTargetNotFinite), "weight_percent",
                       "is not a finite number", "give weight percent of the matrix"}});
  std::vector<Problem> problems;
  internal::check_wish(quantities::matrix(element), weight_percent, "weight_percent",
                       problems);
  if (!problems.empty()) throw InputError(std::move(problems));
  if (state.usable() && !(state.matrix.weight_percent[element] > 0.0))
    throw InputError(
        {{std::string(codes::kNotInState), "matrix",
          "there is no '" + element + "' in it", "name an element of the steel"}});
}

/// Share of cementite beside which the matrix holds the content.
/// @pre it lies between those at both ends
double share_at(const TimedDissolution& soak, const std::string& element,
                double wanted) {
  const auto excess = [&](double share) {
    return soak.matrix_weight_percent(share)[element] - wanted;
  };
  const double low = soak.end(), high = soak.stop();
  const double at_low = excess(low), at_high = excess(high);
  // The content of one end, to rounding.
  if (!(at_low * at_high < 0.0))
    return std::abs(at_low) <= std::abs(at_high) ? low : high;
  std::uintmax_t steps = 100;
  const auto [a, b] = boost::math::tools::toms748_solve(
      excess, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(45),
      steps);
  return 0.5 * (a + b);
}

/// Significant digits, four or more, that tell two numbers apart.
int telling_digits(double a, double b) {
  int digits = 4;
  while (digits < 12 && significant(a, digits) == significant(b, digits)) ++digits;
  return digits;
}

std::string text_of(const MinutesFor& found, const std::string& element,
                    double weight_percent, double long_hold) {
  const std::string what =
      element + " in the matrix is " + significant(weight_percent, 4) + " wt%";
  const auto minutes = [](double m) { return internal::rounded_or(m, 2, "n/a"); };
  switch (found.status) {
    case MinutesStatus::found:
      return what + " after " + minutes(found.minutes) +
             " min at temperature (size and diffusion known to a factor of three: " +
             minutes(found.low_minutes) + " to " + minutes(found.high_minutes) +
             " min)";
    case MinutesStatus::at_once:
      return what + " or beyond as soon as the section is at temperature: " +
             significant(found.at_first, 4) + " wt% by the short-soak limit";
    case MinutesStatus::too_long:
      return what + " only after more than 100000 min";
    case MinutesStatus::never_reached:
      break;
  }
  const int digits = telling_digits(found.at_last, weight_percent);
  return element + " in the matrix starts at " + significant(found.at_first, 4) +
         " wt%, approaches " + significant(found.at_last, digits) +
         " and never reaches " + significant(weight_percent, digits) +
         "; the long-hold limit is " + significant(long_hold, 4) + " wt%";
}

/// Ferrite beside the content would make it wrong.
void check_ferrite(const State& state, const TimedDissolution& soak, double share,
                   const std::string& place) {
  internal::check_no_ferrite(soak.matrix_weight_percent(share), state.temperature,
                             soak.annealed().balance.parameters, place,
                             internal::kLongerOrHotter);
}

void set_minutes(MinutesFor& found, double minutes) {
  found.minutes = minutes;
  found.low_minutes = minutes / internal::kTimeFactor;
  found.high_minutes = internal::kTimeFactor * minutes;
}

/// Status and minutes of a content that is reached.
void search(const State& state, const TimedDissolution& soak,
            const std::string& element, double weight_percent, MinutesFor& found) {
  const double share = share_at(soak, element, weight_percent);
  const auto minutes = soak.minutes_to(share);
  if (!minutes) return;
  found.status = *minutes > internal::kMostMinutes ? MinutesStatus::too_long
                                                   : MinutesStatus::found;
  if (found.status == MinutesStatus::too_long) return;
  check_ferrite(state, soak, share, internal::after(*minutes));
  set_minutes(found, *minutes);
}

}  // namespace

std::string_view to_string(MinutesStatus status) noexcept {
  switch (status) {
    case MinutesStatus::found:
      return "found";
    case MinutesStatus::at_once:
      return "at once";
    case MinutesStatus::never_reached:
      return "never reached";
    case MinutesStatus::too_long:
      return "too long";
  }
  return "unknown";
}

MinutesFor minutes_for(const State& state, const std::string& element,
                       double weight_percent, const TimedSoakOptions& options) {
  internal::check_soak_time({}, options.particle_micrometres);
  check(state, element, weight_percent);
  const TimedDissolution soak(state, options.particle_micrometres, options.annealed);
  MinutesFor found;
  found.at_first = soak.matrix_weight_percent(soak.stop())[element];
  found.at_last = soak.matrix_weight_percent(soak.end())[element];
  const double margin = 1e-9 * std::abs(weight_percent);
  const bool rising = found.at_last >= found.at_first;
  const auto beyond = [&](double value) {
    return rising ? value >= weight_percent - margin : value <= weight_percent + margin;
  };
  if (beyond(found.at_first)) {
    check_ferrite(state, soak, soak.stop(), "state");
    found.status = MinutesStatus::at_once;
    set_minutes(found, 0.0);
  } else if (beyond(found.at_last)) {
    search(state, soak, element, weight_percent, found);
  }
  found.text =
      text_of(found, element, weight_percent, state.matrix.weight_percent[element]);
  return found;
}

}  // namespace gibbsteel
