#include "internal/shipped_numbers.hpp"

#include <array>
#include <string_view>

#include "gibbsteel/parameter_file.hpp"

namespace gibbsteel::internal {
namespace {

/// Layers that ship and leave every number below them as it is.
constexpr std::array<std::string_view, 2> kOnlyAdd{
    "Liquid: where tool steels melt",
    "Niobium, titanium and nitrogen in tool and stainless steels"};

/// Takes " + TITLE (edition ...)" of such a layer from the front.
bool take_layer(std::string_view& rest) {
  for (const std::string_view layer : kOnlyAdd) {
    const std::string start = " + " + std::string(layer) + " (edition ";
    const auto end = rest.find(')');
    if (!rest.starts_with(start) || end == std::string_view::npos) continue;
    rest.remove_prefix(end + 1);
    return true;
  }
  return false;
}

}  // namespace

bool has_shipped_numbers(const std::string& title, const std::string& hash) {
  static const std::string shipped = default_parameters()->title();
  static const std::string hash_of_shipped = content_hash(*default_parameters());
  if (title == shipped) return hash == hash_of_shipped;
  if (!title.starts_with(shipped)) return false;
  std::string_view rest = std::string_view(title).substr(shipped.size());
  while (!rest.empty())
    if (!take_layer(rest)) return false;
  return true;
}

}  // namespace gibbsteel::internal
