# Functions for the tests, shared by the folders tests, examples and benchmarks.

# Sets a variable to a command that runs Debian's Python with the package of this build tree:
#   gibbsteel_python_command(variable arguments...)
#
# Under a sanitizer its run-time library must be loaded before the interpreter, and
# libstdc++ with it, because the sanitizer looks for the C++ exception functions when it
# starts. Set for the interpreter only, not as a property of the test: CMake itself, which
# starts some of the tests, hangs under the thread sanitizer. Leaks are not looked for: the
# interpreter and numpy keep memory until the end on purpose.
function(gibbsteel_python_command command)
  set(environment
      PYTHONPATH=${PROJECT_BINARY_DIR}/python PYTHONDONTWRITEBYTECODE=1 MPLBACKEND=Agg
      GIBBSTEEL_SOURCE_DIR=${PROJECT_SOURCE_DIR})
  if(GIBBSTEEL_SANITIZE)
    set(runtime libasan.so)
    if(GIBBSTEEL_SANITIZE MATCHES "thread")
      set(runtime libtsan.so)
    endif()
    set(preload "")
    foreach(name ${runtime} libstdc++.so.6)
      execute_process(
        COMMAND ${CMAKE_CXX_COMPILER} -print-file-name=${name}
        OUTPUT_VARIABLE path
        OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
      list(APPEND preload ${path})
    endforeach()
    list(JOIN preload ":" preload)
    list(APPEND environment LD_PRELOAD=${preload} ASAN_OPTIONS=detect_leaks=0
         UBSAN_OPTIONS=print_stacktrace=1)
  endif()
  set(${command} ${CMAKE_COMMAND} -E env ${environment} ${Python_EXECUTABLE} ${ARGN}
      PARENT_SCOPE)
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
