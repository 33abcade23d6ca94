target_sources(core_tests PRIVATE
    core/chart/cast_on_words_test.cpp
    core/chart/edits_cells_test.cpp
    core/chart/edits_grid_test.cpp
    core/chart/edits_random_test.cpp
    core/chart/edits_repeats_test.cpp
    core/chart/edits_sizes_test.cpp
    core/chart/frame_problem_test.cpp
    core/chart/row_test.cpp
    core/chart/shaping_test.cpp)
