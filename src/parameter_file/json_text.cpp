#include "json_text.hpp"

#include <cmath>

#include "../internal/error_codes.hpp"
#include "gibbsteel/errors.hpp"
#include "number_text.hpp"
#include "text_position.hpp"

namespace gibbsteel::parameter_file {

namespace {

/// Indents every line of `text` by two spaces.
std::string indented(const std::string& text) {
  std::string result = "  ";
  for (const char c : text) {
    result += c;
    if (c == '\n') result += "  ";
  }
  return result;
}

[[noreturn]] void refuse(const std::string& what, const std::string& remedy) {
  throw DataError({{std::string(codes::kCannotWrite), "parameter set", what, remedy}});
}

}  // namespace

std::string json_string(std::string_view text) {
  if (first_not_utf8(text) != std::string_view::npos)
    refuse("holds a text that is not UTF-8", "give every text as UTF-8");
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string result = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\') {
      result += '\\';
      result += c;
    } else if (c == '\n') {
      result += "\\n";
    } else if (c == '\t') {
      result += "\\t";
    } else if (byte < 0x20) {
      result += "\\u00";
      result += kDigits[byte >> 4];
      result += kDigits[byte & 15];
    } else {
      result += c;
    }
  }
  return result + '"';
}

std::string json_number(double value) {
  if (!std::isfinite(value))
    refuse("holds a number that is not finite", "give finite numbers only");
  return number_text(value);
}

void JsonText::append(const std::string& item) {
  const bool first = body_.empty();
  if (layout_ == Layout::one_line)
    body_ += (first ? "" : ", ") + item;
  else
    body_ += (first ? "" : ",\n") + indented(item);
}

JsonText& JsonText::add(std::string_view key, const std::string& value) {
  append(json_string(key) + ": " + value);
  return *this;
}

JsonText& JsonText::add(const std::string& value) {
  append(value);
  return *this;
}

JsonText& JsonText::add_text(std::string_view key, std::string_view value) {
  return add(key, json_string(value));
}

JsonText& JsonText::add_number(std::string_view key, double value) {
  return add(key, json_number(value));
}

std::string JsonText::text() const {
  if (layout_ == Layout::one_line || body_.empty()) return open_ + body_ + close_;
  return std::string(1, open_) + "\n" + body_ + "\n" + close_;
}

}  // namespace gibbsteel::parameter_file
