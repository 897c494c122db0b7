#include "measurement_file/measurement_reader.hpp"

#include <array>
#include <limits>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "gibbsteel/elements.hpp"
#include "internal/error_codes.hpp"
#include "measurement_file/read_quantity.hpp"
#include "parameter_file/field_reader.hpp"
#include "parameter_file/message_text.hpp"
#include "parameter_file/number_text.hpp"

namespace gibbsteel::measurement_file {
namespace {

using namespace parameter_file;

constexpr std::array<std::string_view, 5> kTopKeys{"format", "title", "licence",
                                                   "sources", "measurements"};
constexpr std::array<std::string_view, 17> kKeys{
    "record", "steel",  "weight_percent", "celsius",   "phases",         "quantity",
    "in",     "of",     "value",          "unit",      "uncertainty",    "source",
    "quoted", "remark", "confidence",     "fitted_to", "coldest_celsius"};
constexpr std::array<std::string_view, 3> kConfidences{"high", "medium", "low"};
constexpr std::array<std::string_view, 2> kQuoted{"from print", "from memory"};
constexpr std::array<std::string_view, 2> kFittedTo{"no", "yes"};
constexpr std::size_t kMostMeasurements = 20'000, kMostSources = 5'000;
constexpr std::size_t kMostElements = 60, kMostPhases = 60;
constexpr NumberRange kPercents{0.0, 100.0};
constexpr NumberRange kCelsius{27.0, 2200.0};
constexpr NumberRange kAnyValue{std::numeric_limits<double>::lowest(),
                                std::numeric_limits<double>::max()};
constexpr NumberRange kPositive{0.0, 1e300, false};

class Reader {
 public:
  Reader(const JsonNode& root, Problems& problems)
      : problems_(problems), top_(root, "", problems, kTopKeys) {
    top_.name("title", Need::required);
    top_.name("licence", Need::required);
    read_sources();
  }

  std::vector<RecordedMeasurement> all() {
    std::vector<RecordedMeasurement> made;
    const JsonNode* node = top_.find("measurements", Need::required);
    if (node == nullptr ||
        !is_list(*node, "/measurements", kMostMeasurements, problems_))
      return made;
    for (std::size_t i = 0; i < node->items.size() && !problems_.full(); ++i) {
      auto one = read(node->items[i], "/measurements/" + std::to_string(i));
      if (one) made.push_back(std::move(*one));
    }
    return made;
  }

 private:
  void read_sources() {
    const JsonNode* node = top_.find("sources", Need::required);
    if (node == nullptr || !is_object(*node, "/sources", kMostSources, problems_))
      return;
    for (const JsonNode& item : node->items)
      sources_[item.key] =
          read_text(item, "/sources/" + pointer_step(item.key), problems_).value_or("");
  }

  std::optional<RecordedMeasurement> read(const JsonNode& node,
                                          const std::string& place) {
    const std::size_t before = problems_.count();
    const FieldReader fields(node, place, problems_, kKeys);
    const auto quantity = read_quantity(fields, problems_);
    auto measurement = read_numbers(fields, quantity);
    const auto source = read_source(fields);
    const auto confidence = fields.word("confidence", Need::required, kConfidences);
    const auto quoted = fields.word("quoted", Need::required, kQuoted);
    const auto fitted = fields.word("fitted_to", Need::required, kFittedTo);
    const auto remark = fields.text("remark", Need::optional);
    if (problems_.count() != before) return std::nullopt;
    return RecordedMeasurement{std::move(*measurement),
                               source,
                               std::string(kConfidences[*confidence]),
                               *quoted == 1,
                               *fitted == 1,
                               remark.value_or("")};
  }

  /// Empty where the quantity is.
  std::optional<Measurement> read_numbers(const FieldReader& fields,
                                          const std::optional<Quantity>& quantity) {
    auto steel = fields.name("steel", Need::required);
    NamedValues percents = read_percents(fields);
    const auto celsius = fields.number("celsius", Need::required, kCelsius);
    const auto value = fields.number("value", Need::required, kAnyValue);
    const auto error = fields.number("uncertainty", Need::required, kPositive);
    if (quantity) check_unit(fields, *quantity);
    std::string record = read_record(fields);
    SoakOptions soak;
    soak.phases = read_phases(fields);
    if (!quantity) return std::nullopt;
    return Measurement{steel.value_or(""),
                       std::move(percents),
                       Temperature::celsius(celsius.value_or(kCelsius.low)),
                       *quantity,
                       value.value_or(0.0),
                       error.value_or(1.0),
                       std::move(record),
                       false,
                       std::move(soak)};
  }

  NamedValues read_percents(const FieldReader& fields) {
    NamedValues percents;
    const JsonNode* node = fields.find("weight_percent", Need::required);
    const std::string place = fields.place_of("weight_percent");
    if (node == nullptr || !is_object(*node, place, kMostElements, problems_))
      return percents;
    for (const JsonNode& item : node->items) {
      const std::string at = place + "/" + pointer_step(item.key);
      if (!gibbsteel::find_element(item.key))
        problems_.add(codes::kNoElement, at, in_quotes(item.key) + " is no element",
                      "give the symbol of a chemical element, as \"Cr\"");
      percents.append(item.key,
                      read_number(item, at, kPercents, problems_).value_or(0.0));
    }
    if (!(percents.sum() <= 100.0))
      problems_.add(codes::kOutOfRange, place,
                    "adds up to " + number_text(percents.sum()),
                    "give weight percents that add up to 100 at most");
    return percents;
  }

  void check_unit(const FieldReader& fields, const Quantity& quantity) {
    const std::string wanted = quantity.unit().empty() ? "1" : quantity.unit();
    const auto unit = fields.name("unit", Need::required);
    if (!unit || *unit == wanted) return;
    problems_.add(codes::kWrongUnit, fields.place_of("unit"), "is " + in_quotes(*unit),
                  "give the value in " + in_quotes(wanted));
  }

  std::string read_record(const FieldReader& fields) {
    std::string record = fields.name("record", Need::required).value_or("");
    if (!record.empty() && !records_.insert(record).second)
      problems_.add(codes::kNameTwice, fields.place_of("record"),
                    in_quotes(record) + " stands in the file twice",
                    "give each measurement a name of its own");
    return record;
  }

  std::optional<std::vector<std::string>> read_phases(const FieldReader& fields) {
    const JsonNode* node = fields.find("phases", Need::optional);
    const std::string place = fields.place_of("phases");
    if (node == nullptr || !is_list(*node, place, kMostPhases, problems_))
      return std::nullopt;
    std::vector<std::string> phases;
    for (std::size_t i = 0; i < node->items.size(); ++i)
      phases.push_back(
          read_name(node->items[i], place + "/" + std::to_string(i), problems_)
              .value_or(""));
    return phases;
  }

  std::string read_source(const FieldReader& fields) {
    const auto key = fields.name("source", Need::required);
    if (!key) return "";
    if (const auto found = sources_.find(*key); found != sources_.end())
      return found->second;
    problems_.add(codes::kUnknownSource, fields.place_of("source"),
                  in_quotes(*key) + " is not among the sources",
                  "add it to \"sources\" or name one that is there");
    return "";
  }

  Problems& problems_;
  FieldReader top_;
  std::unordered_map<std::string, std::string> sources_;
  std::unordered_set<std::string> records_;
};

}  // namespace

std::vector<RecordedMeasurement> read_measurements(const JsonNode& root,
                                                   Problems& problems) {
  return Reader(root, problems).all();
}

}  // namespace gibbsteel::measurement_file
