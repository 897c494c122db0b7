/// Screens: many compositions at many temperatures, in blocks and chunks.

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <stdexcept>
#include <thread>

#include "gibbsteel/errors.hpp"
#include "gibbsteel/gibbsteel.hpp"
#include "screening/solve_block.hpp"

using namespace gibbsteel;

using enum ScreenStatus;

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();

/// Compositions with their owner.
struct Heats {
  std::vector<std::string> elements;
  std::vector<double> numbers;
  std::vector<Temperature> temperatures;
  bool one_per_composition = false;

  ScreenInput input() const {
    return {elements, numbers, temperatures, one_per_composition};
  }
};

std::vector<Temperature> celsius(const std::vector<double>& values) {
  std::vector<Temperature> all;
  for (const double value : values) all.push_back(Temperature::celsius(value));
  return all;
}

/// Two matrix-type punch steels, one without tungsten, one with phosphorus.
Heats punch_heats() {
  return {{"C", "Cr", "Mo", "W", "V", "P"},
          {0.55, 4.5, 2.75, 2.0, 1.0, 0.0, 0.62, 4.1, 3.5, 0.0, 1.2, 0.02},
          celsius({1000, 1120}),
          false};
}

/// `count` chromium steels, quick to solve, none like another.
Heats chromium_heats(std::size_t count) {
  Heats heats{{"C", "Cr"}, {}, celsius({950}), false};
  for (std::size_t i = 0; i < count; ++i) {
    heats.numbers.push_back(0.4 + 0.01 * static_cast<double>(i % 90));
    heats.numbers.push_back(1.0 + 0.04 * static_cast<double>(i));
  }
  return heats;
}

bool same_bits(double a, double b) {
  return a == b || (std::isnan(a) && std::isnan(b));
}

/// Of the state and of quantities that have a value in it.
std::size_t warning_count(const State& state, const std::vector<Quantity>& quantities) {
  std::vector<Warning> all = state.warnings;
  for (const Quantity& quantity : quantities)
    for (const Warning& warning : quantity.warnings(state))
      if (std::find(all.begin(), all.end(), warning) == all.end())
        all.push_back(warning);
  return all.size();
}

void check_row(const ScreenTable& table, std::size_t i, const State& state,
               const std::vector<Quantity>& quantities = {}) {
  CHECK((table.status[i] == ScreenStatus::usable) == state.usable());
  CHECK(table.certificate[i] == state.solve_report.certificate);
  CHECK(static_cast<std::size_t>(table.warnings[i]) ==
        warning_count(state, quantities));
  CHECK(same_bits(table.carbide_volume_percent[i], state.carbide_volume_percent));
  CHECK(same_bits(table.carbon_activity[i], state.carbon_activity));
  CHECK(same_bits(table.gibbs_energy[i], state.gibbs_energy));
  for (std::size_t k = 0; k < table.kinds.size(); ++k)
    CHECK(same_bits(table.volume_percent[i * table.kinds.size() + k],
                    state.volume_percent_of(table.kinds[k])));
  for (std::size_t e = 0; e < table.elements.size(); ++e)
    CHECK(same_bits(table.matrix_weight_percent[i * table.elements.size() + e],
                    state.matrix.weight_percent[table.elements[e]]));
}

std::string message_of(const std::function<void()>& call) {
  try {
    call();
  } catch (const InputError& error) {
    return error.what();
  }
  return "no error";
}

ScreenTable joined(const std::vector<ScreenTable>& chunks) {
  ScreenTable all = chunks.front();
  for (std::size_t i = 1; i < chunks.size(); ++i) all.append(chunks[i]);
  return all;
}

}  // namespace

TEST_CASE("rows that are near are followed, and agree with single soaks") {
  Heats heats = punch_heats();
  heats.temperatures.clear();
  for (int celsius = 1000; celsius < 1160; celsius += 5)
    heats.temperatures.push_back(Temperature::celsius(celsius));
  const ScreenTable table = screen(heats.input());
  std::size_t followed = 0;
  for (std::size_t row = 0; row < table.rows(); ++row) {
    followed += table.certificate[row] == Certificate::followed;
    const State state =
        Steel(heats.input().composition(row)).soak(heats.temperatures[row % 32]);
    CHECK(table.status[row] == ScreenStatus::usable);
    CHECK(table.gibbs_energy[row] ==
          doctest::Approx(state.gibbs_energy).epsilon(1e-12));
    CHECK(table.carbide_volume_percent[row] ==
          doctest::Approx(state.carbide_volume_percent).epsilon(1e-9));
    CHECK(static_cast<std::size_t>(table.warnings[row]) == state.warnings.size());
  }
  CHECK(2 * followed > table.rows());
}

TEST_CASE("a quantity of the user sees condition numbers of followed rows too") {
  Heats heats = punch_heats();
  heats.temperatures.clear();
  for (int i = 0; i < 8; ++i)
    heats.temperatures.push_back(Temperature::celsius(1050.0 + i));
  ScreenOptions options;
  const ScreenTable without = screen(heats.input(), options);
  options.quantities = {Quantity("condition number", "1", [](const State& state) {
    return state.solve_report.condition_number;
  })};
  const ScreenTable table = screen(heats.input(), options);
  REQUIRE(table.rows() == 16);
  for (const double number : table.quantity) CHECK(number > 1.0);
  CHECK(table.certificate == without.certificate);
  CHECK(table.gibbs_energy == without.gibbs_energy);
  CHECK(table.matrix_weight_percent == without.matrix_weight_percent);
}

TEST_CASE("rows that are far are single soaks, bit for bit") {
  Heats heats = punch_heats();
  ScreenOptions options;
  options.quantities = {quantities::hardness_hrc(), quantities::mass_percent("M6C")};
  SUBCASE("every composition at every temperature") {
    const ScreenTable table = screen(heats.input(), options);
    REQUIRE(table.rows() == 4);
    CHECK(table.quantities ==
          std::vector<std::string>{"as-quenched hardness [HRC]", "M6C [mass%]"});
    CHECK(table.brief() ==
          "4 rows, long-hold limit, 4 usable, warnings: 307 in 2, 331 in 1");
    for (std::size_t row = 0; row < 4; ++row) {
      const State state =
          Steel(heats.input().composition(row)).soak(heats.temperatures[row % 2]);
      check_row(table, row, state, options.quantities);
      for (const std::size_t q : {0U, 1U})
        CHECK(table.quantity[2 * row + q] == options.quantities[q].value(state));
    }
  }
  SUBCASE("each at its own, volumes at the soak temperature") {
    heats.one_per_composition = true;
    options.soak.basis = VolumeBasis::soak;
    const ScreenTable table = screen(heats.input(), options);
    REQUIRE(table.rows() == 2);
    for (std::size_t row = 0; row < 2; ++row)
      check_row(table, row,
                Steel(heats.input().composition(row))
                    .soak(heats.temperatures[row], options.soak),
                options.quantities);
  }
}

TEST_CASE("kinds and elements are those of the file") {
  const ScreenTable table = screen(punch_heats().input());
  CHECK(table.kinds == std::vector<std::string>{"MC", "M6C", "M7C3", "M23C6", "M3C",
                                                "M2C", "M3C2", "hexagonal MC"});
  CHECK(table.elements.size() == default_parameters()->elements.size());
  CHECK(table.parameters_hash == content_hash(*default_parameters()));
}

TEST_CASE("rows tell what was soaked") {
  const Heats heats = punch_heats();
  const ScreenTable table = screen(heats.input());
  CHECK(table.steel_elements == heats.elements);
  CHECK(table.rows_per_composition == 2);
  REQUIRE(table.kelvin.size() == 4);
  for (std::size_t row = 0; row < 4; ++row) {
    CHECK(table.kelvin[row] == heats.temperatures[row % 2].in_kelvin());
    for (std::size_t e = 0; e < 6; ++e)
      CHECK(table.steel_weight_percent[6 * row + e] ==
            heats.numbers[6 * (row / 2) + e]);
  }
}

TEST_CASE("a screen tells its warnings by code, each with a text") {
  const Heats heats = punch_heats();
  const ScreenTable table = screen(heats.input());
  std::map<std::string, std::size_t> counted;
  std::map<std::string, ScreenWarning> first;
  for (std::size_t row = 0; row < 4; ++row) {
    const State state =
        Steel(heats.input().composition(row)).soak(heats.temperatures[row % 2]);
    for (const Warning& warning : state.warnings) {
      ++counted[warning.code];
      first.try_emplace(warning.code, ScreenWarning{warning.code, row, warning.text});
    }
  }
  REQUIRE(counted.contains("gibbsteel.warning.307"));
  CHECK(counted["gibbsteel.warning.307"] == 2);
  CHECK(table.count_warnings() == counted);
  REQUIRE(table.warning_texts.size() == first.size());
  for (const ScreenWarning& warning : table.warning_texts)
    CHECK(warning == first[warning.code]);
  CHECK(table.full().find(
            "\n! [gibbsteel.warning.307] in 2 rows, first in row 2: Not "
            "modelled, and left\n  out of the calculation: P 0.02 wt%.\n") !=
        std::string::npos);
}

TEST_CASE("a table cut short forgets the warnings of the rows cut off") {
  ScreenTable table = screen(punch_heats().input());
  const auto all = table.warning_texts;
  table.resize(2);
  CHECK(table.count_warnings().count("gibbsteel.warning.307") == 0);
  ScreenTable again = screen(punch_heats().input());
  table.append(again);
  for (const ScreenWarning& warning : table.warning_texts)
    if (warning.code == "gibbsteel.warning.307") CHECK(warning.first_row == 4);
  CHECK(table.count_warnings()["gibbsteel.warning.307"] == 2);
}

TEST_CASE("a table of an earlier version knows only how many warnings") {
  ScreenTable table = screen(punch_heats().input());
  table.warnings = {0, 1, 2, 0};
  table.warning_bits.assign(4, 0);
  table.warning_texts.clear();
  CHECK(table.brief() == "4 rows, long-hold limit, 4 usable, warnings in 2 rows");
  CHECK(table.full().find("\n! 2 rows with warnings of unknown code\n") !=
        std::string::npos);
}

TEST_CASE("threads, chunks, pieces and the first row change no bit") {
  const Heats heats = chromium_heats(150);
  ScreenOptions options;
  options.threads = 1;
  const ScreenTable serial = screen(heats.input(), options);
  REQUIRE(serial.rows() == 150);
  CHECK(serial.count() ==
        std::map<ScreenStatus, std::size_t>{{ScreenStatus::usable, 150}});
  SUBCASE("threads") {
    options.threads = 3;
    CHECK(screen(heats.input(), options) == serial);
  }
  SUBCASE("chunks; none is larger than asked for, in whole blocks") {
    options.chunk_rows = 1;
    std::vector<ScreenTable> chunks;
    const auto keep = [&](ScreenTable&& chunk) {
      CHECK(chunk.rows() <= kScreenBlockRows);
      chunks.push_back(std::move(chunk));
      return true;
    };
    CHECK(screen_chunks(heats.input(), options, keep) == 150);
    CHECK(chunks.size() == 3);
    CHECK(joined(chunks) == serial);
  }
}

TEST_CASE("a line goes on where a set of elements was compiled anew") {
  const auto set = default_parameters();
  const std::vector<std::string> elements{"C", "Cr", "Fe"};
  std::vector<std::string> phases;
  for (const Phase& phase : set->phases) phases.push_back(phase.name);
  const auto one = std::make_shared<const PhaseSystem>(set, elements, phases);
  const auto other = std::make_shared<const PhaseSystem>(set, elements, phases);
  const auto solved = [&](const std::shared_ptr<const PhaseSystem>& later) {
    std::vector<internal::RowProblem> rows;
    for (std::size_t i = 0; i < 8; ++i) {
      const double carbon = 0.02 + 0.0002 * static_cast<double>(i);
      rows.push_back({i,
                      i < 4 ? one : later,
                      {carbon, 0.05, 0.95 - carbon},
                      Temperature::celsius(950)});
    }
    std::vector<Equilibrium> results(rows.size());
    internal::solve_block(rows, {}, [&](std::size_t i, const Equilibrium& result) {
      results[i] = result;
    });
    return results;
  };
  const auto whole = solved(one), anew = solved(other);
  CHECK(whole[4].report.certificate == Certificate::followed);
  for (std::size_t i = 0; i < whole.size(); ++i) {
    CHECK(whole[i].report.certificate == anew[i].report.certificate);
    CHECK(whole[i].gibbs_energy == anew[i].gibbs_energy);
  }
}

TEST_CASE("more sets of elements than are kept: threads change no bit") {
  const std::vector<std::string> alloy{"Cr", "Mo", "W", "V", "Co", "Ni", "Mn"};
  Heats heats{{"C"}, {}, celsius({950}), false};
  heats.elements.insert(heats.elements.end(), alloy.begin(), alloy.end());
  for (std::size_t k = 0; k < 128; ++k) {
    const std::size_t which = k * 37 % 128;  // neighbours share few elements
    for (int heat = 0; heat < 4; ++heat) {
      heats.numbers.push_back(0.6 + 0.01 * heat);
      for (std::size_t e = 0; e < alloy.size(); ++e)
        heats.numbers.push_back(which >> e & 1 ? 0.5 + 0.05 * heat : 0.0);
    }
  }
  ScreenOptions options;
  options.threads = 1;
  const ScreenTable serial = screen(heats.input(), options);
  options.threads = 8;
  for (int run = 0; run < 3; ++run) CHECK(screen(heats.input(), options) == serial);
}

TEST_CASE("chunks of any size end") {
  const Heats heats = chromium_heats(3 * kScreenBlockRows + 5);
  const ScreenTable whole = screen(heats.input());
  for (const std::size_t rows :
       {std::numeric_limits<std::size_t>::max(),
        std::numeric_limits<std::size_t>::max() - kScreenBlockRows,
        heats.input().rows(), kScreenBlockRows}) {
    ScreenOptions options;
    options.chunk_rows = rows;
    options.first_row = 1;
    std::vector<ScreenTable> chunks;
    const auto keep = [&](ScreenTable&& chunk) {
      chunks.push_back(std::move(chunk));
      return chunks.size() < 100;
    };
    CHECK(screen_chunks(heats.input(), options, keep) == whole.rows());
    CHECK(chunks.size() == (rows == kScreenBlockRows ? 4 : 1));
    const ScreenTable all = joined(chunks);
    REQUIRE(all.rows() == whole.rows() - 1);
    for (std::size_t i = 0; i < all.rows(); ++i)
      CHECK(same_bits(all.gibbs_energy[i], whole.gibbs_energy[i + 1]));
  }
}

TEST_CASE("rows from the middle of a block to the middle of another") {
  const Heats heats = chromium_heats(150);
  ScreenOptions options;
  const ScreenTable serial = screen(heats.input(), options);
  SUBCASE("three parts") {
    options.first_row = 30;
    options.last_row = 70;
    const ScreenTable part = screen(heats.input(), options);
    REQUIRE(part.rows() == 40);
    CHECK(part.brief() == "40 rows from row 30, long-hold limit, 40 usable");
    for (std::size_t i = 0; i < 40; ++i)
      CHECK(part.gibbs_energy[i] == serial.gibbs_energy[30 + i]);
    options.first_row = 0;
    options.last_row = 30;
    const ScreenTable before = screen(heats.input(), options);
    options.first_row = 70;
    options.last_row = 1000;
    CHECK(joined({before, part, screen(heats.input(), options)}) == serial);
  }
  SUBCASE("pieces at multiples of a block") {
    Heats first = heats, second = heats;
    first.numbers.resize(128);
    second.numbers.erase(second.numbers.begin(), second.numbers.begin() + 128);
    CHECK(joined({screen(first.input()), screen(second.input())}) == serial);
  }
}

TEST_CASE("a screen that is stopped says where to go on, and goes on") {
  const Heats heats = chromium_heats(150);
  ScreenOptions options;
  options.threads = 2;
  const ScreenTable whole = screen(heats.input(), options);
  options.threads = 1;
  SUBCASE("by the progress function") {
    std::vector<std::size_t> told;
    const auto stop = [&](std::size_t done) {
      told.push_back(done);
      return done < 128;
    };
    ScreenTable part = screen(heats.input(), options, stop);
    CHECK(told == std::vector<std::size_t>{64, 128});
    CHECK(part.cancelled());
    CHECK(part.next_row() == 128);
    CHECK(part.brief() ==
          "128 rows, long-hold limit, 128 usable, CANCELLED, 22 not done");
    options.first_row = part.next_row();
    part.append(screen(heats.input(), options));
    part.rows_asked = 150;
    CHECK(part == whole);
  }
  SUBCASE("by the sink") {
    options.chunk_rows = 64;
    const auto one = [](ScreenTable&&) { return false; };
    CHECK(screen_chunks(heats.input(), options, one) == 64);
  }
}

TEST_CASE("a screen that is stopped from inside has no row missing before its end") {
  const Heats heats = chromium_heats(150);
  ScreenOptions options;
  options.threads = 1;
  SUBCASE("by a quantity: its block counts as not done") {
    const auto function = [](const State& state) -> double {
      if (state.analysis.given["Cr"] > 1.0 + 0.04 * 99.5) throw StopScreen{};
      return 1.0;
    };
    options.quantities = {Quantity("one", "", function)};
    const ScreenTable part = screen(heats.input(), options);
    CHECK(part.rows() == 64);
    CHECK(part.quantity == std::vector<double>(64, 1.0));
  }
  SUBCASE("with several threads") {
    const ScreenTable whole = screen(heats.input(), options);
    options.threads = 3;
    const auto stop = [&](std::size_t) { return false; };
    const ScreenTable part = screen(heats.input(), options, stop);
    CHECK(part.count()[ScreenStatus::usable] == part.rows());
    for (std::size_t i = 0; i < part.rows(); ++i)
      CHECK(part.gibbs_energy[i] == whole.gibbs_energy[i]);
  }
}

TEST_CASE("a bad row is flagged and stops nothing") {
  const double inf = std::numeric_limits<double>::infinity();
  Heats heats{{"C", "Cr", "Cu"},
              {0.8,  4.0,  0.0,    //
               kNan, 4.0,  0.0,    //
               0.8,  inf,  0.0,    //
               0.8,  -4.0, 0.0,    //
               60.0, 50.0, 0.0,    //
               0.0,  0.0,  100.0,  //
               0.8,  4.0,  0.0,    //
               0.8,  4.0,  0.0},
              celsius({1000, 1000, 1000, 1000, 1000, 1000, 5000, kNan}),
              true};
  const ScreenTable table = screen(heats.input());
  CHECK(table.status == std::vector<ScreenStatus>{
                            usable, composition_not_finite, composition_not_finite,
                            composition_negative, composition_sum, nothing_modelled,
                            temperature_outside, temperature_outside});
  for (std::size_t i = 1; i < 8; ++i) {
    CHECK(std::isnan(table.carbide_volume_percent[i]));
    CHECK(std::isnan(table.matrix_weight_percent[i * table.elements.size()]));
    CHECK(table.certificate[i] == Certificate::none);
  }
  CHECK(table.brief() ==
        "8 rows, long-hold limit, 1 usable, 2 composition not finite, 1 composition "
        "negative, 1 composition sum, 1 nothing modelled, 2 temperature outside");
}

TEST_CASE("a row without a result says why") {
  const Heats heats{{"C", "Cr"}, {0.8, 4.0}, celsius({1000}), false};
  SUBCASE("with Fe given the sum must be 100") {
    const Heats with_iron{{"Fe", "C"}, {99.2, 0.8, 90.0, 0.8}, celsius({1000}), false};
    CHECK(screen(with_iron.input()).status ==
          std::vector<ScreenStatus>{usable, composition_sum});
  }
  SUBCASE("soaks without a result") {
    ScreenOptions options;
    options.soak.phases = {{"graphite"}};
    CHECK(screen(heats.input(), options).status ==
          std::vector<ScreenStatus>{infeasible});
    options.soak = {};
    options.soak.solve.max_newton_steps = 1;
    const ScreenTable early = screen(heats.input(), options);
    CHECK(early.status == std::vector<ScreenStatus>{stalled});
    CHECK(early.certificate == std::vector<Certificate>{Certificate::none});
  }
  SUBCASE("a quantity that fails leaves the other numbers") {
    ScreenOptions options;
    const Quantity fails("fails", "", [](const State&) -> double {
      throw std::domain_error("not of this row");
    });
    options.quantities = {fails, quantities::matrix("Cr")};
    const ScreenTable failed = screen(heats.input(), options);
    CHECK(failed.status == std::vector<ScreenStatus>{quantity_failed});
    CHECK(std::isnan(failed.quantity[0]));
    CHECK(failed.quantity[1] > 3.0);
    CHECK(failed.carbide_volume_percent ==
          screen(heats.input()).carbide_volume_percent);
    const ScreenWarning said{"gibbsteel.warning.361", 0, "fails: not of this row"};
    CHECK(failed.warning_texts.back() == said);
    CHECK(failed.count_warnings().at("gibbsteel.warning.361") == 1);
    // Beside those of the state itself.
    const auto others = screen(heats.input());
    CHECK(failed.warnings[0] == others.warnings[0] + 1);
    CHECK(failed.warning_texts.size() == others.warning_texts.size() + 1);
  }
}

TEST_CASE("an empty screen has no rows and is complete") {
  const Heats heats{{"C"}, {}, celsius({1000}), false};
  const ScreenTable table = screen(heats.input());
  CHECK(table.rows() == 0);
  CHECK_FALSE(table.cancelled());
  CHECK(table.brief() == "0 rows, long-hold limit");
}

TEST_CASE("what cannot be a screen is refused") {
  const auto refused = [](const Heats& heats, std::size_t first_row = 0) {
    ScreenOptions options;
    options.first_row = first_row;
    return message_of([&] { screen(heats.input(), options); });
  };
  CHECK(refused({{}, {}, celsius({1000}), false}) ==
        "[gibbsteel.input.320] compositions: have no columns; name the element of "
        "each column, for instance C, Cr, Mo");
  CHECK(refused({{"C", "Cr"}, {0.5, 1.0, 0.6}, celsius({1000}), false}) ==
        "[gibbsteel.input.320] compositions: are 3 numbers for 2 columns; give one "
        "number per element in every row");
  CHECK(refused({{"C", "cr", "C"}, {0.5, 1.0, 0.6}, celsius({1000}), false}) ==
        "[gibbsteel.input.201] elements: 'cr' is not the symbol of an element; did "
        "you mean 'Cr'?\n"
        "[gibbsteel.input.321] elements: 'C' has two columns; give each element one "
        "column");
  CHECK(refused({{"C"}, {0.5, 0.6}, {}, false}) ==
        "[gibbsteel.input.322] temperatures: are none; give at least one temperature");
  CHECK(refused({{"C"}, {0.5, 0.6}, celsius({1000}), true}) ==
        "[gibbsteel.input.322] temperatures: are 1 for 2 compositions; give one per "
        "composition");
  CHECK(refused({{"C"}, {0.5, 0.6}, celsius({1000}), false}, 3) ==
        "[gibbsteel.input.323] first_row: is 3 of 2 rows; give the number of a row, "
        "counted from 0");
  CHECK(refused({{"C"}, {0.5, 0.6}, {Temperature::kelvin(20.0)}, false}) ==
        "[gibbsteel.input.210] temperature: is 20.0 K = -253.1 C; give 300 K to 2500 K "
        "(27 C to 2227 C, 80 F to 4040 F) and check the unit");
}

TEST_CASE("tables of other settings are not joined") {
  const Heats heats{{"C"}, {0.5}, celsius({1000}), false};
  ScreenOptions options;
  options.soak.basis = VolumeBasis::soak;
  ScreenTable table = screen(heats.input());
  CHECK(message_of([&] { table.append(screen(heats.input(), options)); }) ==
        "[gibbsteel.input.326] tables: two of them differ in columns, parameters or "
        "volume basis; join tables that were screened with the same settings");
}
