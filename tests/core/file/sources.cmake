target_sources(core_tests PRIVATE
    core/file/chart_text_test.cpp
    core/file/random_chart.cpp
    core/file/random_chart_test.cpp
    core/file/row_text_test.cpp)
