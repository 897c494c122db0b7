/// Terms that are there twice, that contradict one another, or that jump: refused, in
/// files and in sets made by hand.

#include <doctest/doctest.h>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/phase_system.hpp"
#include "hostile_sets.hpp"

using namespace gibbsteel;

namespace {

const std::vector<std::string> kBoth{"Fe", "Cr"};

std::string said(const std::string& text, const SharedParameters& below = nullptr) {
  try {
    parse_parameters(text, "hostile.json", below);
  } catch (const DataError& error) {
    return error.what();
  }
  return "";
}

/// A solution of iron and chromium with these terms as well.
std::string with_terms(const std::vector<std::string>& more) {
  auto phase = hostile::solution("one", kBoth, 1000.0, 0.0);
  phase.terms.resize(2);
  phase.terms.insert(phase.terms.end(), more.begin(), more.end());
  return hostile::file_of(kBoth, {phase});
}

/// The file with its one curve in two pieces that meet at 1000 K but for `jump`.
std::string with_jump(const std::string& jump, const std::string& factor) {
  std::string text = with_terms({});
  const auto replace = [&](const std::string& after, const std::string& old_text,
                           const std::string& new_text) {
    const std::size_t at = text.find(old_text, text.find(after));
    REQUIRE_MESSAGE(at != std::string::npos, old_text);
    text.replace(at, old_text.size(), new_text);
  };
  replace("\"curves\"", R"({"up_to_K": 3000, "terms": {"1": 0}})",
          R"({"up_to_K": 1000, "terms": {"1": 0}}, )"
          R"({"up_to_K": 3000, "terms": {"1": )" +
              jump + "}}");
  replace("\"energy\": [", R"("terms": )",
          R"("curves": {"zero": )" + factor + R"(}, "terms": )");
  return text;
}

}  // namespace

TEST_CASE("a file with a term twice, the same or another value") {
  const auto twice = [](const std::string& on, int order, const char* text) {
    CHECK(said(with_terms({hostile::term(R"([["Fe", "Cr"]])", 500.0, order),
                           hostile::term(on, -500.0, order)})) ==
          std::string("[gibbsteel.data.156] hostile.json: /phases/one/energy/3: the "
                      "term on ") +
              text + " is given twice; keep one of the two");
  };
  twice(R"([["Fe", "Cr"]])", 0, "(Fe + Cr) of order 0");
  twice(R"([["Cr", "Fe"]])", 0, "(Cr + Fe) of order 0");
  // With the names swapped, -500 of order 1 says the same as 500: still twice.
  twice(R"([["Cr", "Fe"]])", 1, "(Cr + Fe) of order 1");
}

TEST_CASE("a set made by hand with a term twice does not let one of them win") {
  auto set = std::make_shared<ParameterSet>(*parse_parameters(
      with_terms({hostile::term(R"([["Fe", "Cr"]])", 500.0, 0)}), "sound.json"));
  auto& energy = set->phases.front().energy;
  energy.push_back(energy.back());
  energy.back().value.terms.front().coefficient = -500.0;
  CHECK_THROWS_WITH_AS(
      PhaseSystem(set, kBoth, {"one"}),
      "[gibbsteel.data.156] one: has the same term twice; keep one of the two",
      DataError);
  CHECK_THROWS_AS(parse_parameters(write_parameters(*set), "written.json"), DataError);
}

TEST_CASE("a layer replaces a term, and is refused when it does so twice") {
  const auto below = parse_parameters(
      with_terms({hostile::term(R"([["Fe", "Cr"]])", 500.0, 0)}), "below.json");
  const auto layer = [](const std::string& terms) {
    return R"({"format": {"name": "gibbsteel parameter file", "version": 1},
"title": "layer", "edition": "1", "licence": "CC0-1.0",
"sources": {"y": {"citation": "made up"}}, "phases": {"one": {"energy": [)" +
           terms + "]}}}";
  };
  const auto swapped = hostile::term(R"([["Cr", "Fe"]])", -700.0, 0);
  const auto laid = parse_parameters(layer(swapped), "layer.json", below);
  REQUIRE(laid->phases.front().energy.size() == 3);
  const PhaseSystem system(laid, kBoth, {"one"});
  const double half = system.phases()
                          .front()
                          .evaluate(Temperature::kelvin(1000.0), std::vector{0.5, 0.5})
                          .value;
  const PhaseSystem old(below, kBoth, {"one"});
  const double half_below =
      old.phases()
          .front()
          .evaluate(Temperature::kelvin(1000.0), std::vector{0.5, 0.5})
          .value;
  CHECK(half - half_below == doctest::Approx(0.25 * (-700.0 - 500.0)).epsilon(1e-9));
  CHECK(
      said(layer(swapped + ", " + swapped), below) ==
      "[gibbsteel.data.156] hostile.json: /phases/one/energy/1: the term on (Cr + Fe) "
      "of order 0 is given twice; keep one of the two");
}

TEST_CASE("pieces that do not meet, by themselves or enlarged by a factor") {
  CHECK(said(with_jump("0.9", "1")) == "");
  CHECK(said(with_jump("0.9", "100")) == "");
  CHECK(said(with_jump("2.5", "1")) ==
        "[gibbsteel.data.135] hostile.json: /curves/zero/pieces/0/up_to_K: the value "
        "jumps by 2.5 J/mol at 1000 K; the pieces must meet within 1 J/mol");
  CHECK(
      said(with_jump("0.9", "-1e6")) ==
      "[gibbsteel.data.135] hostile.json: /phases/one/energy/0/curves: jumps of these "
      "curves add up to 900000 J/mol with these factors; give factors with which they "
      "stay within 100 J/mol");
}
