# cmake -DPROGRAM=... -DSTORED=... -DPRINTED=... -P compare_output.cmake
# Fails unless the program succeeds and prints exactly the stored text.

execute_process(COMMAND ${PROGRAM} OUTPUT_FILE ${PRINTED} COMMAND_ERROR_IS_FATAL ANY)
if(NOT EXISTS ${STORED})
  message(FATAL_ERROR "no stored output. Read ${PRINTED}; if it is right, keep it as "
                      "${STORED}")
endif()
execute_process(COMMAND diff -u ${STORED} ${PRINTED} RESULT_VARIABLE different)
if(different)
  message(FATAL_ERROR "printed text differs from the stored one. If the change is meant, "
                      "copy ${PRINTED} to ${STORED}")
endif()
