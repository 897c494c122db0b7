# Writes the bytes of the file FROM as a C++ array to the file TO, behind FUNCTION().
file(READ ${FROM} bytes HEX)
string(REGEX REPLACE "(..)" "0x\\1," bytes "${bytes}")
string(REPEAT "." 80 line)  # 16 bytes
string(REGEX REPLACE "(${line})" "\\1\n" bytes "${bytes}")
file(WRITE ${TO} "#include \"parameter_file/embedded_file.hpp\"
namespace gibbsteel::parameter_file {
namespace {
constexpr unsigned char kBytes[] = {
${bytes}
};
}
std::string_view ${FUNCTION}() {
  return {reinterpret_cast<const char*>(kBytes), sizeof kBytes};
}
}
")
