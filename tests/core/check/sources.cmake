target_sources(core_tests PRIVATE
    core/check/advice_test.cpp
    core/check/cast_on_test.cpp
    core/check/nearest_cast_ons_test.cpp
    core/check/check_test.cpp
    core/check/checker_test.cpp
    core/check/knitter_test.cpp
    core/check/samples_test.cpp
    core/check/size_family_test.cpp
    core/check/size_knitter_test.cpp
    core/check/solver_test.cpp
    core/check/clean_edges_test.cpp
    core/check/companions_test.cpp
    core/check/expected_counts_test.cpp
    core/check/edge_mends_test.cpp
    core/check/gap_habit_test.cpp
    core/check/habits_test.cpp
    core/check/hard_charts_test.cpp
    core/check/one_fault_test.cpp
    core/check/mend_test.cpp
    core/check/mirror_partner_test.cpp
    core/check/row_mirror_test.cpp
    core/check/row_odds_test.cpp
    core/check/symmetry_test.cpp
    core/check/testimony_test.cpp
    core/check/whole_repeats_test.cpp
    support/motifs.cpp
    support/mutations.cpp
)
# Thousands of charts worked loop by loop: optimised even in a Debug build.
set_source_files_properties(core/check/knitter_test.cpp PROPERTIES COMPILE_OPTIONS -O2)
