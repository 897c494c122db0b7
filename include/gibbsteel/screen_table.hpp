#pragma once
/// What a screen gives for every row: numbers side by side, not states.

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "gibbsteel/state.hpp"

namespace gibbsteel {

/// What became of a row. Values are only ever appended.
enum class ScreenStatus : std::int8_t {
  not_done = 0,  ///< so that an array of zeros says so
  usable = 1,    ///< every number of the row may be used
  not_certified = 2,
  iteration_limit = 3,
  stalled = 4,
  infeasible = 5,              ///< the allowed phases cannot hold this composition
  composition_not_finite = 6,  ///< gibbsteel.input.202 of a single steel
  composition_negative = 7,    ///< .203
  composition_sum = 8,         ///< .204 above 100, .207 not 100 with Fe
  nothing_modelled = 9,        ///< .208
  temperature_outside = 10,    ///< .210
  /// The soak is usable; a quantity failed and is NaN: see warning .361 of the row.
  quantity_failed = 11,
};

/// "usable", "composition not finite"
std::string_view to_string(ScreenStatus) noexcept;
/// All names, by number.
std::vector<std::string> screen_status_names();

/// A warning that rows of a screen carry.
struct ScreenWarning {
  std::string code;           ///< "gibbsteel.warning.303"
  std::size_t first_row = 0;  ///< of those that carry it, counted within the table
  std::string text;           ///< in that row; others may hold other numbers
  bool operator==(const ScreenWarning&) const = default;
};

/// A family of steels that rows of a screen belong to.
struct ScreenFamily {
  std::string key;            ///< "high-speed", see hardening_family.hpp
  std::size_t first_row = 0;  ///< of those that belong to it, counted within the table
  bool operator==(const ScreenFamily&) const = default;
};

/// A run of consecutive rows of a screen. Tables of several columns stand row by row:
/// number k of row i is at i * columns + k. A number that does not exist is NaN.
struct ScreenTable {
  std::size_t first_row = 0;  ///< number of the first row within the whole screen
  std::size_t rows_asked = 0;
  /// Row r of the screen is composition r / this, counted from 0; 0: not known.
  std::size_t rows_per_composition = 0;
  std::vector<std::string> kinds;     ///< all carbides; graphite, liquid where allowed
  std::vector<std::string> elements;  ///< all elements of the parameter set
  std::vector<std::string> quantities;      ///< labels, as asked for
  std::vector<std::string> steel_elements;  ///< columns of the compositions given
  VolumeBasis basis = VolumeBasis::room;
  std::string parameters;  ///< title and edition of the parameter set
  std::string parameters_hash;

  std::vector<double> kelvin;
  std::vector<double> steel_weight_percent;  ///< rows x steel_elements, as given
  std::vector<ScreenStatus> status;
  std::vector<Certificate> certificate;
  /// How many the state of the row would carry; with hardening estimates among the
  /// quantities also theirs (gibbsteel.warning.330 to .338).
  std::vector<std::int32_t> warnings;
  /// Which: bit n stands for "gibbsteel.warning.(300 + n)".
  std::vector<std::uint64_t> warning_bits;
  std::vector<ScreenWarning> warning_texts;  ///< each code that occurs, by code
  /// Of the usable rows, by key, where a quantity rests on them
  /// (Quantity::by_family()).
  std::vector<ScreenFamily> families;
  std::vector<double> carbide_volume_percent;
  std::vector<double> carbon_activity;  ///< relative to graphite
  std::vector<double> gibbs_energy;     ///< [J/mol of atoms]
  std::vector<double> volume_percent;   ///< rows x kinds
  /// rows x elements, all matrix phases; NaN where there is none (molten)
  std::vector<double> matrix_weight_percent;
  std::vector<double> quantity;  ///< rows x quantities

  /// Rows that are done; fewer than were asked for when the caller stopped.
  std::size_t rows() const noexcept { return status.size(); }
  /// Number of the first row that is not done: where to go on.
  std::size_t next_row() const noexcept { return first_row + rows(); }
  bool cancelled() const noexcept { return rows() < rows_asked; }
  /// Makes room: new rows are not done and hold NaN; or cuts the last ones off.
  void resize(std::size_t rows);
  /// Adds the rows of another table as the next ones.
  /// @throws InputError gibbsteel.input.326 (other columns, parameters or basis)
  void append(const ScreenTable& next);
  /// Rows of each status that occurs.
  std::map<ScreenStatus, std::size_t> count() const;
  /// Rows that carry each code of warning_texts.
  std::map<std::string, std::size_t> count_warnings() const;
  /// What no row tells alone: that the rows are of several families
  /// (gibbsteel.warning.357).
  std::vector<Warning> table_warnings() const;
  /// Notes the family of row `at`. Not safe from several threads.
  void note_family(std::size_t at, const std::string& key);
  /// Notes the warnings of row `at`. Not safe from several threads.
  void note_warnings(std::size_t at, const std::vector<Warning>& carried);
  /// Same bits throughout; NaN equals NaN.
  bool operator==(const ScreenTable& other) const;
  std::string brief() const;  ///< one line
  /// Rows by status, every code of warning with a text, warnings of the table.
  std::string full() const;
};

}  // namespace gibbsteel
