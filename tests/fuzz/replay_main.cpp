/// Feeds files, or all files of folders, to a fuzzing program once each: what CTest
/// runs with any compiler, and how a finding is looked at in a debugger.

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <vector>

#include "promises.hpp"

namespace {

std::vector<std::filesystem::path> files_of(const std::filesystem::path& path) {
  if (!std::filesystem::is_directory(path)) return {path};
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(path))
    files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  return files;
}

double seconds_for(const std::filesystem::path& file) {
  std::ifstream stream(file, std::ios::binary);
  gibbsteel::fuzz::promise(stream.good(), "the stored input can be read");
  const std::vector<char> bytes{std::istreambuf_iterator<char>(stream), {}};
  std::fprintf(stderr, "%s\n", file.filename().c_str());  // the last one is the culprit
  const auto start = std::chrono::steady_clock::now();
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()),
                         bytes.size());
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start)
      .count();
}

}  // namespace

int main(int argc, char** argv) {
  std::size_t count = 0;
  double slowest = 0.0;
  for (int i = 1; i < argc; ++i)
    for (const auto& file : files_of(argv[i])) {
      slowest = std::max(slowest, seconds_for(file));
      ++count;
    }
  std::printf("%zu inputs, the slowest took %.3f s\n", count, slowest);
  return count > 0 ? 0 : 1;
}
