# Benchmarks: build/release/tests/benchmarks. Times vary from run to run on a busy machine, so read
# the ratios, which are taken in one process.
find_package(benchmark REQUIRED)
find_package(nlohmann_json 3.11 REQUIRED)
add_executable(benchmarks bench/check_bench.cpp bench/open_bench.cpp bench/svg_bench.cpp)
target_link_libraries(benchmarks PRIVATE
    core project_options nlohmann_json::nlohmann_json benchmark::benchmark_main)
if(LACEWRIGHT_BUILD_APP)
    target_sources(benchmarks PRIVATE bench/canvas_bench.cpp bench/svg_against_qt_bench.cpp)
    target_link_libraries(benchmarks PRIVATE app_lib)
endif()

# How often an injected error is found and mended, in charts and in written rows; each prints a
# table.
add_library(slips STATIC bench/mutation_corpora.cpp bench/slip_score.cpp support/motifs.cpp
    support/mutations.cpp support/published_charts.cpp)
target_link_libraries(slips PUBLIC test_support)
add_executable(mutation_bench bench/mutation_bench.cpp)
target_link_libraries(mutation_bench PRIVATE slips)
add_executable(written_slips_bench bench/written_slips_bench.cpp support/written_slips.cpp)
target_link_libraries(written_slips_bench PRIVATE slips)
