target_sources(core_tests PRIVATE
    core/words/chart_from_rows_test.cpp core/words/compare_test.cpp core/words/definition_line_test.cpp core/words/grouping_test.cpp
    core/words/handbook_test.cpp core/words/merge_phrases_test.cpp core/words/modern_texts_test.cpp core/words/named_repeats_test.cpp core/words/prove_test.cpp
    core/words/published_rows_test.cpp core/words/reader_test.cpp core/words/round_trip_test.cpp core/words/rows_again_test.cpp
    core/words/row_text_test.cpp core/words/size_words_test.cpp core/words/sizes_from_rows_test.cpp core/words/text_knitter_test.cpp core/words/trap_texts_test.cpp
    core/words/row_words_test.cpp core/words/turned_row_test.cpp core/words/marker_places_test.cpp
    core/words/vocabulary_test.cpp core/words/worked_row_test.cpp core/words/writer_page_test.cpp
    core/words/writer_test.cpp)
