#pragma once
/// Many compositions at many temperatures: as many soaks as memory holds, or more, in
/// chunks. Every row has the numbers of the single soak of its steel within rounding
/// (1e-9 of a number): rows near the one before are followed from it, see Certificate.
///
/// Rows are numbered: row r is composition r / t at temperature r % t, where t is the
/// number of temperatures (1 when each composition has its own). They are solved in
/// blocks of kScreenBlockRows rows that begin at multiples of it, whatever the threads,
/// the chunks and the first row asked for; so none of these changes a bit. Who cuts a
/// screen into pieces and screens them apart cuts at multiples of kScreenBlockRows
/// compositions, and gets the same bits as well.

#include <functional>
#include <limits>
#include <span>

#include "gibbsteel/quantity.hpp"
#include "gibbsteel/screen_table.hpp"
#include "gibbsteel/steel.hpp"

namespace gibbsteel {

inline constexpr std::size_t kScreenBlockRows = 64;

/// The numbers belong to the caller and must last as long as the screen.
struct ScreenInput {
  std::vector<std::string> elements;     ///< of the columns; Fe may be left out
  std::span<const double> compositions;  ///< row by row [wt%], balance Fe
  std::vector<Temperature> temperatures;
  /// False: every composition at every temperature. True: temperature i belongs to
  /// composition i alone.
  bool one_per_composition = false;

  /// @pre elements is not empty, as in the two below
  std::size_t count() const noexcept { return compositions.size() / elements.size(); }
  std::size_t rows() const noexcept;
  NamedValues composition(std::size_t row) const;  ///< weight percent, as the columns
  std::span<const double> numbers(std::size_t row) const;  ///< the same, unnamed
  Temperature temperature(std::size_t row) const;
};

/// Thrown by a function of a quantity to stop the screen, as its progress function does
/// by returning false. Anything else that it throws flags the row.
struct StopScreen {};

struct ScreenOptions {
  /// As of a single soak; prove_every has no meaning here: every row is proven when
  /// that is asked for.
  SoakOptions soak;
  SharedParameters parameters;       ///< default_parameters() when null
  bool bind_tramp_elements = false;  ///< see read_analysis()
  std::vector<Quantity> quantities;  ///< more columns; called from several threads
  std::size_t first_row = 0;         ///< to go on where an earlier screen stopped
  std::size_t last_row = std::numeric_limits<std::size_t>::max();  ///< excluded
  /// Rows in memory at a time, rounded up to whole blocks; 0: 16 blocks per thread.
  std::size_t chunk_rows = 0;
  std::size_t threads = 0;  ///< 0: as many as the machine has cores
};

/// Takes a finished chunk; returns false to stop. Chunks come in order.
using ScreenSink = std::function<bool(ScreenTable&&)>;
/// Called on the calling thread every few blocks with the rows done; false stops.
using ScreenProgress = std::function<bool(std::size_t)>;

/// Screens chunk by chunk; memory does not grow with the number of rows. When the
/// caller stops, the last chunk holds the rows that were done without a gap.
///
/// A row that cannot be computed has a status that says why, and never stops the rest.
/// @return  the first row that is not done: first_row of a later call that goes on
/// @throws InputError gibbsteel.input.320 (no columns, or numbers that do not fill
///         them), .321 (a column twice), .322 (number of temperatures), .323 (rows
///         asked for), .201 (no such element), .210 (temperatures of all compositions),
///         .206 (see Quantity::problems()), .205, .212, .232 as a soak
std::size_t screen_chunks(const ScreenInput& input, const ScreenOptions& options,
                          const ScreenSink& sink, const ScreenProgress& progress = {});

/// The same, all rows in one table.
ScreenTable screen(const ScreenInput& input, const ScreenOptions& options = {},
                   const ScreenProgress& progress = {});

}  // namespace gibbsteel
