target_sources(core_tests PRIVATE
    core/file/chart_file_test.cpp
    core/file/chart_limits_test.cpp
    core/file/chart_refusal_test.cpp
    core/file/chart_text_test.cpp
    core/file/random_chart.cpp
    core/file/random_chart_test.cpp
    core/file/row_text_test.cpp
    core/file/schema_limits_test.cpp
    core/file/version_steps_test.cpp)
