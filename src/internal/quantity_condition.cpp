#include "internal/quantity_condition.hpp"

#include <string_view>

#include "gibbsteel/timed_soak.hpp"
#include "internal/number_format.hpp"
#include "internal/text_table.hpp"

namespace gibbsteel::internal {
namespace {

constexpr std::size_t kNowhere = std::string::npos;

std::size_t timed_from(const std::string& quantity) {
  return quantity.rfind(kTimedSoakName);
}

/// Where what goes on after the name of the limit begins.
std::size_t short_to(const std::string& quantity) {
  const std::size_t at = quantity.rfind(kShortSoakName);
  if (at == kNowhere) return at;
  const std::size_t end = at + std::string_view(kShortSoakName).size();
  return end == quantity.size() || quantity[end] == ',' ? end : kNowhere;
}

}  // namespace

std::string unusual(double particle_micrometres,
                    const std::optional<Temperature>& annealed_at) {
  std::string text;
  if (particle_micrometres != TimedSoakOptions{}.particle_micrometres)
    text += ", M3C of " + shortest(particle_micrometres) + " micrometre";
  if (annealed_at)
    text += ", annealed at " + rounded_or(annealed_at->in_celsius(), 6, "n/a") + " C";
  return text;
}

std::string condition_of(const std::string& quantity) {
  const std::size_t at = timed_from(quantity);
  if (at != kNowhere) return quantity.substr(at + 2);
  const std::size_t end = short_to(quantity);
  return end == kNowhere ? "long-hold limit"
                         : "short-soak limit" + quantity.substr(end);
}

std::string caution_of(const std::string& quantity) {
  if (timed_from(quantity) != kNowhere) return kTimedSoakCaution;
  return short_to(quantity) == kNowhere ? kCaution : kShortSoakCaution;
}

std::string long_hold_mark(const std::string& quantity) {
  const bool long_hold = condition_of(quantity) == "long-hold limit";
  return long_hold ? "" : ", long hold";
}

}  // namespace gibbsteel::internal
