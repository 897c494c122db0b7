#include "number_text.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace gibbsteel::parameter_file {

std::string number_text(double value) {
  if (value == 0.0) return "0";  // also for -0.0, which JSON readers do not keep
  constexpr double kFixedFrom = 1e-4;
  constexpr double kFixedBelow = 1e15;
  const double size = std::abs(value);
  const auto format = (size >= kFixedFrom && size < kFixedBelow)
                          ? std::chars_format::fixed
                          : std::chars_format::scientific;
  std::array<char, 64> buffer{};
  const auto result =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format);
  return {buffer.data(), result.ptr};
}

}  // namespace gibbsteel::parameter_file
