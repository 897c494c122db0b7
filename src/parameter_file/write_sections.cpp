#include "write_sections.hpp"

#include "json_text.hpp"
#include "write_phase.hpp"

namespace gibbsteel::parameter_file {

namespace {

constexpr auto kOneLine = JsonText::Layout::one_line;
constexpr auto kLines = JsonText::Layout::lines;

}  // namespace

std::string format_json() {
  auto format = JsonText::object(kOneLine);
  format.add_text("name", "gibbsteel parameter file").add_number("version", 1.0);
  return format.text();
}

std::string sources_json(const std::vector<Source>& sources) {
  auto object = JsonText::object(kLines);
  for (const Source& source : sources) {
    auto item = JsonText::object(kOneLine);
    item.add_text("citation", source.citation);
    if (!source.fitted_to_check_records.empty()) {
      auto list = JsonText::list(kOneLine);
      for (const auto& record : source.fitted_to_check_records)
        list.add(json_string(record));
      item.add("fitted_to_check_records", list.text());
    }
    object.add(source.key, item.text());
  }
  return object.text();
}

std::string correlations_json(const std::vector<Correlation>& correlations) {
  auto list = JsonText::list(kLines);
  for (const Correlation& correlation : correlations)
    list.add(correlation_json(correlation));
  return list.text();
}

}  // namespace gibbsteel::parameter_file
