#include "gibbsteel/state.hpp"

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/kind_names.hpp"

namespace gibbsteel {
namespace {

std::vector<Occurrence> with_role(const State& state, Role role) {
  std::vector<Occurrence> found;
  for (const Occurrence& o : state.occurrences)
    if (o.role == role) found.push_back(o);
  return found;
}

Problem no_such_element(const State& state, const std::string& element) {
  std::string present;
  for (const auto& [symbol, percent] : state.analysis.modelled)
    if (percent > 0.0) present += (present.empty() ? "" : ", ") + symbol;
  return {"gibbsteel.input.299", "element", "the state holds no '" + element + "'",
          "choose from: " + present};
}

/// A kind that the parameter set knows is absent; any other name is a mistake.
Problem not_in_state(const State& state, std::string_view name) {
  const std::string kind(name.substr(0, name.find(", ")));
  if (std::find(state.kinds.begin(), state.kinds.end(), kind) == state.kinds.end())
    return internal::no_such_kind(state.kinds, name, "state");
  std::string present;
  for (const Occurrence& o : state.occurrences)
    present += (present.empty() ? "" : ", ") + o.name;
  const std::string what = "'" + std::string(name) + "' is absent";
  if (present.empty())
    return {"gibbsteel.input.209", "state", what,
            "the state is not usable and holds nothing"};
  return {"gibbsteel.input.209", "state", what,
          "volume_percent_of() gives 0 for it; present: " + present};
}

}  // namespace

std::vector<Occurrence> State::carbides() const {
  return with_role(*this, Role::carbide);
}

std::vector<Occurrence> State::matrix_phases() const {
  return with_role(*this, Role::matrix);
}

const Occurrence& State::at(std::string_view name) const {
  for (const Occurrence& o : occurrences)
    if (o.name == name) return o;
  throw InputError({not_in_state(*this, name)});
}

double State::volume_percent_of(std::string_view kind) const {
  if (std::find(kinds.begin(), kinds.end(), kind) == kinds.end())
    throw InputError({internal::no_such_kind(kinds, kind, "kind")});
  if (!usable()) return Occurrence::kUnknown;
  double sum = 0.0;
  for (const Occurrence& o : occurrences)
    if (o.kind == kind) sum += o.volume_percent;
  return sum;
}

NamedValues State::element_shares(const std::string& element) const {
  NamedValues shares;
  if (!usable()) return shares;
  shares.set("matrix", 0.0);
  double all = 0.0;
  for (const Occurrence& o : occurrences) {
    const double atoms = o.mole_percent * o.atom_fraction[element];
    const std::string place = o.role == Role::matrix ? "matrix" : o.kind;
    shares.set(place, shares[place] + atoms);
    all += atoms;
  }
  if (!(all > 0.0)) throw InputError({no_such_element(*this, element)});
  NamedValues percent;
  for (const auto& [place, atoms] : shares) percent.set(place, 100.0 * atoms / all);
  return percent;
}

}  // namespace gibbsteel
