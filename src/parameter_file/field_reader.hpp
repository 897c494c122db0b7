#pragma once
/// Reads values of known types out of a JSON tree and reports each one that does not
/// fit.

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "json_tree.hpp"
#include "problems.hpp"

namespace gibbsteel::parameter_file {

enum class Need { required, optional };

struct NumberRange {
  double low;
  double high;
  bool low_included = true;
  bool high_included = true;
};

/// "a text", "a list", ... for messages.
std::string_view kind_of(const JsonNode& node) noexcept;

/// Each returns nothing after reporting what is wrong at `place`.
std::optional<double> read_number(const JsonNode& node, const std::string& place,
                                  const NumberRange& range, Problems& problems);
std::optional<std::string> read_text(const JsonNode& node, const std::string& place,
                                     Problems& problems);
/// A text that can serve as a name: no control characters, no blanks at the ends.
std::optional<std::string> read_name(const JsonNode& node, const std::string& place,
                                     Problems& problems);
bool name_is_usable(std::string_view name, const std::string& place,
                    Problems& problems);
/// True if the node is a list (or object) with at least one and at most `most` entries.
bool is_list(const JsonNode& node, const std::string& place, std::size_t most,
             Problems& problems);
bool is_object(const JsonNode& node, const std::string& place, std::size_t most,
               Problems& problems);

/// One object whose keys are known. Unknown keys are reported when it is made.
class FieldReader {
 public:
  FieldReader(const JsonNode& node, std::string place, Problems& problems,
              std::span<const std::string_view> keys);

  /// Nothing can be read where the node is no object.
  bool readable() const noexcept { return readable_; }
  bool has(std::string_view key) const noexcept;
  const JsonNode* find(std::string_view key, Need need) const;
  std::optional<double> number(std::string_view key, Need need,
                               const NumberRange& range) const;
  std::optional<std::string> text(std::string_view key, Need need) const;
  std::optional<std::string> name(std::string_view key, Need need) const;
  /// Position of the text among `words`.
  std::optional<std::size_t> word(std::string_view key, Need need,
                                  std::span<const std::string_view> words) const;

  const std::string& place() const noexcept { return place_; }
  std::string place_of(std::string_view key) const;

 private:
  const JsonNode& node_;
  std::string place_;
  Problems& problems_;
  bool readable_;
};

}  // namespace gibbsteel::parameter_file
