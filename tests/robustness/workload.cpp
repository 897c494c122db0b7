#include "robustness/workload.hpp"

#include "gibbsteel/gibbsteel.hpp"
#include "state_numbers.hpp"

namespace gibbsteel::testing {
namespace {

const Temperature kSoak = Temperature::celsius(1120);

/// The shipped set with standard deviations, invented for the test, on the constants of
/// two end members of M6C.
SharedParameters uncertain_set() {
  ParameterSet set = *default_parameters();
  for (Phase& phase : set.phases) {
    if (phase.name != "M6C") continue;
    for (std::size_t k = 0; k < 2; ++k)
      phase.energy[k].value.terms.at(0).standard_deviation = 500.0;
  }
  return std::make_shared<const ParameterSet>(std::move(set));
}

std::vector<Temperature> temperatures(std::vector<double> celsius) {
  std::vector<Temperature> list;
  for (const double t : celsius) list.push_back(Temperature::celsius(t));
  return list;
}

Bits bits_of(const Band& band, const std::string& text) {
  Bits bits;
  for (const double value : band.sample_values) bits.add(value);
  bits.add(text);
  return bits;
}

Bits soak(const Steel& steel, double celsius) {
  Bits bits;
  bits.add(steel.soak(Temperature::celsius(celsius)));
  return bits;
}

Bits sweep(const Steel& steel) {
  Bits bits;
  bits.add(steel.sweep(temperatures({760, 900, 1040, 1180})).states);
  return bits;
}

/// By a budget of boxes: one of time would depend on the load.
Bits proof(const Steel& steel) {
  SoakOptions options;
  options.solve.certify = Certificate::proof;
  options.solve.proof_boxes = 2000;
  options.solve.proof_seconds = 1e6;
  const State state = steel.soak(kSoak, options);
  Bits bits;
  bits.add(state);
  bits.add(state.solve_report.proof);
  bits.add(state.solve_report.proven_gap);
  bits.add(static_cast<double>(state.solve_report.proof_boxes));
  return bits;
}

Bits changes(const Steel& steel) {
  const auto found =
      phase_changes(steel, {Temperature::celsius(805), Temperature::celsius(835)});
  Bits bits;
  for (const PhaseChange& change : found.changes)
    bits.add(change.temperature.in_kelvin());
  bits.add(found.low);
  bits.add(found.full());
  return bits;
}

Bits searches(const Steel& steel) {
  const auto carbon = quantities::matrix("C");
  const auto t = temperature_for(
      steel, carbon, 0.5, {Temperature::celsius(1100), Temperature::celsius(1130)});
  CompositionSearchOptions few;
  few.steps = 4;
  const auto percent =
      composition_for(steel, "C", carbon, 0.5, {0.5, 0.6}, kSoak, {}, few);
  Bits bits;
  for (const Crossing& crossing : t.crossings) bits.add(crossing.state);
  for (const auto& crossing : percent.crossings) bits.add(crossing.state);
  bits.add(t.full() + percent.full());
  return bits;
}

Bits slopes(const Steel& steel) {
  Bits bits;
  for (const StateSlope& slope : sensitivities(steel, kSoak).slopes)
    for (const auto& [name, number] : numbers_of(slope)) bits.add(number);
  return bits;
}

Bits grid(const Steel& steel) {
  const auto found =
      soak_grid(steel, SweptVariable::element("C", {0.5, 0.55, 0.6}),
                SweptVariable::temperature(temperatures({950, 1150})), {}, {}, {}, 2);
  Bits bits;
  for (const auto& state : found.states) bits.add(*state);
  return bits;
}

Bits map(const Steel& steel) {
  SectionOptions options;
  options.columns = options.rows = 2;
  options.temperature_tolerance = 2.0;
  options.percent_tolerance = 0.05;
  options.threads = 2;
  const auto found = section_map(
      steel, {"C", 0.5, 0.6},
      TemperatureRange{Temperature::celsius(1000), Temperature::celsius(1040)}, {},
      options);
  Bits bits;
  for (const SectionBoundary& boundary : found.boundaries)
    for (const SectionPoint point : boundary.points) {
      bits.add(point.x);
      bits.add(point.y);
    }
  bits.add(found.full());
  return bits;
}

Bits tolerances(const Steel& steel) {
  HeatTolerances heat;
  heat.ranges = {{"C", 0.52, 0.58}, {"Cr", 4.2, 4.8}};
  ToleranceOptions options;
  options.samples = 8;
  options.corners = false;
  options.threads = 2;
  const auto band = tolerance_band(steel, kSoak, heat, {}, options);
  return bits_of(band, band.full());
}

Bits parameters_band(const SharedParameters& set, const Steel& steel) {
  ParameterBandOptions options;
  options.samples = 8;
  options.threads = 2;
  const Steel own(steel.analysis().given, {"heat", set, false});
  const auto band = parameter_band(own, kSoak, {}, options);
  return bits_of(band, band.full());
}

Bits reading(const SharedParameters& set) {
  const std::string written = write_parameters(*set);
  const SharedParameters read = parse_parameters(written, "read.json");
  Bits bits;
  bits.add(written);
  bits.add(content_hash(*read));
  bits.add(Steel({{"C", 1.0}, {"Cr", 5.0}}, {"", read, false}).soak(kSoak));
  try {
    parse_parameters(written.substr(0, written.size() / 2), "half.json");
  } catch (const DataError& error) {
    bits.add(std::string(error.what()));
  }
  return bits;
}

Bits screened(const Steel& steel) {
  const std::vector<double> carbon{0.5, 0.55, 0.6, 0.65, 0.7, 0.75};
  ScreenInput input;
  input.elements = {"C"};
  input.compositions = carbon;
  input.temperatures = temperatures({950, 1100});
  ScreenOptions options;
  options.parameters = steel.parameters();
  options.threads = 2;
  const ScreenTable table = screen(input, options);
  Bits bits;
  for (const double value : table.carbide_volume_percent) bits.add(value);
  for (const double value : table.matrix_weight_percent) bits.add(value);
  return bits;
}

/// Several soaks with M6C, whose number is fitted: one alone would use one thread.
Bits calibrated(const Steel& steel) {
  std::vector<Measurement> measurements;
  for (const double celsius : {1000.0, 1030.0, 1060.0})
    measurements.push_back({"punch heat 7", steel.analysis().given,
                            Temperature::celsius(celsius), quantities::matrix("Mo"),
                            1.6, 0.1});
  CalibrationOptions options;
  options.threads = 2;
  const Calibration result =
      calibrate(measurements, {{"/phases/M6C/energy/2/terms/1", 2000.0}},
                steel.parameters(), options);
  Bits bits;
  for (const auto& number : result.numbers) bits.add(number.after);
  for (const auto& outcome : result.measurements) bits.add(outcome.after);
  return bits;
}

Bits reports(const Steel& steel) {
  const State state = steel.soak(kSoak);
  Bits bits;
  bits.add(report(state).text());
  bits.add(hardening(state).full());
  bits.add(state.full());
  return bits;
}

}  // namespace

void Bits::add(const std::string& text) {
  all_.push_back(text.size());
  for (const char c : text) all_.push_back(static_cast<unsigned char>(c));
}

void Bits::add(const State& state) {
  for (const auto& [name, number] : numbers_of(state)) {
    add(name);
    add(number);
  }
  add(state.solve_report.reason);
  for (const int count : {state.solve_report.rounds, state.solve_report.newton_steps,
                          state.solve_report.columns, state.solve_report.evaluations})
    add(static_cast<double>(count));
}

void Bits::add(const std::vector<State>& states) {
  for (const State& state : states) add(state);
}

Steel workload_steel() {
  return Steel({{"C", 0.55}, {"Cr", 4.5}, {"Mo", 2.75}, {"W", 2.0}, {"V", 1.0}},
               {"punch heat 7", {}, false});
}

std::vector<Job> workload(const Steel& steel) {
  const SharedParameters uncertain = uncertain_set();
  std::vector<Job> jobs;
  for (const double celsius : {400.0, 805.0, 1000.0, 1180.0})
    jobs.push_back({"soak", [&steel, celsius] { return soak(steel, celsius); }});
  const std::vector<std::pair<const char*, Bits (*)(const Steel&)>> others{
      {"sweep", sweep},     {"proof", proof},           {"phase changes", changes},
      {"slopes", slopes},   {"searches", searches},     {"grid", grid},
      {"map", map},         {"tolerances", tolerances}, {"reports", reports},
      {"screen", screened}, {"calibration", calibrated}};
  for (const auto& [name, action] : others)
    jobs.push_back({name, [&steel, run = action] { return run(steel); }});
  jobs.push_back({"parameter band",
                  [&steel, uncertain] { return parameters_band(uncertain, steel); }});
  jobs.push_back({"reading", [&steel] { return reading(steel.parameters()); }});
  return jobs;
}

}  // namespace gibbsteel::testing
