#include <cstdint>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel {

std::string content_hash(const ParameterSet& set) {
  // FNV-1a, 64 bits: Fowler, Noll and Vo.
  std::uint64_t hash = 14695981039346656037u;
  for (const char c : write_parameters(set)) {
    hash ^= static_cast<unsigned char>(c);
    hash *= 1099511628211u;
  }
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string text(16, '0');
  for (std::size_t i = 16; i-- > 0; hash >>= 4) text[i] = kDigits[hash & 15];
  return text;
}

}  // namespace gibbsteel
