/// What many heats leave out stands in one line below the other warnings.

#include <doctest/doctest.h>

#include <array>

#include "gibbsteel/gibbsteel.hpp"

using namespace gibbsteel;

namespace {

State heat(const NamedValues& traces) {
  NamedValues given{{"C", 0.55}, {"Cr", 4.5}};
  for (const auto& [symbol, percent] : traces) given.set(symbol, percent);
  return Steel(given).soak(Temperature::celsius(1200));
}

std::string warnings_of(const std::vector<State>& states) {
  const std::string text = compare(states).full();
  const std::size_t begin = text.find("! ");
  return text.substr(begin, text.find("Long-hold limit (true") - begin);
}

const std::string kMelting =
    "[gibbsteel.warning.303] Above 1180 C, and the parameter file has no\n"
    "  liquid: melting is not predicted. Lay layers/liquid.json on it, in Python\n"
    "  steel.with_parameters(default_parameters(\"liquid\")).\n";

}  // namespace

TEST_CASE("differing traces are folded, and come last") {
  CHECK(warnings_of({heat({{"P", 0.02}, {"S", 0.003}}), heat({}),
                     heat({{"P", 0.015}, {"S", 0.01}, {"Cu", 0.09}})}) ==
        "! A, B, C: " + kMelting +
            "! A, C: [gibbsteel.warning.307] Not modelled, and left out of the "
            "calculation,\n"
            "  at most: P 0.02, S 0.01, Cu 0.09 wt%.\n");
}

TEST_CASE("traces of one heat are told as of a single soak") {
  CHECK(warnings_of({heat({{"P", 0.02}}), heat({{"P", 0.02}})}) ==
        "! A, B: " + kMelting +
            "! A, B: [gibbsteel.warning.307] Not modelled, and left out of the "
            "calculation:\n"
            "  P 0.02 wt%.\n");
}
