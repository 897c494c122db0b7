// The ordered list of names and numbers.

#include "gibbsteel/named_values.hpp"

#include <doctest/doctest.h>

using gibbsteel::NamedValues;

TEST_CASE("order of insertion is kept and names are unique") {
  NamedValues values{{"C", 0.5}, {"Cr", 4.0}, {"C", 0.6}};
  CHECK(values.size() == 2);
  CHECK(values.begin()->first == "C");
  CHECK(values["C"] == 0.6);
  values.set("Mo", 2.0);
  values.set("Cr", 5.0);
  CHECK(values == NamedValues{{"C", 0.6}, {"Cr", 5.0}, {"Mo", 2.0}});
  CHECK(values.sum() == doctest::Approx(7.6));
}

TEST_CASE("names that are known to be new are appended without looking") {
  NamedValues values;
  values.reserve(2);
  values.append("C", 0.5);
  values.append("Cr", 4.0);
  CHECK(values == NamedValues{{"C", 0.5}, {"Cr", 4.0}});
}

TEST_CASE("what is not listed counts as zero") {
  const NamedValues values{{"C", 0.5}};
  CHECK(values["W"] == 0.0);
  CHECK_FALSE(values.contains("W"));
  CHECK(values.contains("C"));
  CHECK(NamedValues{}.empty());
  CHECK(NamedValues{}.sum() == 0.0);
}
