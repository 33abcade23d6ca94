target_sources(core_tests PRIVATE
    core/check/companions_test.cpp
    core/check/check_test.cpp
    core/check/checker_test.cpp
    core/check/samples_test.cpp
)
