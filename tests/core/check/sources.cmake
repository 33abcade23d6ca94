target_sources(core_tests PRIVATE
    core/check/companions_test.cpp
)
