#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel {

namespace {

template <class Record>
const Record* find_by(const std::vector<Record>& records, std::string Record::*key,
                      std::string_view wanted) noexcept {
  for (const Record& record : records) {
    if (record.*key == wanted) return &record;
  }
  return nullptr;
}

}  // namespace

std::string_view to_string(Kind kind) noexcept {
  switch (kind) {
    case Kind::published:
      return "published";
    case Kind::recalled:
      return "recalled";
    case Kind::estimated:
      break;
  }
  return "estimated";
}

std::string_view to_string(Confidence confidence) noexcept {
  switch (confidence) {
    case Confidence::high:
      return "high";
    case Confidence::medium:
      return "medium";
    case Confidence::low:
      return "low";
    case Confidence::unstated:
      break;
  }
  return "unstated";
}

std::string_view to_string(Role role) noexcept {
  switch (role) {
    case Role::matrix:
      return "matrix";
    case Role::carbide:
      return "carbide";
    case Role::other:
      break;
  }
  return "other";
}

std::string_view to_string(SolidusSense sense) noexcept {
  switch (sense) {
    case SolidusSense::at_least:
      return "at least";
    case SolidusSense::at_most:
      return "at most";
    case SolidusSense::measured:
      break;
  }
  return "measured";
}

const Element* ParameterSet::find_element(std::string_view symbol) const noexcept {
  return find_by(elements, &Element::symbol, symbol);
}

const Curve* ParameterSet::find_curve(std::string_view name) const noexcept {
  return find_by(curves, &Curve::name, name);
}

const Phase* ParameterSet::find_phase(std::string_view name) const noexcept {
  return find_by(phases, &Phase::name, name);
}

const Source* ParameterSet::find_source(std::string_view key) const noexcept {
  return find_by(sources, &Source::key, key);
}

const ElementRange* ParameterSet::find_range(std::string_view symbol) const noexcept {
  return find_by(validity, &ElementRange::symbol, symbol);
}

std::string ParameterSet::title() const {
  std::string text;
  for (const FileRecord& file : files) {
    if (!text.empty()) text += " + ";
    text += file.title + " (edition " + file.edition + ")";
  }
  return text;
}

}  // namespace gibbsteel
