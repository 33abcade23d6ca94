target_sources(core_tests PRIVATE
    core/count/needle_test.cpp
    core/count/path_test.cpp
    core/count/shares_test.cpp
    core/count/ties_test.cpp)
