target_sources(core_tests PRIVATE
    core/base/disk_test.cpp
    core/base/result_test.cpp
    core/base/text_test.cpp)
