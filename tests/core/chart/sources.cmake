target_sources(core_tests PRIVATE core/chart/row_test.cpp)
