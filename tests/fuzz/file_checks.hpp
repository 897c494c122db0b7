#pragma once
/// What holds for every parameter set that the reader accepts.

#include <fstream>
#include <iterator>
#include <string>

#include "gibbsteel/parameter_file.hpp"
#include "promises.hpp"

namespace gibbsteel::fuzz {

/// A parameter file of the tests, by its name below tests/parameter_file/.
inline std::string test_file(const std::string& name) {
  std::ifstream stream(
      std::string(GIBBSTEEL_SOURCE_DIR) + "/tests/parameter_file/" + name,
      std::ios::binary);
  promise(stream.good(), "the file of the tests is there");
  return {std::istreambuf_iterator<char>(stream), {}};
}

/// Writing it, reading that and writing it again gives the same bytes.
inline void check_round_trip(const ParameterSet& set) {
  const std::string written = write_parameters(set);
  SharedParameters again;
  promise(file_accepted([&] { again = parse_parameters(written, "written.json"); }),
          "what is written can be read");
  promise(write_parameters(*again) == written, "a file is byte-stable");
  promise(content_hash(*again) == content_hash(set), "and so is its hash");
  promise(!sources_page(set).empty(), "every set has a page of sources");
}

}  // namespace gibbsteel::fuzz
