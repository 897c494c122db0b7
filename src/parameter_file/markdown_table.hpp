#pragma once
/// Tables in Markdown.

#include <string>
#include <vector>

namespace gibbsteel::parameter_file {

class MarkdownTable {
 public:
  explicit MarkdownTable(const std::vector<std::string>& heads);
  /// Bars and line breaks inside a cell are made harmless.
  void add(const std::vector<std::string>& cells);
  const std::string& text() const noexcept { return text_; }

 private:
  std::string text_;
};

}  // namespace gibbsteel::parameter_file
