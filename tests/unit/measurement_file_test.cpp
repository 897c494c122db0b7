/// Files of measurements: what is read, and the whole message about what is wrong.

#include "gibbsteel/measurement_file.hpp"

#include <doctest/doctest.h>

#include <string>

#include "gibbsteel/errors.hpp"

using namespace gibbsteel;

namespace {

const std::string kHead = R"({"format": {"name": "gibbsteel measurement file",
 "version": 1}, "title": "Counted in the shop", "licence": "CC0-1.0",
 "sources": {"book": "Shop book, page 3"}, "measurements": [)";
const std::string kGood = R"({"record": "shop/1", "steel": "heat 7",
 "weight_percent": {"C": 0.55, "Cr": 4.5}, "celsius": 1120, "quantity":
 "weight percent", "in": "matrix", "of": "Cr", "value": 4.4, "uncertainty": 0.1,
 "unit": "wt%", "confidence": "medium", "quoted": "from print", "fitted_to": "no",
 "source": "book"})";

std::vector<RecordedMeasurement> read(const std::string& one) {
  return parse_measurements(kHead + one + "]}", "shop.json");
}

/// The good one with a piece of it replaced.
std::string with(const std::string& piece, const std::string& by) {
  std::string text = kGood;
  const std::size_t at = text.find(piece);
  REQUIRE(at != std::string::npos);
  return text.replace(at, piece.size(), by);
}

std::string message_of(const std::string& one) {
  try {
    read(one);
  } catch (const DataError& error) {
    return error.what();
  }
  return "no error";
}

}  // namespace

TEST_CASE("a measurement is read with what is known of it") {
  const auto all = read(kGood);
  REQUIRE(all.size() == 1);
  const RecordedMeasurement& one = all.front();
  CHECK(one.measurement.steel == "heat 7");
  CHECK(one.measurement.record == "shop/1");
  CHECK(one.measurement.weight_percent == NamedValues{{"C", 0.55}, {"Cr", 4.5}});
  CHECK(one.measurement.temperature == Temperature::celsius(1120.0));
  CHECK(one.measurement.quantity.label() == "Cr in the matrix [wt%]");
  CHECK(one.measurement.value == 4.4);
  CHECK(one.measurement.uncertainty == 0.1);
  CHECK_FALSE(one.measurement.soak.phases);
  CHECK(one.source == "Shop book, page 3");
  CHECK(one.confidence == "medium");
  CHECK_FALSE(one.from_memory);
  CHECK_FALSE(one.fitted_to);
  CHECK(one.remark.empty());
}

TEST_CASE("every quantity of the format") {
  const std::string start =
      "\"quantity\":\n \"weight percent\", \"in\": \"matrix\", "
      "\"of\": \"Cr\"";
  const auto label = [&](const std::string& keys, const std::string& unit) {
    std::string text = with(start, keys);
    text.replace(text.find("\"wt%\""), 5, "\"" + unit + "\"");
    return read(text).front().measurement.quantity.label();
  };
  CHECK(label(R"("quantity": "weight percent", "in": "carbides", "of": "W")", "wt%") ==
        "W in the carbides [wt%]");
  CHECK(label(R"("quantity": "weight percent", "in": "M6C", "of": "W")", "wt%") ==
        "W in M6C [wt%]");
  CHECK(label(R"("quantity": "volume percent", "in": "M6C")", "vol%") == "M6C [vol%]");
  CHECK(label(R"("quantity": "volume percent", "in": "carbides")", "vol%") ==
        "carbide [vol%]");
  CHECK(label(R"("quantity": "mass percent", "in": "M6C")", "mass%") == "M6C [mass%]");
  CHECK(label(R"("quantity": "mass percent", "in": "carbides")", "mass%") ==
        "carbide [mass%]");
  CHECK(label(R"("quantity": "carbon activity")", "1") == "carbon activity");
  CHECK(label(R"("quantity": "martensite start")", "C") == "martensite start [C]");
  CHECK(label(R"("quantity": "retained austenite", "coldest_celsius": -75)", "vol%") ==
        "retained austenite [vol%]");
  CHECK(label(R"("quantity": "retained austenite of the matrix")", "vol%") ==
        "retained austenite of the matrix [vol%]");
  CHECK(label(R"("quantity": "hardness HRC")", "HRC") == "as-quenched hardness [HRC]");
  CHECK(label(R"("quantity": "hardness HV")", "HV") == "as-quenched hardness [HV]");
}

TEST_CASE("what is wrong is said with its place and remedy") {
  CHECK(message_of(with("\"wt%\"", "\"vol%\"")) ==
        "[gibbsteel.data.108] shop.json: /measurements/0/unit: is \"vol%\"; give the "
        "value in \"wt%\"");
  CHECK(message_of(with("\"of\": \"Cr\"", "\"of\": \"Chrome\"")) ==
        "[gibbsteel.data.120] shop.json: /measurements/0/of: \"Chrome\" is no element; "
        "give the symbol of a chemical element, as \"Cr\"");
  CHECK(message_of(with("\"source\": \"book\"", "\"source\": \"page\"")) ==
        "[gibbsteel.data.130] shop.json: /measurements/0/source: \"page\" is not among "
        "the sources; add it to \"sources\" or name one that is there");
  CHECK(message_of(with("\"uncertainty\": 0.1", "\"uncertainty\": 0")) ==
        "[gibbsteel.data.113] shop.json: /measurements/0/uncertainty: is 0; give a "
        "number above 0 and up to 1e+300");
  CHECK(message_of(with("\"C\": 0.55", "\"C\": 99.0")) ==
        "[gibbsteel.data.113] shop.json: /measurements/0/weight_percent: adds up to "
        "103.5; give weight percents that add up to 100 at most");
  CHECK(message_of(with("\"weight percent\", \"in\": \"matrix\", \"of\": \"Cr\"",
                        "\"volume percent\", \"in\": \"matrix\"")) ==
        "[gibbsteel.data.114] shop.json: /measurements/0/in: is \"matrix\"; give "
        "\"carbides\" or a kind of phase");
  CHECK(message_of(kGood + "," + kGood) ==
        "[gibbsteel.data.144] shop.json: /measurements/1/record: \"shop/1\" stands in "
        "the file twice; give each measurement a name of its own");
  CHECK(message_of(with("\"quoted\": \"from print\"", "\"quoted\": \"yes\"")) ==
        "[gibbsteel.data.114] shop.json: /measurements/0/quoted: is \"yes\"; give "
        "\"from print\" or \"from memory\"");
  CHECK(message_of(with("\"in\": \"matrix\", \"of\": \"Cr\"", "\"in\": \"matrix\"")) ==
        "[gibbsteel.data.110] shop.json: /measurements/0: the key \"of\" is missing; "
        "add it");
}

TEST_CASE("cut or garbled anywhere it is refused, or read") {
  const std::string whole = kHead + kGood + "]}";
  for (std::size_t at = 0; at < whole.size(); ++at) {
    CHECK_THROWS_AS(parse_measurements(whole.substr(0, at), "shop.json"), DataError);
    for (const char c : {'"', '{', '9', '-', '\x01'}) {
      std::string garbled = whole;
      garbled[at] = c;
      try {
        const auto all = parse_measurements(garbled, "shop.json");
        CHECK(all.size() == 1);
      } catch (const DataError& error) {
        CHECK(std::string(error.what()).starts_with("[gibbsteel.data."));
      }
    }
  }
}

TEST_CASE("20 000 measurements are read") {
  std::string all;
  for (int i = 0; i < 20'000; ++i)
    all += (i ? "," : "") + with("shop/1", "shop/" + std::to_string(i));
  CHECK(read(all).size() == 20'000);
}

TEST_CASE("a file of another kind is refused") {
  try {
    parse_measurements(
        R"({"format": {"name": "gibbsteel parameter file", "version": 1}})",
        "tool_steel.json");
    FAIL("taken");
  } catch (const DataError& error) {
    CHECK(std::string(error.what()) ==
          "[gibbsteel.data.107] tool_steel.json: /format: does not say that this is a "
          "measurement file; begin with \"format\": {\"name\": \"gibbsteel measurement "
          "file\", \"version\": 1}");
  }
}

TEST_CASE("no file on disk") {
  try {
    load_measurements("no-such-file.json");
    FAIL("read");
  } catch (const DataError& error) {
    CHECK(
        std::string(error.what()) ==
        "[gibbsteel.data.101] no-such-file.json: there is no such file; give the path "
        "of a measurement file");
  }
}
