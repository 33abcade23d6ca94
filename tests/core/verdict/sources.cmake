target_sources(core_tests PRIVATE
    core/verdict/figure_slips_test.cpp
    core/verdict/placed_row_test.cpp
    core/verdict/slip_search_test.cpp
    core/verdict/written_verdict_test.cpp)
