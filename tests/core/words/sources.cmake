target_sources(core_tests PRIVATE core/words/handbook_test.cpp)
