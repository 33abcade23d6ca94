# Tests of the command line, in-process and without a display.
find_package(nlohmann_json 3.11 REQUIRED)
add_executable(cli_tests
    app/cli/chart_test.cpp
    app/cli/check_test.cpp
    app/cli/cli_test.cpp
    app/cli/compare_test.cpp
    app/cli/draw_test.cpp
    app/cli/evenly_test.cpp
    app/cli/nine_sizes_test.cpp
    app/cli/sizes_test.cpp
    app/cli/suspects_test.cpp
    app/cli/write_test.cpp
    app/cli/written_test.cpp
    support/nine_sizes.cpp)
target_link_libraries(cli_tests PRIVATE test_support cli GTest::gtest_main nlohmann_json::nlohmann_json)
target_compile_definitions(cli_tests PRIVATE PROJECT_VERSION="${PROJECT_VERSION}")
gtest_discover_tests(cli_tests DISCOVERY_MODE PRE_TEST)

# The real program once: main.cpp hands over to the command line without a display.
if(LACEWRIGHT_BUILD_APP)
    add_test(NAME program_help COMMAND lacewright --help)
    add_test(NAME program_version COMMAND lacewright --version)
    set_tests_properties(program_help PROPERTIES PASS_REGULAR_EXPRESSION "usage: lacewright")
    set_tests_properties(program_version PROPERTIES PASS_REGULAR_EXPRESSION "lacewright ${PROJECT_VERSION}")
endif()
