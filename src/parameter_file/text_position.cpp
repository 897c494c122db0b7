#include "text_position.hpp"

#include <algorithm>

namespace gibbsteel::parameter_file {

namespace {

struct Lead {
  std::size_t length = 0;      // of the whole character [bytes]; 0: cannot lead
  unsigned second_low = 0x80;  // range of the second byte
  unsigned second_high = 0xBF;
};

/// Table 3-7 of the Unicode standard (well-formed UTF-8 byte sequences).
Lead lead_of(unsigned byte) noexcept {
  if (byte < 0x80) return {1, 0, 0};
  if (byte < 0xC2) return {};
  if (byte < 0xE0) return {2, 0x80, 0xBF};
  if (byte == 0xE0) return {3, 0xA0, 0xBF};
  if (byte == 0xED) return {3, 0x80, 0x9F};
  if (byte < 0xF0) return {3, 0x80, 0xBF};
  if (byte == 0xF0) return {4, 0x90, 0xBF};
  if (byte < 0xF4) return {4, 0x80, 0xBF};
  if (byte == 0xF4) return {4, 0x80, 0x8F};
  return {};
}

unsigned byte_at(std::string_view text, std::size_t at) noexcept {
  return static_cast<unsigned char>(text[at]);
}

}  // namespace

std::string line_and_column(std::string_view text, std::size_t offset) {
  const std::string_view before = text.substr(0, std::min(offset, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t line_end = before.rfind('\n');
  const std::string_view on_line =
      line_end == std::string_view::npos ? before : before.substr(line_end + 1);
  const auto column = 1 + std::count_if(on_line.begin(), on_line.end(), [](char byte) {
                        return (static_cast<unsigned char>(byte) & 0xC0u) != 0x80u;
                      });
  return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

std::size_t first_not_utf8(std::string_view text) noexcept {
  std::size_t at = 0;
  while (at < text.size()) {
    const Lead lead = lead_of(byte_at(text, at));
    if (lead.length == 0 || at + lead.length > text.size()) return at;
    for (std::size_t i = 1; i < lead.length; ++i) {
      const unsigned low = i == 1 ? lead.second_low : 0x80u;
      const unsigned high = i == 1 ? lead.second_high : 0xBFu;
      const unsigned byte = byte_at(text, at + i);
      if (byte < low || byte > high) return at;
    }
    at += lead.length;
  }
  return std::string_view::npos;
}

}  // namespace gibbsteel::parameter_file
