#include "calibrate/calibration_layer.hpp"

#include <algorithm>

#include "calibrate/layer_correlations.hpp"
#include "internal/number_format.hpp"
#include "parameter_file/expression_text.hpp"
#include "parameter_file/number_text.hpp"
#include "parameter_file/read_expression.hpp"
#include "parameter_file/write_layer.hpp"

namespace gibbsteel::internal {
namespace {

using parameter_file::ParameterNumber;
using Where = ParameterNumber::Where;

constexpr std::size_t kMostText = 3500;  ///< bytes; FileLimits::text_length is more

/// Cut where a file would refuse it, between two letters.
std::string shortened(std::string text) {
  if (text.size() <= kMostText) return text;
  std::size_t end = kMostText;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0u) == 0x80u) --end;
  text.resize(end);
  return text + " ...";
}

/// "M2 (8), T1 (4)", cut where it gets long.
std::string steels_of(const Calibration& result,
                      const std::vector<std::size_t>& measurements) {
  std::vector<std::pair<std::string, int>> counts;
  for (const std::size_t i : measurements) {
    const std::string& steel = result.measurements[i].steel;
    const auto known = std::find_if(counts.begin(), counts.end(),
                                    [&](const auto& c) { return c.first == steel; });
    if (known == counts.end())
      counts.emplace_back(steel, 1);
    else
      ++known->second;
  }
  std::string text;
  for (const auto& [steel, count] : counts) {
    if (text.size() + steel.size() > kMostText) return text + " and others";
    text += (text.empty() ? "" : ", ") + steel + " (" + std::to_string(count) + ")";
  }
  return text;
}

std::vector<std::size_t> fitted_to(const Calibration& result) {
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < result.measurements.size(); ++i)
    if (result.measurements[i].weight > 0.0) all.push_back(i);
  return all;
}

/// A key that no source below has.
std::string free_key(const ParameterSet& set) {
  std::string key = "calibration";
  for (int n = 2; set.find_source(key) != nullptr; ++n)
    key = "calibration " + std::to_string(n);
  return key;
}

Source source_of(const CalibrationProblem& problem, const Calibration& result) {
  const auto all = fitted_to(result);
  Source source;
  source.key = free_key(problem.set());
  source.citation =
      shortened("fitted by calibrate() to " + std::to_string(all.size()) +
                " measurements, loss " + std::string(to_string(result.loss)) + ", on " +
                problem.set().title() + ": " + steels_of(result, all));
  auto& records = source.fitted_to_check_records;
  for (const std::size_t i : all) {
    const std::string& record = result.measurements[i].record;
    if (!record.empty() &&
        std::find(records.begin(), records.end(), record) == records.end())
      records.push_back(record);
  }
  return source;
}

std::string note_of(const Calibration& result, const CalibratedNumber& number,
                    const std::vector<std::size_t>& seen_by, const std::string& what,
                    const Provenance& before) {
  std::string note = what + " was " + parameter_file::number_text(number.before) +
                     " (source " + parameter_file::source_text(before) + "; " +
                     parameter_file::kind_text(before) + "), prior +-" +
                     rounded_or(number.prior_deviation, 4, "") + " " + number.unit;
  if (seen_by.empty()) return note + "; no measurement feels it";
  return note + (number.seen() ? "; felt by " : "; hardly felt by ") +
         steels_of(result, seen_by);
}

/// Term or volume of `list` that stands for `original`, copied there when it is new.
template <class Item>
Item& copied(const Item& original, std::vector<Item>& list) {
  for (Item& item : list)
    if (item.on == original.on) {
      if constexpr (requires { item.order; })
        if (item.order != original.order) continue;
      return item;
    }
  return list.emplace_back(original);
}

/// The fitted terms and volumes of the phases, each once.
class PartialPhases {
 public:
  PartialPhases(const CalibrationProblem& problem, const std::string& source)
      : problem_(problem), source_(source) {}

  void add(const Calibration& result, std::size_t j,
           const std::vector<std::size_t>& seen_by) {
    const ParameterNumber& number = problem_.numbers()[j];
    const Phase& below = problem_.set().phases[number.owner];
    Phase& phase = phase_of(below.name);
    if (const Term* term = parameter_file::term_of(problem_.set(), number)) {
      add_term(result, j, *term, seen_by, copied(*term, terms_of(phase, number.where)));
      return;
    }
    const bool room = number.where == Where::room_volume;
    const VolumeData& data = room ? *below.room_volume : *below.hot_volume;
    auto& part = room ? phase.room_volume : phase.hot_volume;
    if (!part) part = VolumeData{data.at, {}, {}, "", ""};
    const VolumeTerm& volume = data.terms[number.item];
    VolumeTerm& copy = copied(volume, part->terms);
    copy.cm3_per_mol = result.numbers[j].after;
    copy.standard_deviation = result.numbers[j].deviation;
    mark(copy.provenance,
         note_of(result, result.numbers[j], seen_by, "volume", volume.provenance));
  }

  std::vector<Phase> phases;

 private:
  void add_term(const Calibration& result, std::size_t j, const Term& below,
                const std::vector<std::size_t>& seen_by, Term& copy) const {
    const ParameterNumber& number = problem_.numbers()[j];
    TemperatureTerm& entry = copy.value.terms[number.index];
    entry.coefficient = result.numbers[j].after;
    entry.standard_deviation = result.numbers[j].deviation;
    mark(copy.provenance,
         note_of(result, result.numbers[j], seen_by,
                 "power " + parameter_file::power_text(entry.power), below.provenance));
  }

  Phase& phase_of(const std::string& name) {
    for (Phase& phase : phases)
      if (phase.name == name) return phase;
    Phase& phase = phases.emplace_back();
    phase.name = name;
    return phase;
  }

  static std::vector<Term>& terms_of(Phase& phase, Where where) {
    if (where == Where::energy) return phase.energy;
    return where == Where::curie_temperature ? phase.curie_temperature
                                             : phase.magnetic_moment;
  }

  void mark(Provenance& provenance, const std::string& note) const {
    const bool again = provenance.source == source_;
    const std::string all = again ? provenance.note + "; " + note : note;
    provenance = {source_, Kind::estimated, Confidence::unstated, shortened(all), ""};
  }

  const CalibrationProblem& problem_;
  std::string source_;
};

}  // namespace

LayerText calibration_layer(const CalibrationProblem& problem,
                            const Calibration& result,
                            const std::vector<std::vector<std::size_t>>& seen_by,
                            const CalibrationOptions& options) {
  LayerText layer;
  ParameterSet part;
  part.files.push_back(
      {options.file_name, options.title, options.edition, options.licence});
  part.sources.push_back(source_of(problem, result));
  const std::string& key = part.sources.front().key;
  PartialPhases partial(problem, key);
  for (std::size_t j = 0; j < result.numbers.size(); ++j)
    partial.add(result, j, seen_by[j]);
  part.phases = std::move(partial.phases);
  const Provenance provenance{key, Kind::estimated, Confidence::unstated, "", ""};
  part.correlations = layer_correlations(problem, result, provenance, layer.remarks);
  layer.text = parameter_file::write_layer(part);
  return layer;
}

}  // namespace gibbsteel::internal
