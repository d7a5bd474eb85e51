# SPDX-License-Identifier: GPL-3.0-or-later
# One rule for every target of ours: the flags our own code is held to, and a library per folder.

function(littoral_flags target)
    target_compile_options(${target} PRIVATE -Wall -Wextra -Wpedantic -Wconversion -Werror)
    target_compile_definitions(${target} PRIVATE QT_NO_CAST_FROM_ASCII=1 QT_NO_FOREACH=1)
    if(CMAKE_BUILD_TYPE STREQUAL "Debug")
        target_compile_definitions(${target} PRIVATE _GLIBCXX_ASSERTIONS=1 LITTORAL_CHECKS=1)
    endif()
    if(LITTORAL_SANITIZE)
        target_compile_options(${target} PRIVATE -fsanitize=${LITTORAL_SANITIZE} -fno-omit-frame-pointer)
        target_link_options(${target} PRIVATE -fsanitize=${LITTORAL_SANITIZE})
    endif()
    if(LITTORAL_COVERAGE)
        target_compile_options(${target} PRIVATE --coverage)
        target_link_options(${target} PRIVATE --coverage)
    endif()
endfunction()

# littoral_read_first(<group> <std|qt|form|widget> <targets>... [HEADERS <header>...]): what nearly every file of the targets
# reads first, read once for all of them; half of the time to compile a file went into these headers. The targets of one
# group are compiled with the same options.
function(littoral_read_first group kind)
    cmake_parse_arguments(arg "" "" "HEADERS" ${ARGN})
    set(std <algorithm> <array> <cmath> <functional> <map> <memory> <optional> <set> <span> <string> <variant> <vector>)
    set(qt ${std} <QCoreApplication> <QDateTime> <QHash> <QJsonArray> <QJsonDocument> <QJsonObject> <QLocale> <QString>
        <QStringList> <QTimeZone>)
    set(form ${qt} <QAbstractItemModel> <QAccessible> <QFontMetrics> <QKeyEvent> <QPainter> <QPainterPath> <QTimer>)
    set(widget ${form} <QApplication> <QBoxLayout> <QComboBox> <QLabel> <QLineEdit> <QPushButton> <QScrollArea> <QTableView>
        <QWidget>)
    foreach(target ${arg_UNPARSED_ARGUMENTS})
        get_property(first GLOBAL PROPERTY littoral_first_of_${group})
        if(first)
            target_precompile_headers(${target} REUSE_FROM ${first})
        else()
            target_precompile_headers(${target} PRIVATE ${${kind}} ${arg_HEADERS})
            set_property(GLOBAL PROPERTY littoral_first_of_${group} ${target})
        endif()
    endforeach()
endfunction()

# littoral_unite(<target>): with LITTORAL_UNITED several files of the target are compiled as one, which reads the headers once
# for all of them. A file that keeps a name of its own which another one has, too, is compiled alone (SKIP_UNITY_BUILD_INCLUSION)
# or has the name in local_names.h.
option(LITTORAL_UNITED "Compile files together: a clean build in much less time, a small change in more" OFF)
function(littoral_unite target)
    set_target_properties(${target} PROPERTIES UNITY_BUILD ${LITTORAL_UNITED} UNITY_BUILD_BATCH_SIZE 10
        UNITY_BUILD_UNIQUE_ID LITTORAL_FILE UNITY_BUILD_CODE_BEFORE_INCLUDE "#include \"resources/cmake/local_names.h\"")
    # A type that a file keeps to itself is only a fault in a header; joined files look like one.
    target_compile_options(${target} PRIVATE "$<$<BOOL:${LITTORAL_UNITED}>:-Wno-subobject-linkage>")
endfunction()

# littoral_module(<name> [LINKS <targets>...]): static library littoral_<name> from the .cpp files of the current folder's
# subfolder <name>; headers are included as "<layer>/<name>/file.h". The links given are the only ones it gets, so an
# include that breaks the layering does not compile or link.
function(littoral_module name)
    cmake_parse_arguments(arg "" "" "LINKS" ${ARGN})
    file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${name}/*.cpp ${CMAKE_CURRENT_SOURCE_DIR}/${name}/*.h)
    list(FILTER sources EXCLUDE REGEX "/\\.")
    set(implementation ${sources})
    list(FILTER implementation INCLUDE REGEX "\\.cpp$")
    set(target littoral_${name})
    if(implementation)
        add_library(${target} STATIC ${sources})
        target_include_directories(${target} PUBLIC ${CMAKE_SOURCE_DIR})
        target_link_libraries(${target} PUBLIC ${arg_LINKS})
        littoral_flags(${target})
        if(arg_LINKS MATCHES "Qt6::" OR name MATCHES "^(care|wording|store|exchange|facade)$" OR CMAKE_CURRENT_SOURCE_DIR MATCHES "/ui$")
            set_target_properties(${target} PROPERTIES AUTOMOC ON)
        endif()
    else()
        add_library(${target} INTERFACE)
        target_include_directories(${target} INTERFACE ${CMAKE_SOURCE_DIR})
        target_link_libraries(${target} INTERFACE ${arg_LINKS})
    endif()
endfunction()
