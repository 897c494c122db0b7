# Compiles the consumer with nothing but what pkg-config says, and runs it.

set(ENV{PKG_CONFIG_PATH} ${LIBDIR}/pkgconfig)
execute_process(COMMAND ${PKG_CONFIG} --modversion gibbsteel
                OUTPUT_VARIABLE version OUTPUT_STRIP_TRAILING_WHITESPACE
                COMMAND_ERROR_IS_FATAL ANY)
if(NOT version STREQUAL WANTED)
  message(FATAL_ERROR "pkg-config says version ${version}, expected ${WANTED}")
endif()
execute_process(COMMAND ${PKG_CONFIG} --cflags --libs gibbsteel OUTPUT_VARIABLE flags
                COMMAND_ERROR_IS_FATAL ANY)
separate_arguments(flags UNIX_COMMAND "${flags}")
execute_process(COMMAND ${COMPILER} -std=c++20 ${SOURCE} ${flags} -o ${PROGRAM}
                COMMAND_ERROR_IS_FATAL ANY)
execute_process(COMMAND ${CMAKE_COMMAND} -E env LD_LIBRARY_PATH=${LIBDIR} ${PROGRAM}
                COMMAND_ERROR_IS_FATAL ANY)
