# Tests of the window: one program, driven with real key strokes and mouse clicks.
add_executable(app_tests app/app_tests_main.cpp)
set_target_properties(app_tests PROPERTIES AUTOMOC ON)
target_link_libraries(app_tests PRIVATE test_support app_lib Qt6::Test)
foreach(room document canvas panels print window)
    include(app/${room}/sources.cmake)
endforeach()
gtest_discover_tests(app_tests DISCOVERY_MODE PRE_TEST)

# The same program once more on a real X server.
find_program(XVFB_RUN xvfb-run)
if(XVFB_RUN)
    add_test(NAME app_tests_on_x11 COMMAND ${XVFB_RUN} -a $<TARGET_FILE:app_tests>)
    set_tests_properties(app_tests_on_x11 PROPERTIES
        LABELS x11 TIMEOUT 300 ENVIRONMENT "QT_QPA_PLATFORM=xcb")
endif()
