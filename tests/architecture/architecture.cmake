# Rules of the house, checked on the source text: see rules.cmake.
include(architecture/rules.cmake)
set(architecture_dir ${CMAKE_CURRENT_SOURCE_DIR}/architecture)
foreach(rule ${RULES})
    add_test(NAME architecture_${rule} COMMAND ${CMAKE_COMMAND} -D ROOT=${PROJECT_SOURCE_DIR}
        -D RULE=${rule} -P ${architecture_dir}/check.cmake)
endforeach()
add_test(NAME architecture_rules_find_offences COMMAND ${CMAKE_COMMAND}
    -D FOLDER=${CMAKE_CURRENT_BINARY_DIR}/architecture -P ${architecture_dir}/self_test.cmake)
