#include "term_key.hpp"

#include <algorithm>

#include "message_text.hpp"

namespace gibbsteel::parameter_file {

namespace {

// Names hold no control characters, so these cannot occur in them.
constexpr char kNextName = '\x01';
constexpr char kNextSublattice = '\x02';

}  // namespace

std::string term_key(const Term& term) {
  std::string key;
  for (std::vector<std::string> mix : term.on) {
    std::sort(mix.begin(), mix.end());
    for (const std::string& name : mix) (key += name) += kNextName;
    key += kNextSublattice;
  }
  if (term.order) key += std::to_string(*term.order);
  return key;
}

std::string end_member_key(const std::vector<std::string>& constituents) {
  std::string key;
  for (const std::string& name : constituents) {
    ((key += name) += kNextName) += kNextSublattice;
  }
  return key;
}

std::string on_text(const std::vector<std::vector<std::string>>& on) {
  std::string text = "(";
  for (std::size_t i = 0; i < on.size(); ++i) {
    if (i > 0) text += ", ";
    for (std::size_t j = 0; j < on[i].size(); ++j) {
      if (j > 0) text += " + ";
      text += printable(on[i][j]);
    }
  }
  return text + ")";
}

std::string on_text(const std::vector<std::string>& constituents) {
  std::string text = "(";
  for (std::size_t i = 0; i < constituents.size(); ++i) {
    if (i > 0) text += ", ";
    text += printable(constituents[i]);
  }
  return text + ")";
}

}  // namespace gibbsteel::parameter_file
