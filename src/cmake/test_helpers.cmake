# Functions for the tests, shared by the folders tests, examples and benchmarks.

# Lets the named tests import the Python package of this build tree. Under a sanitizer its
# run-time library must be loaded before the interpreter, and libstdc++ with it, because
# the sanitizer looks for the C++ exception functions when it starts. Leaks are not looked
# for: the interpreter and numpy keep memory until the end on purpose.
function(gibbsteel_python_environment)
  set(environment
      PYTHONPATH=${PROJECT_BINARY_DIR}/python PYTHONDONTWRITEBYTECODE=1 MPLBACKEND=Agg
      GIBBSTEEL_SOURCE_DIR=${PROJECT_SOURCE_DIR})
  if(GIBBSTEEL_SANITIZE)
    set(libraries "")
    foreach(name libasan.so libtsan.so libstdc++.so.6)
      if((name STREQUAL "libasan.so" AND NOT GIBBSTEEL_SANITIZE MATCHES "address")
         OR (name STREQUAL "libtsan.so" AND NOT GIBBSTEEL_SANITIZE MATCHES "thread"))
        continue()
      endif()
      execute_process(
        COMMAND ${CMAKE_CXX_COMPILER} -print-file-name=${name}
        OUTPUT_VARIABLE path
        OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
      list(APPEND libraries ${path})
    endforeach()
    list(JOIN libraries ":" libraries)
    list(APPEND environment LD_PRELOAD=${libraries} ASAN_OPTIONS=detect_leaks=0
         UBSAN_OPTIONS=print_stacktrace=1)
  endif()
  set_property(TEST ${ARGN} APPEND PROPERTY ENVIRONMENT ${environment})
endfunction()

# Runs an example and compares what it prints with the stored output beside it.
#   gibbsteel_compare_output(test_name stored_file command...)
function(gibbsteel_compare_output test stored)
  string(REPLACE "/" "_" file_name ${test})
  add_test(NAME ${test}
           COMMAND ${CMAKE_COMMAND} "-DPROGRAM=${ARGN}" -DSTORED=${stored}
                   -DPRINTED=${CMAKE_CURRENT_BINARY_DIR}/${file_name}.printed -P
                   ${PROJECT_SOURCE_DIR}/src/cmake/compare_output.cmake)
endfunction()
