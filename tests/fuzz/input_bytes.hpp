#pragma once
/// Numbers and texts out of the bytes of a fuzzing input, one after the other; zeros
/// when the bytes have run out.

#include <array>
#include <cstdint>
#include <cstring>
#include <limits>
#include <string>

namespace gibbsteel::fuzz {

class InputBytes {
 public:
  InputBytes(const std::uint8_t* data, std::size_t size) : data_(data), left_(size) {}

  bool empty() const { return left_ == 0; }

  unsigned byte() {
    if (left_ == 0) return 0;
    --left_;
    return *data_++;
  }

  /// From 0 to `count` - 1; `count` at most 65536.
  std::size_t index(std::size_t count) {
    const std::size_t high = count > 256 ? byte() : 0;
    return (256 * high + byte()) % count;
  }

  /// From 0 to 1 in 65536 steps.
  double share() {
    const unsigned high = byte();
    return (256.0 * high + byte()) / 65535.0;
  }

  /// The bit pattern of any double.
  double any_double() {
    std::array<std::uint8_t, sizeof(double)> bytes{};
    for (auto& b : bytes) b = static_cast<std::uint8_t>(byte());
    double value = 0.0;
    std::memcpy(&value, bytes.data(), sizeof(double));
    return value;
  }

  /// A number that somebody may hand over: mostly of a sensible size between 0 and
  /// `usual`, now and then one from the edge of what a double holds.
  double number(double usual) {
    using Limits = std::numeric_limits<double>;
    static constexpr std::array kEdges{0.0,
                                       -0.0,
                                       -1.0,
                                       1e-30,
                                       1e-300,
                                       Limits::denorm_min(),
                                       Limits::min(),
                                       Limits::max(),
                                       Limits::infinity(),
                                       -Limits::infinity(),
                                       Limits::quiet_NaN(),
                                       Limits::epsilon()};
    const unsigned kind = byte();
    if (kind < 200) return usual * share();
    if (kind < 220) return usual * share() * 1e-6;
    if (kind < 230) return usual * share() * 1e-12;
    if (kind < 245) return kEdges[index(kEdges.size())];
    return any_double();
  }

  /// Up to `longest` bytes, ended by a line feed that is left out.
  std::string text(std::size_t longest) {
    std::string result;
    while (left_ > 0 && result.size() < longest) {
      const char c = static_cast<char>(byte());
      if (c == '\n') break;
      result += c;
    }
    return result;
  }

  /// Everything that is left.
  std::string rest() {
    std::string result(reinterpret_cast<const char*>(data_), left_);
    data_ += left_;
    left_ = 0;
    return result;
  }

 private:
  const std::uint8_t* data_;
  std::size_t left_;
};

}  // namespace gibbsteel::fuzz
