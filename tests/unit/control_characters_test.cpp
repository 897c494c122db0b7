/// Characters of UTF-8 that messages never hold.

#include "internal/control_characters.hpp"

#include <doctest/doctest.h>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/steel.hpp"

using gibbsteel::internal::without_controls;

TEST_CASE("controls and marks of direction become question marks") {
  CHECK(without_controls("a\nb\x7f\x1b[1m") == "a?b??[1m");
  CHECK(without_controls("\xC2\x9B"
                         "31m") == "?31m");                           // U+009B
  CHECK(without_controls("x\xE2\x80\xAEy\xE2\x81\xA6z") == "x?y?z");  // U+202E, U+2066
  CHECK(without_controls("\xE2\x80\xA8") == "?");                     // U+2028
  CHECK(without_controls("\xD8\x9C") == "?");                         // U+061C
}

TEST_CASE("other letters stay, and so do bytes that are no UTF-8") {
  CHECK(without_controls("St\xC3\xA4hle \xE2\x80\x93 \xC2\xA0") ==
        "St\xC3\xA4hle \xE2\x80\x93 \xC2\xA0");
  CHECK(without_controls("\xC2") == "\xC2");
  CHECK(without_controls("\xE2\x80") == "\xE2\x80");
  CHECK(without_controls("").empty());
}

TEST_CASE("an element's name cannot steer a terminal") {
  std::string said;
  try {
    const gibbsteel::Steel steel(
        {{"C\xC2\x9B"
          "31m",
          1.0}});
  } catch (const gibbsteel::InputError& error) {
    said = error.what();
  }
  CHECK(said ==
        "[gibbsteel.input.201] composition: 'C?31m' is not the symbol of an element; "
        "give symbols such as C, Cr, Mo");
}
