/// Which phase models a soak may use.

#include <doctest/doctest.h>

#include <algorithm>

#include "gibbsteel/errors.hpp"
#include "internal/candidate_phases.hpp"

using namespace gibbsteel;

namespace {

using Names = std::vector<std::string>;

Names candidates(const SoakOptions& options) {
  return internal::candidate_phases(*default_parameters(), options);
}

std::string refusal(const SoakOptions& options) {
  try {
    candidates(options);
  } catch (const InputError& error) {
    return error.what();
  }
  return "accepted";
}

bool holds(const Names& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

SoakOptions only(Names phases, Names suppressed = {}) {
  SoakOptions options;
  options.phases = std::move(phases);
  options.suppressed = std::move(suppressed);
  return options;
}

SoakOptions without(Names suppressed) {
  SoakOptions options;
  options.suppressed = std::move(suppressed);
  return options;
}

/// As the message lists them: the file's own order, both kinds of a model.
std::string known() {
  std::string text;
  for (const Phase& phase : default_parameters()->phases) {
    text += (text.empty() ? "" : ", ") + phase.name;
    if (phase.second_occurrence) text += ", " + phase.second_occurrence->name;
  }
  return text;
}

}  // namespace

TEST_CASE("all phases of the file but graphite, unless asked for") {
  const std::size_t all = default_parameters()->phases.size();
  CHECK(candidates({}).size() == all - 1);
  CHECK_FALSE(holds(candidates({}), "graphite"));
  SoakOptions options;
  options.graphite = true;
  CHECK(candidates(options).size() == all);
}

TEST_CASE("named phases only, graphite among them when it is named") {
  CHECK(candidates(only({"ferrite", "graphite"})) == Names{"ferrite", "graphite"});
  CHECK(candidates(only({"ferrite", "M3C"}, {"M3C"})) == Names{"ferrite"});
}

TEST_CASE("the second kind of a model stands for the model") {
  CHECK(candidates(only({"MC"})) == Names{"austenite"});
  CHECK(candidates(only({"austenite", "MC"})) == Names{"austenite"});
  CHECK_FALSE(holds(candidates(without({"austenite", "MC"})), "austenite"));
}

TEST_CASE("one of two kinds cannot be suppressed alone") {
  CHECK(refusal(without({"MC"})) ==
        "[gibbsteel.input.212] suppressed: 'austenite' and 'MC' are two kinds of one "
        "phase model; suppress both or neither");
  CHECK(refusal(without({"M23C6"})) == "accepted");
}

TEST_CASE("names of the trade are understood well enough to suggest the kind") {
  CHECK(refusal(only({"cementite"})) ==
        "[gibbsteel.input.205] phases: there is no phase 'cementite'; did you mean "
        "'M3C'? choose from: " +
            known());
}

TEST_CASE("unknown names are listed with what is known, all at once") {
  CHECK(
      refusal(only({"m6c", "bainite"}, {"pearlite"})) ==
      "[gibbsteel.input.205] phases: there is no phase 'm6c'; did you mean 'M6C'? "
      "choose from: " +
          known() +
          "\n[gibbsteel.input.205] phases: there is no phase 'bainite'; choose from: " +
          known() +
          "\n[gibbsteel.input.205] suppressed: there is no phase 'pearlite'; choose "
          "from: " +
          known());
}
