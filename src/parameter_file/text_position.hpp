#pragma once
/// Places in a text, and whether its bytes are UTF-8.

#include <cstddef>
#include <string>
#include <string_view>

namespace gibbsteel::parameter_file {

/// "line 3, column 7" of the byte at `offset`; columns count characters from 1.
std::string line_and_column(std::string_view text, std::size_t offset);

/// Offset of the first byte that is not UTF-8 (over-long forms, surrogates and code
/// points above U+10FFFF are not); npos if all is well.
std::size_t first_not_utf8(std::string_view text) noexcept;

}  // namespace gibbsteel::parameter_file
