// Symbols, names and molar masses.

#include "gibbsteel/elements.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace gibbsteel;

TEST_CASE("symbols are found with their case only") {
  CHECK(find_element("Co")->name == "cobalt");
  CHECK_FALSE(find_element("CO"));
  CHECK_FALSE(find_element("co"));
  CHECK_FALSE(find_element(""));
  CHECK_FALSE(find_element("vacancy"));
  CHECK_FALSE(find_element("D"));
}

TEST_CASE("a hundred and eighteen elements") {
  // Counted over every spelling of one or two letters.
  std::set<std::string> symbols;
  for (char first = 'A'; first <= 'Z'; ++first) {
    if (find_element(std::string{first})) symbols.insert({first});
    for (char second = 'a'; second <= 'z'; ++second) {
      if (find_element(std::string{first, second})) symbols.insert({first, second});
    }
  }
  CHECK(symbols.size() == 118);
}

TEST_CASE("molar masses are the abridged standard atomic weights") {
  // IUPAC 2021, from memory.
  CHECK(find_element("Fe")->molar_mass == 55.845);
  CHECK(find_element("C")->molar_mass == 12.011);
  CHECK(find_element("W")->molar_mass == 183.84);
  CHECK(find_element("Mo")->molar_mass == 95.95);
  CHECK(find_element("Pb")->molar_mass == 207.2);
  CHECK(find_element("Tc")->molar_mass == 0.0);  // no standard atomic weight
}

TEST_CASE("what may have been meant") {
  CHECK(suggest_element("cr") == "Cr");
  CHECK(suggest_element("CR") == "Cr");
  CHECK(suggest_element(" Cr\t") == "Cr");
  CHECK(suggest_element("chromium") == "Cr");
  CHECK(suggest_element("Tungsten") == "W");
  CHECK(suggest_element("aluminum") == "Al");
  CHECK(suggest_element("sulphur") == "S");
  CHECK(suggest_element("Cb") == "Nb");
  CHECK(suggest_element("") == "");
  CHECK(suggest_element("  ") == "");
  CHECK(suggest_element("steel") == "");
}
