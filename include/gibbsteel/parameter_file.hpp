#pragma once
/// Reading, checking, layering and writing parameter files (JSON; the format is
/// described in thermo_data/README.md and thermo_data/parameter_file.schema.json).

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "gibbsteel/parameter_set.hpp"

namespace gibbsteel {

/// Bounds that keep a stranger's file from costing more than milliseconds. A file
/// beyond one of them is refused with code gibbsteel.data.103.
struct FileLimits {
  std::size_t bytes = 8u << 20;     ///< of text
  std::size_t depth = 16;           ///< nested objects and arrays
  std::size_t values = 400'000;     ///< JSON values in the file
  std::size_t text_length = 4'000;  ///< bytes of one string
  std::size_t name_length = 120;    ///< bytes of one key
  std::size_t elements = 40;
  std::size_t curves = 1'000;
  std::size_t curve_nesting = 8;  ///< curves made of curves
  std::size_t pieces_per_curve = 40;
  std::size_t curve_steps = 200'000;  ///< terms met when every curve is spelled out
  std::size_t phases = 200;
  std::size_t sublattices_per_phase = 6;
  std::size_t constituents_per_phase = 64;
  std::size_t terms_per_phase = 4'000;
  std::size_t correlations = 200;
  std::size_t problems_reported = 200;  ///< then the list ends with "and more"
};

/// Reads one complete file, or a layer: with `on_top_of` the file may leave out
/// anything that lies below; it may replace terms, add elements, curves, sources,
/// phases and constituents. Numbers keep the name of the file they came from.
/// @throws DataError with every problem of the file; gibbsteel.data.172 alone where it
///         is a layer and nothing is given to lie on
SharedParameters load_parameters(const std::filesystem::path& file,
                                 const SharedParameters& on_top_of = nullptr);

/// The same from text; `file_name` is used in messages and provenance only.
SharedParameters parse_parameters(std::string_view text, const std::string& file_name,
                                  const SharedParameters& on_top_of = nullptr,
                                  const FileLimits& limits = {});

/// The whole set as one file in canonical form. Reading it back and writing it again
/// gives the same bytes.
std::string write_parameters(const ParameterSet& set);

/// The file that ships with the library (thermo_data/tool_steel.json, embedded at build
/// time); read and checked once, then shared.
SharedParameters default_parameters();

/// 16 hexadecimal digits that identify the content (FNV-1a of the canonical text).
/// Finds mix-ups; is no protection against intent.
std::string content_hash(const ParameterSet& set);

/// Markdown page that lists every number with its source and kind
/// (thermo_data/SOURCES.md).
std::string sources_page(const ParameterSet& set);

}  // namespace gibbsteel
