target_sources(core_tests PRIVATE
    core/sheet/foot_test.cpp
    core/sheet/grid_test.cpp
    core/sheet/legend_test.cpp
    core/sheet/pages_test.cpp
    core/sheet/path_data_test.cpp
    core/sheet/row_words_test.cpp
    core/sheet/svg_test.cpp
    core/sheet/text_width_test.cpp)
