target_sources(core_tests PRIVATE core/file/chart_text_test.cpp)
