# SPDX-License-Identifier: MIT
# What `cmake --install` puts where, by GNUInstallDirs, and the Debian package that `cpack` makes of it.
if(CMAKE_INSTALL_DOCDIR STREQUAL "${CMAKE_INSTALL_DATAROOTDIR}/doc/${PROJECT_NAME}") # unless somebody wanted another
  set(CMAKE_INSTALL_DOCDIR ${CMAKE_INSTALL_DATAROOTDIR}/doc/tailpoint)
endif()
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY ON) # a package needs the program alone, not every test
set(TAILPOINT_URL "https://tailpoint.example" CACHE STRING "The project's home page, as the package and its metainfo name it")

set(here ${PROJECT_SOURCE_DIR}/resources)
install(TARGETS tailpoint RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(TARGETS tailpoint_gui LIBRARY DESTINATION ${TAILPOINT_LIBRARIES})
install(FILES ${here}/desktop/tailpoint.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${here}/desktop/tailpoint.mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME tailpoint.xml)
install(FILES ${here}/icons/tailpoint.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${here}/desktop/application-x-tailpoint-sketch+json.svg
  DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/mimetypes)
install(FILES ${here}/completions/tailpoint.bash
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME tailpoint)
install(FILES ${here}/completions/_tailpoint DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/site-functions)
install(FILES ${here}/completions/tailpoint.fish DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)
install(DIRECTORY ${PROJECT_SOURCE_DIR}/samples DESTINATION ${CMAKE_INSTALL_DATADIR}/tailpoint FILES_MATCHING PATTERN "*.json")
file(GLOB schemas CONFIGURE_DEPENDS ${here}/*.schema.json)
install(FILES ${schemas} DESTINATION ${CMAKE_INSTALL_DATADIR}/tailpoint)
install(FILES ${here}/LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR} RENAME copyright)
install(FILES ${here}/CHANGELOG.md ${here}/guide.md ${here}/keys.md DESTINATION ${CMAKE_INSTALL_DOCDIR})

configure_file(${here}/desktop/tailpoint.metainfo.xml.in
  ${CMAKE_BINARY_DIR}/installed/example.tailpoint.tailpoint.metainfo.xml @ONLY)
install(FILES ${CMAKE_BINARY_DIR}/installed/example.tailpoint.tailpoint.metainfo.xml
  DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)

# The manual names folders, which are only known when it is installed: a package has another prefix than the build.
install(CODE "
  set(PROJECT_VERSION \"${PROJECT_VERSION}\")
  cmake_path(ABSOLUTE_PATH CMAKE_INSTALL_PREFIX NORMALIZE OUTPUT_VARIABLE prefix)
  cmake_path(APPEND prefix \"${CMAKE_INSTALL_DATADIR}\" OUTPUT_VARIABLE data)
  cmake_path(APPEND prefix \"${CMAKE_INSTALL_DOCDIR}\" OUTPUT_VARIABLE docs)
  cmake_path(APPEND prefix \"${CMAKE_INSTALL_MANDIR}\" man1 tailpoint.1 OUTPUT_VARIABLE page)
  message(STATUS \"Installing: \$ENV{DESTDIR}\${page}\")
  configure_file(\"${here}/desktop/tailpoint.1.in\" \"\$ENV{DESTDIR}\${page}\" @ONLY)
  list(APPEND CMAKE_INSTALL_MANIFEST_FILES \"\${page}\")
")

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME tailpoint)
set(CPACK_PACKAGE_VENDOR "The Tailpoint authors")
set(CPACK_PACKAGE_CONTACT "The Tailpoint authors <authors@tailpoint.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "${PROJECT_DESCRIPTION}")
set(CPACK_PACKAGE_DESCRIPTION "Draw the forces that pull on one point, to scale or by typing: their
resultant, the parallelogram and the force triangle or polygon follow. Leave
magnitudes or directions to find, and the working is written out step by
step. With a lecture view, practice, problem sheets, marking and a command
line.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION education)
set(CPACK_DEBIAN_PACKAGE_HOMEPAGE ${TAILPOINT_URL})
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-dejavu-core") # without any font a figure has no words
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-stix, qt6-wayland")
include(CPack)
