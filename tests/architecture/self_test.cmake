# cmake -D FOLDER=scratch -P self_test.cmake: every rule must find the offence laid out for it here,
# and nothing else.
cmake_minimum_required(VERSION 3.25)
include(${CMAKE_CURRENT_LIST_DIR}/rules.cmake)
set(ROOT ${FOLDER})

function(expect_finding rule file text sentence)
    file(REMOVE_RECURSE ${ROOT})
    file(WRITE ${ROOT}/core/sources.cmake "fine.cpp dialog_prompts.cpp json_parse.cpp")
    file(WRITE ${ROOT}/core/file/json_parse.cpp "#include <nlohmann/json.hpp>\n")
    file(WRITE ${ROOT}/core/sheet/fine.cpp "#include \"core/chart/chart.h\"  // as Qt draws it\n")
    file(WRITE ${ROOT}/app/window/dialog_prompts.cpp "QMessageBox::warning();\n")
    foreach(other ${RULES})
        set(findings)
        cmake_language(CALL rule_${other})
        if(findings)
            message(SEND_ERROR "Rule ${other} complains for no reason: ${findings}")
        endif()
    endforeach()
    file(WRITE ${ROOT}/${file} "${text}")
    set(findings)
    cmake_language(CALL rule_${rule})
    if(NOT findings STREQUAL sentence)
        message(SEND_ERROR "Rule ${rule} says \"${findings}\" instead of \"${sentence}\"")
    endif()
endfunction()

expect_finding(qt_in_core core/base/a.h "int f(const QString& s);\n"
    "core/base/a.h speaks of Qt: QString")
expect_finding(qt_in_core core/base/a.cpp "#include <Qt>\n" "core/base/a.cpp speaks of Qt: Qt")
expect_finding(room_arrows core/count/a.h "#include \"core/check/check.h\"\n"
    "core/count/a.h must not include core/check/check.h")
expect_finding(room_arrows core/words/a.h "#include \"app/cli/cli.h\"\n"
    "core/words/a.h must not include app/cli/cli.h")
expect_finding(json_library core/file/a.h "#include <nlohmann/json.hpp>\n"
    "core/file/a.h must not use the JSON library")
expect_finding(json_library core/check/a.cpp "nlohmann::json j;\n"
    "core/check/a.cpp must not use the JSON library")
expect_finding(silent_asserts tests/app/a.cpp "    QCOMPARE(1, 2);\n"
    "tests/app/a.cpp uses QCOMPARE, which a test here does not notice")
expect_finding(modal_dialogs app/panels/a.cpp "QFileDialog::getOpenFileName();\n"
    "app/panels/a.cpp must ask through UserPrompts, not by QFileDialog::getO")
expect_finding(listed_sources core/base/a.cpp "" "core/base/a.cpp is in no list of sources")
expect_finding(unique_types core/base/a.cpp
    "#pragma once\nnamespace lacewright {\nstruct Loop {\n};\nnamespace {\nstruct Own {\n};\n}  // namespace\nclass Loop final {\n};\n}  // namespace lacewright\n"
    "core/base/a.cpp defines Loop, which core/base/a.cpp defines too")
expect_finding(top_level notes.txt "" "notes.txt does not belong at the top of the project")
