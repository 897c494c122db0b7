#include "internal/quantity_condition.hpp"

#include "internal/text_table.hpp"

namespace gibbsteel::internal {
namespace {

bool is_short(const std::string& quantity) {
  return quantity.ends_with(kShortSoakName);
}

std::size_t timed_from(const std::string& quantity) {
  return quantity.rfind(kTimedSoakName);
}

}  // namespace

std::string condition_of(const std::string& quantity) {
  if (is_short(quantity)) return "short-soak limit";
  const std::size_t at = timed_from(quantity);
  return at == std::string::npos ? "long-hold limit" : quantity.substr(at + 2);
}

std::string caution_of(const std::string& quantity) {
  if (is_short(quantity)) return kShortSoakCaution;
  return timed_from(quantity) == std::string::npos ? kCaution : kTimedSoakCaution;
}

std::string long_hold_mark(const std::string& quantity) {
  const bool long_hold = condition_of(quantity) == "long-hold limit";
  return long_hold ? "" : ", long hold";
}

}  // namespace gibbsteel::internal
