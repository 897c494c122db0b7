#pragma once
/// A JSON text as a tree that keeps the order of keys. Only json_tree.cpp knows the
/// JSON library.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "gibbsteel/parameter_file.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

struct JsonNode {
  enum class Type { null, boolean, number, text, list, object };

  Type type = Type::null;
  double number = 0.0;
  std::string text;             ///< of a text value
  std::string key;              ///< under which an object holds this value
  std::vector<JsonNode> items;  ///< of a list or an object, in the order of the file

  /// Member of an object; nullptr if there is none.
  const JsonNode* find(std::string_view wanted) const noexcept;
};

/// Checks bytes, UTF-8, depth, counts and repeated keys on the way. Nothing is returned
/// where the text cannot be read to its end; `problems` then says why. A byte order
/// mark at the start is skipped.
std::optional<JsonNode> parse_json(std::string_view text, const FileLimits& limits,
                                   Problems& problems);

}  // namespace gibbsteel::parameter_file
