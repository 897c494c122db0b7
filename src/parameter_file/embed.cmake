# The data files that ship become part of the library, so that default_parameters() and
# published_measurements() need no path. Written as bytes: string literals of this length
# are not portable.
foreach(name tool_steel published_measurements)
  set(data ${PROJECT_SOURCE_DIR}/thermo_data/${name}.json)
  set(embedded ${PROJECT_BINARY_DIR}/generated/embedded_${name}.cpp)
  add_custom_command(
    OUTPUT ${embedded}
    COMMAND ${CMAKE_COMMAND} -DFROM=${data} -DTO=${embedded} -DFUNCTION=embedded_${name}
            -P ${CMAKE_CURRENT_LIST_DIR}/embed_bytes.cmake
    DEPENDS ${data} ${CMAKE_CURRENT_LIST_DIR}/embed_bytes.cmake
    COMMENT "Embedding thermo_data/${name}.json")
  target_sources(gibbsteel PRIVATE ${embedded})
endforeach()
