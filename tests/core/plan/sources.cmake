target_sources(core_tests PRIVATE core/plan/body_sizes_test.cpp core/plan/gauge_test.cpp core/plan/planner_test.cpp
    core/plan/spread_test.cpp)
