# cmake -D ROOT=project -D RULE=name -P check.cmake: fails when the project breaks the rule.
cmake_minimum_required(VERSION 3.25)
include(${CMAKE_CURRENT_LIST_DIR}/rules.cmake)
set(findings)
cmake_language(CALL rule_${RULE})
foreach(finding ${findings})
    message(SEND_ERROR "${finding}")
endforeach()
