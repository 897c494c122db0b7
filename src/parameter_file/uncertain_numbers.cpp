#include "uncertain_numbers.hpp"

#include <algorithm>

#include "message_text.hpp"
#include "read_expression.hpp"

namespace gibbsteel::parameter_file {
namespace {

/// Calls visit(place, value, standard deviation, name or nullptr) for each of them.
template <class Terms, class Visit>
void visit_terms(const Phase& phase, PhaseProperty property, Terms& terms,
                 const Visit& visit) {
  for (std::size_t i = 0; i < terms.size(); ++i)
    for (auto& [power, coefficient, deviation] : terms[i].value.terms) {
      if (deviation == 0.0) continue;
      const CoefficientName name{phase.name, property, terms[i].on, terms[i].order,
                                 power};
      visit("/phases/" + pointer_step(phase.name) + "/" +
                std::string(to_string(property)) + "/" + std::to_string(i) + "/terms/" +
                pointer_step(power_text(power)),
            coefficient, deviation, &name);
    }
}

template <class Volume, class Visit>
void visit_volume(const Phase& phase, const char* key, Volume& volume,
                  const Visit& visit) {
  if (!volume) return;
  for (std::size_t i = 0; i < volume->terms.size(); ++i)
    if (volume->terms[i].standard_deviation > 0.0)
      visit("/phases/" + pointer_step(phase.name) + "/" + key + "/terms/" +
                std::to_string(i) + "/cm3_per_mol",
            volume->terms[i].cm3_per_mol, volume->terms[i].standard_deviation,
            static_cast<const CoefficientName*>(nullptr));
}

template <class Set, class Visit>
void visit_all(Set& set, const Visit& visit) {
  for (auto& phase : set.phases) {
    visit_terms(phase, PhaseProperty::energy, phase.energy, visit);
    visit_terms(phase, PhaseProperty::curie_temperature, phase.curie_temperature,
                visit);
    visit_terms(phase, PhaseProperty::magnetic_moment, phase.magnetic_moment, visit);
    visit_volume(phase, "room_volume", phase.room_volume, visit);
    visit_volume(phase, "hot_volume", phase.hot_volume, visit);
  }
}

}  // namespace

bool acts_on(const UncertainNumber& number, const std::string& phase,
             const NamedValues& elements) {
  if (!number.name || number.name->phase != phase) return false;
  for (const auto& site : number.name->on)
    for (const std::string& constituent : site)
      if (constituent != kVacancy && !(elements[constituent] > 0.0)) return false;
  return true;
}

std::vector<UncertainNumber> uncertain_numbers(const ParameterSet& set) {
  std::vector<UncertainNumber> numbers;
  visit_all(set, [&](const std::string& place, double value, double deviation,
                     const CoefficientName* name) {
    numbers.push_back({place, value, deviation, {}});
    if (name) numbers.back().name = *name;
  });
  return numbers;
}

Eigen::MatrixXd correlations_of(const ParameterSet& set,
                                const std::vector<UncertainNumber>& numbers) {
  const auto size = static_cast<Eigen::Index>(numbers.size());
  Eigen::MatrixXd matrix = Eigen::MatrixXd::Identity(size, size);
  const auto index_of = [&](const CoefficientName& name) {
    const auto found =
        std::find_if(numbers.begin(), numbers.end(),
                     [&](const UncertainNumber& n) { return n.name == name; });
    return found - numbers.begin();
  };
  for (const Correlation& correlation : set.correlations) {
    const Eigen::Index i = index_of(correlation.first),
                       j = index_of(correlation.second);
    if (i < size && j < size) matrix(i, j) = matrix(j, i) = correlation.coefficient;
  }
  return matrix;
}

ParameterSet with_values(ParameterSet set, const std::vector<double>& values) {
  std::size_t next = 0;
  visit_all(set, [&](const std::string&, double& value, double,
                     const CoefficientName*) { value = values[next++]; });
  return set;
}

}  // namespace gibbsteel::parameter_file
