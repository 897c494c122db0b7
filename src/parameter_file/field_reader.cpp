#include "field_reader.hpp"

#include <algorithm>
#include <limits>
#include <utility>

#include "../internal/control_characters.hpp"
#include "../internal/error_codes.hpp"
#include "message_text.hpp"
#include "number_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

std::string range_text(const NumberRange& range) {
  if (range.low == std::numeric_limits<double>::lowest()) return "a number";
  const char* between = !range.high_included ? " and below "
                        : range.low_included ? " to "
                                             : " and up to ";
  return std::string("a number ") + (range.low_included ? "from " : "above ") +
         number_text(range.low) + between + number_text(range.high);
}

bool inside(double value, const NumberRange& range) {
  const bool above = range.low_included ? value >= range.low : value > range.low;
  const bool below = range.high_included ? value <= range.high : value < range.high;
  return above && below;
}

void report_type(const JsonNode& node, const std::string& place,
                 const std::string& wanted, Problems& problems) {
  problems.add(codes::kWrongType, place, "is " + std::string(kind_of(node)),
               "give " + wanted);
}

bool has_entries(const JsonNode& node, const std::string& place, std::size_t most,
                 Problems& problems) {
  if (node.items.empty()) {
    problems.add(codes::kEmpty, place, "is empty", "give at least one entry");
    return false;
  }
  if (node.items.size() > most) {
    problems.add(codes::kBeyondLimit, place,
                 "has " + std::to_string(node.items.size()) + " entries",
                 "at most " + std::to_string(most) + " can stand here");
    return false;
  }
  return true;
}

}  // namespace

std::string_view kind_of(const JsonNode& node) noexcept {
  switch (node.type) {
    case JsonNode::Type::null:
      return "null";
    case JsonNode::Type::boolean:
      return "true or false";
    case JsonNode::Type::number:
      return "a number";
    case JsonNode::Type::text:
      return "a text";
    case JsonNode::Type::list:
      return "a list";
    case JsonNode::Type::object:
      break;
  }
  return "an object";
}

std::optional<double> read_number(const JsonNode& node, const std::string& place,
                                  const NumberRange& range, Problems& problems) {
  if (node.type != JsonNode::Type::number) {
    report_type(node, place, range_text(range), problems);
    return std::nullopt;
  }
  if (!inside(node.number, range)) {
    problems.add(codes::kOutOfRange, place, "is " + number_text(node.number),
                 "give " + range_text(range));
    return std::nullopt;
  }
  return node.number;
}

std::optional<std::string> read_text(const JsonNode& node, const std::string& place,
                                     Problems& problems) {
  if (node.type != JsonNode::Type::text) {
    report_type(node, place, "a text in quotes", problems);
    return std::nullopt;
  }
  if (node.text.empty()) {
    problems.add(codes::kEmpty, place, "is an empty text", "give at least one word");
    return std::nullopt;
  }
  return node.text;
}

bool name_is_usable(std::string_view name, const std::string& place,
                    Problems& problems) {
  const bool blank_ends = !name.empty() && (name.front() == ' ' || name.back() == ' ');
  const bool control = internal::without_controls(name) != name;
  if (!name.empty() && !blank_ends && !control) return true;
  problems.add(codes::kBadName, place,
               "the name " + in_quotes(name) + " cannot be used",
               "give a name without control characters and without blanks at its ends");
  return false;
}

std::optional<std::string> read_name(const JsonNode& node, const std::string& place,
                                     Problems& problems) {
  if (node.type != JsonNode::Type::text) {
    report_type(node, place, "a name in quotes", problems);
    return std::nullopt;
  }
  if (!name_is_usable(node.text, place, problems)) return std::nullopt;
  return node.text;
}

bool is_list(const JsonNode& node, const std::string& place, std::size_t most,
             Problems& problems) {
  if (node.type == JsonNode::Type::list) {
    return has_entries(node, place, most, problems);
  }
  report_type(node, place, "a list in square brackets", problems);
  return false;
}

bool is_object(const JsonNode& node, const std::string& place, std::size_t most,
               Problems& problems) {
  if (node.type == JsonNode::Type::object) {
    return has_entries(node, place, most, problems);
  }
  report_type(node, place, "an object in curly braces", problems);
  return false;
}

FieldReader::FieldReader(const JsonNode& node, std::string place, Problems& problems,
                         std::span<const std::string_view> keys)
    : node_(node),
      place_(std::move(place)),
      problems_(problems),
      readable_(node.type == JsonNode::Type::object) {
  if (!readable_) {
    report_type(node, place_, "an object in curly braces", problems_);
    return;
  }
  for (const JsonNode& item : node.items) {
    if (problems_.full()) return;
    if (std::find(keys.begin(), keys.end(), item.key) != keys.end()) continue;
    problems_.add(codes::kUnknownKey, place_of(item.key), "this key is not known here",
                  did_you_mean(item.key, keys, "give " + one_of(keys)));
  }
}

bool FieldReader::has(std::string_view key) const noexcept {
  return readable_ && node_.find(key) != nullptr;
}

const JsonNode* FieldReader::find(std::string_view key, Need need) const {
  if (!readable_) return nullptr;
  const JsonNode* node = node_.find(key);
  if (node == nullptr && need == Need::required) {
    problems_.add(codes::kMissingKey, place_,
                  "the key " + in_quotes(key) + " is missing", "add it");
  }
  return node;
}

std::optional<double> FieldReader::number(std::string_view key, Need need,
                                          const NumberRange& range) const {
  const JsonNode* node = find(key, need);
  if (node == nullptr) return std::nullopt;
  return read_number(*node, place_of(key), range, problems_);
}

std::optional<std::string> FieldReader::text(std::string_view key, Need need) const {
  const JsonNode* node = find(key, need);
  if (node == nullptr) return std::nullopt;
  return read_text(*node, place_of(key), problems_);
}

std::optional<std::string> FieldReader::name(std::string_view key, Need need) const {
  const JsonNode* node = find(key, need);
  if (node == nullptr) return std::nullopt;
  return read_name(*node, place_of(key), problems_);
}

std::optional<std::size_t> FieldReader::word(
    std::string_view key, Need need, std::span<const std::string_view> words) const {
  const JsonNode* node = find(key, need);
  if (node == nullptr) return std::nullopt;
  if (node->type != JsonNode::Type::text) {
    report_type(*node, place_of(key), one_of(words), problems_);
    return std::nullopt;
  }
  const auto found = std::find(words.begin(), words.end(), node->text);
  if (found == words.end()) {
    problems_.add(codes::kWrongWord, place_of(key), "is " + in_quotes(node->text),
                  "give " + one_of(words));
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - words.begin());
}

std::string FieldReader::place_of(std::string_view key) const {
  return place_ + "/" + pointer_step(key);
}

}  // namespace gibbsteel::parameter_file
