#include "markdown_table.hpp"

#include <string_view>

namespace gibbsteel::parameter_file {

namespace {

void append_cell(std::string& row, std::string_view text) {
  row += ' ';
  for (const char c : text) {
    if (c == '|') row += '\\';
    row += c == '\n' ? ' ' : c;
  }
  row += " |";
}

}  // namespace

MarkdownTable::MarkdownTable(const std::vector<std::string>& heads) {
  add(heads);
  text_ += '|';
  for (std::size_t i = 0; i < heads.size(); ++i) text_ += " --- |";
  text_ += '\n';
}

void MarkdownTable::add(const std::vector<std::string>& cells) {
  text_ += '|';
  for (const std::string& cell : cells) append_cell(text_, cell);
  text_ += '\n';
}

}  // namespace gibbsteel::parameter_file
