target_sources(core_tests PRIVATE core/plan/body_sizes_test.cpp core/plan/gauge_test.cpp core/plan/planner_test.cpp
    core/plan/spread_test.cpp core/plan/trade_offs_test.cpp)
# Every pair of columns and every number of times of many charts: optimised even in a Debug build.
set_source_files_properties(core/plan/planner_test.cpp PROPERTIES COMPILE_OPTIONS -O2)
