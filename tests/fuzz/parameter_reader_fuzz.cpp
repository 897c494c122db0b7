/// The bytes are a parameter file.

#include "file_checks.hpp"

using namespace gibbsteel;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  SharedParameters set;
  if (fuzz::file_accepted([&] { set = parse_parameters(text, "fuzz.json"); }))
    fuzz::check_round_trip(*set);
  return 0;
}
