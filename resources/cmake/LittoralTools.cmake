# SPDX-License-Identifier: GPL-3.0-or-later
# `format`, `format-check` and `tidy`: the tools a change passes before it is committed.

file(GLOB_RECURSE littoral_all_sources CONFIGURE_DEPENDS
    ${CMAKE_SOURCE_DIR}/app/*.cpp ${CMAKE_SOURCE_DIR}/app/*.h
    ${CMAKE_SOURCE_DIR}/core/*.cpp ${CMAKE_SOURCE_DIR}/core/*.h
    ${CMAKE_SOURCE_DIR}/ui/*.cpp ${CMAKE_SOURCE_DIR}/ui/*.h
    ${CMAKE_SOURCE_DIR}/tests/*.cpp ${CMAKE_SOURCE_DIR}/tests/*.h)

find_program(LITTORAL_CLANG_FORMAT NAMES clang-format-14 clang-format)
if(LITTORAL_CLANG_FORMAT)
    add_custom_target(format COMMAND ${LITTORAL_CLANG_FORMAT} -i ${littoral_all_sources} VERBATIM)
    add_custom_target(format-check COMMAND ${LITTORAL_CLANG_FORMAT} --dry-run --Werror ${littoral_all_sources} VERBATIM)
    if(LITTORAL_TESTS)
        add_test(NAME project.format COMMAND ${LITTORAL_CLANG_FORMAT} --dry-run --Werror ${littoral_all_sources})
        set_tests_properties(project.format PROPERTIES LABELS project)
    endif()
endif()

find_program(LITTORAL_RUN_CLANG_TIDY NAMES run-clang-tidy-14 run-clang-tidy)
if(LITTORAL_RUN_CLANG_TIDY)
    add_custom_target(tidy
        COMMAND ${LITTORAL_RUN_CLANG_TIDY} -quiet -p ${CMAKE_BINARY_DIR} "${CMAKE_SOURCE_DIR}/(app|core|ui)/.*\\.cpp$"
        WORKING_DIRECTORY ${CMAKE_SOURCE_DIR} VERBATIM)
endif()
