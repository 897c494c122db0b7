# Installation: library, headers, parameter files, CMake package and pkg-config file. An
# installed copy may be moved: nothing in it names the place it was installed to.

include(CMakePackageConfigHelpers)

set(GIBBSTEEL_INSTALL_CMAKEDIR ${CMAKE_INSTALL_LIBDIR}/cmake/gibbsteel)
set(GIBBSTEEL_INSTALL_DATADIR ${CMAKE_INSTALL_DATADIR}/gibbsteel/thermo_data)

install(
  TARGETS gibbsteel
  EXPORT gibbsteelTargets
  FILE_SET HEADERS)
install(
  EXPORT gibbsteelTargets
  NAMESPACE gibbsteel::
  DESTINATION ${GIBBSTEEL_INSTALL_CMAKEDIR})
install(
  DIRECTORY ${PROJECT_SOURCE_DIR}/thermo_data/
  DESTINATION ${GIBBSTEEL_INSTALL_DATADIR}
  FILES_MATCHING
  PATTERN "*.json"
  PATTERN "*.md"
  PATTERN "accuracy" EXCLUDE)
install(FILES ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR})

configure_package_config_file(
  cmake/gibbsteelConfig.cmake.in gibbsteelConfig.cmake
  INSTALL_DESTINATION ${GIBBSTEEL_INSTALL_CMAKEDIR}
  PATH_VARS GIBBSTEEL_INSTALL_DATADIR)
# Below 1.0 a minor release may break: 0.2 does not satisfy a request for 0.1.
write_basic_package_version_file(gibbsteelConfigVersion.cmake
                                 COMPATIBILITY SameMinorVersion)
install(FILES ${CMAKE_CURRENT_BINARY_DIR}/gibbsteelConfig.cmake
              ${CMAKE_CURRENT_BINARY_DIR}/gibbsteelConfigVersion.cmake
        DESTINATION ${GIBBSTEEL_INSTALL_CMAKEDIR})

file(RELATIVE_PATH GIBBSTEEL_PC_PREFIX "/prefix/${CMAKE_INSTALL_LIBDIR}/pkgconfig"
     "/prefix")
# A program needs NLopt itself only with the static library.
if(BUILD_SHARED_LIBS)
  set(GIBBSTEEL_PC_REQUIRES Requires.private)
else()
  set(GIBBSTEEL_PC_REQUIRES Requires)
endif()
configure_file(cmake/gibbsteel.pc.in gibbsteel.pc @ONLY)
install(FILES ${CMAKE_CURRENT_BINARY_DIR}/gibbsteel.pc
        DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig)
