# SPDX-License-Identifier: GPL-3.0-or-later
# The languages: resources/translations/*.ts compiled into the program, and the facts in other languages beside the English.
# `update-translations` brings the .ts files up to date with the sources; a build never does.

# Not the wrapper in /usr/bin: it asks for another Qt.
find_program(LITTORAL_LRELEASE NAMES lrelease PATHS ${QT6_INSTALL_PREFIX}/${QT6_INSTALL_BINS} /usr/lib/qt6/bin NO_DEFAULT_PATH)
find_program(LITTORAL_LRELEASE NAMES lrelease-qt6 lrelease6 lrelease REQUIRED)

# littoral_translations(<target>): compiles every language into that library, under :/littoral/translations and :/littoral/facts/<tag>.
function(littoral_translations target)
    file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/translations/*.ts)
    set(compiled)
    foreach(source ${sources})
        get_filename_component(name ${source} NAME_WLE)
        set(out ${CMAKE_CURRENT_BINARY_DIR}/translations/${name}.qm)
        add_custom_command(OUTPUT ${out} COMMAND ${LITTORAL_LRELEASE} -silent ${source} -qm ${out} DEPENDS ${source} VERBATIM)
        list(APPEND compiled ${out})
    endforeach()
    file(MAKE_DIRECTORY ${CMAKE_CURRENT_BINARY_DIR}/translations)
    qt_add_resources(${target} ${target}_languages PREFIX /littoral/translations BASE ${CMAKE_CURRENT_BINARY_DIR}/translations
        FILES ${compiled})
    file(GLOB facts CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/facts/*/*.json)
    qt_add_resources(${target} ${target}_facts PREFIX /littoral/facts BASE ${CMAKE_SOURCE_DIR}/resources/facts FILES ${facts})
endfunction()

add_custom_target(update-translations COMMAND ${CMAKE_SOURCE_DIR}/resources/translations/update
    WORKING_DIRECTORY ${CMAKE_SOURCE_DIR} VERBATIM)
