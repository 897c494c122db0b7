/// The bytes are a layer for one of the small files of the tests (the first byte says
/// which), or two layers one above the other, separated by a line with "%%".

#include <array>

#include "file_checks.hpp"
#include "input_bytes.hpp"

using namespace gibbsteel;

namespace {

const SharedParameters& base(std::size_t which) {
  static const std::array bases{
      parse_parameters(fuzz::test_file("good/small.json"), "small.json"),
      parse_parameters(fuzz::test_file("good/graphite_only.json"), "graphite.json"),
      parse_parameters(fuzz::test_file("good/uncertain.json"), "uncertain.json")};
  return bases[which % bases.size()];
}

/// The set below does not change, whatever is laid on top of it.
SharedParameters laid_on(const SharedParameters& below, const std::string& text) {
  SharedParameters set;
  const bool good =
      fuzz::file_accepted([&] { set = parse_parameters(text, "layer.json", below); });
  if (!good) return nullptr;
  fuzz::promise(set->files.size() == below->files.size() + 1,
                "a set knows the files it is made of");
  fuzz::check_round_trip(*set);
  return set;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzz::InputBytes bytes(data, size);
  const SharedParameters& lowest = base(bytes.byte());
  const std::string text = bytes.rest();
  const std::size_t cut = text.find("\n%%\n");
  const SharedParameters first = laid_on(lowest, text.substr(0, cut));
  if (first && cut != std::string::npos) laid_on(first, text.substr(cut + 4));
  return 0;
}
