target_sources(core_tests PRIVATE
    core/verdict/written_verdict_test.cpp)
