# Settings that every target of this build shares; none of them reaches a consumer.

if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES AND PROJECT_IS_TOP_LEVEL)
  set(CMAKE_BUILD_TYPE Release CACHE STRING "Build type" FORCE)
endif()

set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
set(CMAKE_VERIFY_INTERFACE_HEADER_SETS ${GIBBSTEEL_BUILD_TESTS})

if(PROJECT_IS_TOP_LEVEL AND NOT DEFINED CMAKE_CXX_COMPILER_LAUNCHER)
  find_program(GIBBSTEEL_CCACHE ccache)
  mark_as_advanced(GIBBSTEEL_CCACHE)
  if(GIBBSTEEL_CCACHE)
    set(CMAKE_CXX_COMPILER_LAUNCHER ${GIBBSTEEL_CCACHE})
  endif()
endif()

if(GIBBSTEEL_SANITIZE)
  # On every target of the tree: code with and without a sanitizer does not mix.
  add_compile_options(-fsanitize=${GIBBSTEEL_SANITIZE} -fno-sanitize-recover=all
                      -fno-omit-frame-pointer)
  add_link_options(-fsanitize=${GIBBSTEEL_SANITIZE})
endif()

if(GIBBSTEEL_BUILD_FUZZERS)
  # Coverage that libFuzzer reads, in the library too; main() comes with the programs.
  add_compile_options(-fsanitize=fuzzer-no-link)
endif()

# Warnings, and the same floating-point results on every machine: no fused multiply-add
# behind our back, whatever the compiler's default (clang's is on).
function(gibbsteel_build_flags target)
  target_compile_options(
    ${target} PRIVATE -ffp-contract=off -Wall -Wextra -Wpedantic -Wconversion -Wshadow
                      -Wsign-conversion $<$<BOOL:${GIBBSTEEL_WARNINGS_AS_ERRORS}>:-Werror>)
  # Tests and bindings do no work worth optimizing; under a sanitizer they compile in half
  # the time without it.
  if(NOT target STREQUAL gibbsteel)
    target_compile_options(${target} PRIVATE ${GIBBSTEEL_FACE_FLAGS})
  endif()
endfunction()
