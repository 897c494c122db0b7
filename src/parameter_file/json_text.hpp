#pragma once
/// Builds JSON text in the canonical layout: objects of the upper levels broken into
/// lines and indented, records such as terms on one line each, so that changes read
/// well in a comparison.

#include <string>
#include <string_view>

namespace gibbsteel::parameter_file {

/// `text` in quotes, with everything escaped that JSON wants escaped.
/// @throws DataError if it is not UTF-8
std::string json_string(std::string_view text);

/// @throws DataError if `value` is not finite: JSON has no such number
std::string json_number(double value);

/// One JSON object or list under construction.
class JsonText {
 public:
  enum class Layout { one_line, lines };

  static JsonText object(Layout layout) { return {'{', '}', layout}; }
  static JsonText list(Layout layout) { return {'[', ']', layout}; }

  /// `value` is JSON already.
  JsonText& add(std::string_view key, const std::string& value);
  JsonText& add(const std::string& value);
  JsonText& add_text(std::string_view key, std::string_view value);
  JsonText& add_number(std::string_view key, double value);

  bool empty() const noexcept { return body_.empty(); }
  std::string text() const;

 private:
  JsonText(char open, char close, Layout layout)
      : open_(open), close_(close), layout_(layout) {}
  void append(const std::string& item);

  char open_, close_;
  Layout layout_;
  std::string body_;
};

}  // namespace gibbsteel::parameter_file
