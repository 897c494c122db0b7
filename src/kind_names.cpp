#include "internal/kind_names.hpp"

#include <array>

namespace gibbsteel::internal {
namespace {

struct OtherName {
  std::string_view folded;
  std::string_view kind;
};

/// Names of the trade, folded; common practice, no source.
constexpr std::array kOtherNames{OtherName{"cementite", "M3C"},
                                 OtherName{"fe3c", "M3C"},
                                 OtherName{"gamma", "austenite"},
                                 OtherName{"alpha", "ferrite"},
                                 OtherName{"delta", "ferrite"},
                                 OtherName{"deltaferrite", "ferrite"},
                                 OtherName{"vc", "MC"},
                                 OtherName{"v4c3", "MC"},
                                 OtherName{"vanadiumcarbide", "MC"},
                                 OtherName{"mo2c", "M2C"},
                                 OtherName{"cr7c3", "M7C3"},
                                 OtherName{"cr23c6", "M23C6"},
                                 OtherName{"fe3w3c", "M6C"},
                                 OtherName{"fe3mo3c", "M6C"},
                                 OtherName{"etacarbide", "M6C"},
                                 OtherName{"wc", "hexagonal MC"},
                                 OtherName{"tungstencarbide", "hexagonal MC"}};

/// Letters and digits only, in lower case.
std::string folded(std::string_view name) {
  std::string text;
  for (const char c : name) {
    if (c >= 'A' && c <= 'Z') text += static_cast<char>(c - 'A' + 'a');
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) text += c;
  }
  return text;
}

}  // namespace

std::vector<std::string> kind_names(const ParameterSet& set) {
  std::vector<std::string> names;
  for (const Phase& phase : set.phases) {
    names.push_back(phase.name);
    if (phase.second_occurrence) names.push_back(phase.second_occurrence->name);
  }
  return names;
}

std::vector<std::string> carbide_kind_names(const ParameterSet& set) {
  std::vector<std::string> kinds;
  const auto add = [&](Role role, const std::string& name) {
    if (role == Role::carbide) kinds.push_back(name);
  };
  for (const Phase& phase : set.phases) {
    add(phase.role, phase.name);
    if (phase.second_occurrence)
      add(phase.second_occurrence->role, phase.second_occurrence->name);
  }
  return kinds;
}

std::string kind_hint(const std::vector<std::string>& known, std::string_view name) {
  const std::string bare = folded(name);
  std::string_view meant;
  for (const OtherName& other : kOtherNames)
    if (other.folded == bare) meant = other.kind;
  for (const std::string& kind : known)
    if (kind != name && (kind == meant || folded(kind) == bare))
      return "did you mean '" + kind + "'? ";
  return "";
}

Problem no_such_kind(const std::vector<std::string>& known, std::string_view name,
                     const std::string& place) {
  std::string list;
  for (const std::string& kind : known) list += (list.empty() ? "" : ", ") + kind;
  return {"gibbsteel.input.205", place, "there is no phase '" + std::string(name) + "'",
          kind_hint(known, name) + "choose from: " + list};
}

}  // namespace gibbsteel::internal
