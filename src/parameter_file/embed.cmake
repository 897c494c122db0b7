# The shipped parameter file becomes part of the library, so that default_parameters()
# needs no path. Written as bytes: string literals of this length are not portable.
set(embedded ${PROJECT_BINARY_DIR}/generated/embedded_tool_steel.cpp)
add_custom_command(
  OUTPUT ${embedded}
  COMMAND ${CMAKE_COMMAND} -DFROM=${PROJECT_SOURCE_DIR}/thermo_data/tool_steel.json
          -DTO=${embedded} -P ${CMAKE_CURRENT_LIST_DIR}/embed_bytes.cmake
  DEPENDS ${PROJECT_SOURCE_DIR}/thermo_data/tool_steel.json
          ${CMAKE_CURRENT_LIST_DIR}/embed_bytes.cmake
  COMMENT "Embedding thermo_data/tool_steel.json")
target_sources(gibbsteel PRIVATE ${embedded})
