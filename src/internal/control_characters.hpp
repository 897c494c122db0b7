#pragma once
/// Characters that could steer a terminal, forge a second line or turn the order of a
/// text around.

#include <string>
#include <string_view>

namespace gibbsteel::internal {

/// Bytes from the start of `text` (UTF-8) that are such a character; 0 when it starts
/// with another one. C0 and C1 controls, DEL, line and paragraph separators and the
/// marks of writing direction.
std::size_t control_size(std::string_view text) noexcept;
/// Every such character as a question mark.
std::string without_controls(std::string_view text);

}  // namespace gibbsteel::internal
