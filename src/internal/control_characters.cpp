#include "internal/control_characters.hpp"

namespace gibbsteel::internal {
namespace {

unsigned byte_at(std::string_view text, std::size_t i) noexcept {
  return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
}

bool within(unsigned value, unsigned low, unsigned high) noexcept {
  return value >= low && value <= high;
}

}  // namespace

std::size_t control_size(std::string_view text) noexcept {
  const unsigned one = byte_at(text, 0), two = byte_at(text, 1),
                 three = byte_at(text, 2);
  if (text.empty()) return 0;
  if (one < 0x20u || one == 0x7Fu) return 1;
  if (one == 0xC2u && within(two, 0x80u, 0x9Fu)) return 2;  // U+0080 to U+009F
  if (one == 0xD8u && two == 0x9Cu) return 2;               // U+061C
  if (one != 0xE2u) return 0;
  const bool general = two == 0x80u && (within(three, 0x8Eu, 0x8Fu) ||  // U+200E, 200F
                                        within(three, 0xA8u, 0xAEu));   // U+2028-202E
  const bool isolates = two == 0x81u && within(three, 0xA6u, 0xA9u);    // U+2066-2069
  return general || isolates ? 3 : 0;
}

std::string without_controls(std::string_view text) {
  std::string result;
  while (!text.empty()) {
    const std::size_t size = control_size(text);
    result += size > 0 ? '?' : text.front();
    text.remove_prefix(size > 0 ? size : 1);
  }
  return result;
}

}  // namespace gibbsteel::internal
