#include "write_layer.hpp"

#include "json_text.hpp"
#include "write_phase.hpp"
#include "write_sections.hpp"

namespace gibbsteel::parameter_file {

std::string write_layer(const ParameterSet& part) {
  constexpr auto kLines = JsonText::Layout::lines;
  const FileRecord& file = part.files.front();
  auto phases = JsonText::object(kLines);
  for (const Phase& phase : part.phases)
    phases.add(phase.name, phase_terms_json(phase));
  auto top = JsonText::object(kLines);
  top.add("format", format_json())
      .add_text("title", file.title)
      .add_text("edition", file.edition)
      .add_text("licence", file.licence)
      .add("sources", sources_json(part.sources))
      .add("phases", phases.text());
  if (!part.correlations.empty())
    top.add("correlations", correlations_json(part.correlations));
  return top.text() + "\n";
}

}  // namespace gibbsteel::parameter_file
