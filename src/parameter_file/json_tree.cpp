#include "json_tree.hpp"

#include <nlohmann/json.hpp>
#include <unordered_set>
#include <utility>

#include "../internal/error_codes.hpp"
#include "message_text.hpp"
#include "text_position.hpp"

namespace gibbsteel::parameter_file {

namespace {

using nlohmann::json;

/// Builds the tree event by event and stops at the first limit that is passed.
class TreeBuilder final : public nlohmann::json_sax<json> {
 public:
  TreeBuilder(std::string_view text, const FileLimits& limits, Problems& problems)
      : text_(text), limits_(limits), problems_(problems) {}

  JsonNode take() { return std::move(root_); }

  bool null() override { return append({}) != nullptr; }
  bool boolean(bool) override { return append_of(JsonNode::Type::boolean) != nullptr; }
  bool number_integer(number_integer_t value) override {
    return add_number(static_cast<double>(value));
  }
  bool number_unsigned(number_unsigned_t value) override {
    return add_number(static_cast<double>(value));
  }
  bool number_float(number_float_t value, const string_t& written) override {
    const std::string_view digits =
        std::string_view(written).substr(0, written.find_first_of("eE"));
    if (value == 0.0 && digits.find_first_of("123456789") != std::string_view::npos) {
      problems_.add(codes::kNumberTooExtreme, next_pointer(),
                    "the number " + written.substr(0, 40) + " is too close to 0",
                    "write 0, or a number of at least 2.3e-308 in size");
    }
    return add_number(value);
  }
  bool string(string_t& value) override {
    if (value.size() > limits_.text_length) {
      return stop_long(next_pointer(), "the text", value.size(), limits_.text_length);
    }
    JsonNode* node = append_of(JsonNode::Type::text);
    if (node != nullptr) node->text = std::move(value);
    return node != nullptr;
  }
  bool binary(binary_t&) override { return false; }  // cannot occur in JSON text
  bool key(string_t& name) override {
    if (name.size() > limits_.name_length) {
      return stop_long(path(open_.size() - 1), "a key", name.size(),
                       limits_.name_length);
    }
    key_ = std::move(name);
    return true;
  }
  bool start_object(std::size_t) override { return open(JsonNode::Type::object); }
  bool start_array(std::size_t) override { return open(JsonNode::Type::list); }
  bool end_object() override {
    drop_repeated_keys();
    open_.pop_back();
    return true;
  }
  bool end_array() override {
    open_.pop_back();
    return true;
  }
  bool parse_error(std::size_t position, const std::string& token,
                   const nlohmann::detail::exception& error) override;

 private:
  bool stop(std::string_view code, const std::string& where, const std::string& what,
            const std::string& remedy) {
    problems_.add(code, where, what, remedy);
    return false;
  }
  bool stop_long(const std::string& where, const std::string& what, std::size_t length,
                 std::size_t most) {
    return stop(codes::kBeyondLimit, where,
                what + " is " + std::to_string(length) + " bytes long",
                "at most " + std::to_string(most) + " bytes can stand here");
  }
  JsonNode* append(JsonNode node);
  JsonNode* append_of(JsonNode::Type type) {
    JsonNode node;
    node.type = type;
    return append(std::move(node));
  }
  bool add_number(double value) {
    JsonNode* node = append_of(JsonNode::Type::number);
    if (node != nullptr) node->number = value;
    return node != nullptr;
  }
  bool open(JsonNode::Type type);
  void drop_repeated_keys();
  std::string path(std::size_t levels) const;
  std::string next_pointer() const;

  std::string_view text_;
  const FileLimits& limits_;
  Problems& problems_;
  JsonNode root_;
  std::vector<JsonNode*> open_;  // containers from the root down; each is the last item
  std::string key_;
  std::size_t values_ = 0;
};

JsonNode* TreeBuilder::append(JsonNode node) {
  if (++values_ > limits_.values) {
    stop(codes::kBeyondLimit, "",
         "holds more than " + std::to_string(limits_.values) + " values",
         "split it into layers");
    return nullptr;
  }
  if (open_.empty()) {
    root_ = std::move(node);
    return &root_;
  }
  JsonNode& parent = *open_.back();
  if (parent.type == JsonNode::Type::object) node.key = std::move(key_);
  parent.items.push_back(std::move(node));
  return &parent.items.back();
}

bool TreeBuilder::open(JsonNode::Type type) {
  if (open_.size() >= limits_.depth) {
    return stop(codes::kBeyondLimit, next_pointer(),
                "lists and objects are nested more than " +
                    std::to_string(limits_.depth) + " deep",
                "no part of a parameter file needs that; remove what is below");
  }
  JsonNode* node = append_of(type);
  if (node != nullptr) open_.push_back(node);
  return node != nullptr;
}

/// Pointer through the open containers to the last value inside number `levels`.
std::string TreeBuilder::path(std::size_t levels) const {
  std::string result;
  for (std::size_t i = 0; i < levels; ++i) {
    const JsonNode& node = *open_[i];
    result += '/';
    result += node.type == JsonNode::Type::object
                  ? pointer_step(node.items.back().key)
                  : std::to_string(node.items.size() - 1);
  }
  return result;
}

/// Pointer to the value that is about to enter the tree.
std::string TreeBuilder::next_pointer() const {
  if (open_.empty()) return "";
  const JsonNode& node = *open_.back();
  const std::string step = node.type == JsonNode::Type::object
                               ? pointer_step(key_)
                               : std::to_string(node.items.size());
  return path(open_.size() - 1) + "/" + step;
}

/// Reports each key that stands twice in the object just ended and keeps the first.
void TreeBuilder::drop_repeated_keys() {
  std::vector<JsonNode>& items = open_.back()->items;
  std::unordered_set<std::string_view> seen;
  std::unordered_set<std::string_view> repeated;
  std::vector<bool> keep(items.size(), true);
  for (std::size_t i = 0; i < items.size(); ++i) {
    keep[i] = seen.insert(items[i].key).second;
    if (keep[i] || !repeated.insert(items[i].key).second) continue;
    problems_.add(codes::kKeyTwice,
                  path(open_.size() - 1) + "/" + pointer_step(items[i].key),
                  "this key stands more than once in its object",
                  "keep one of them, or rename the other");
  }
  if (repeated.empty()) return;
  std::vector<JsonNode> kept;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (keep[i]) kept.push_back(std::move(items[i]));
  }
  items = std::move(kept);
}

bool TreeBuilder::parse_error(std::size_t position, const std::string& token,
                              const nlohmann::detail::exception& error) {
  constexpr int kNumberOverflow = 406;  // the JSON library's own number for it
  if (error.id == kNumberOverflow) {
    return stop(codes::kNumberTooExtreme, next_pointer(),
                "the number " + token.substr(0, 40) + " is too large",
                "write a number below 1.8e308 in size");
  }
  const std::size_t last_good = text_.find_last_not_of(" \t\r\n");
  if (last_good == std::string_view::npos) {
    return stop(codes::kNotJson, "", "is empty", "give a parameter file");
  }
  if (position > last_good + 1) {
    return stop(codes::kNotJson, line_and_column(text_, last_good),
                "the text ends too early",
                "give the whole file; a bracket or quote is still open");
  }
  return stop(
      codes::kNotJson, line_and_column(text_, position - 1), "this is not JSON",
      "look for a missing or extra comma, quote or bracket here or just before");
}

}  // namespace

const JsonNode* JsonNode::find(std::string_view wanted) const noexcept {
  for (const JsonNode& item : items) {
    if (item.key == wanted) return &item;
  }
  return nullptr;
}

std::optional<JsonNode> parse_json(std::string_view text, const FileLimits& limits,
                                   Problems& problems) {
  if (text.size() > limits.bytes) {
    problems.add(codes::kBeyondLimit, "",
                 "has more than " + std::to_string(limits.bytes) + " bytes",
                 "split it into layers");
    return std::nullopt;
  }
  const std::size_t bad = first_not_utf8(text);
  if (bad != std::string_view::npos) {
    problems.add(codes::kNotUtf8, line_and_column(text, bad), "this is not UTF-8 text",
                 "save the file as UTF-8");
    return std::nullopt;
  }
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
  if (text.substr(0, 3) == kByteOrderMark) text.remove_prefix(3);
  TreeBuilder builder(text, limits, problems);
  const bool complete = json::sax_parse(text.begin(), text.end(), &builder);
  if (!complete) return std::nullopt;
  return builder.take();
}

}  // namespace gibbsteel::parameter_file
