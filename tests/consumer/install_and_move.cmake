file(REMOVE_RECURSE ${FIRST} ${MOVED})
execute_process(COMMAND ${CMAKE_COMMAND} --install ${BUILD} --prefix ${FIRST}
                COMMAND_ERROR_IS_FATAL ANY)
file(RENAME ${FIRST} ${MOVED})
