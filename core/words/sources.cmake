target_sources(core PRIVATE words/difference_words.cpp)
target_sources(core PRIVATE
    words/between_rows.cpp words/compare.cpp words/row_alignment.cpp words/edit_distance.cpp words/figure.cpp words/grouping.cpp words/lexer.cpp words/loop_look.cpp words/merge_phrases.cpp
    words/pattern_heading.cpp words/read_message.cpp words/remark_line.cpp
    words/reader.cpp words/prove.cpp words/row_forms.cpp words/row_heading.cpp words/row_numbers.cpp words/rows_again.cpp words/row_parser.cpp words/row_parser_figures.cpp
    words/row_phrases.cpp words/row_parser_repeat.cpp words/row_parser_aside.cpp words/row_parser_bracket.cpp words/row_parser_count.cpp words/row_parser_into.cpp words/row_parser_stitch.cpp words/row_parser_times.cpp words/row_proof.cpp words/row_table.cpp words/row_text.cpp words/token_cursor.cpp
    words/stitch_words.cpp words/unrolled_row.cpp words/size_words.cpp words/vocabulary.cpp words/worked_stretches.cpp words/writer.cpp words/writer_html.cpp words/written_heading.cpp words/written_lines.cpp words/right_side_stitch.cpp words/worked_order.cpp words/worked_row.cpp
    words/box_rows.cpp words/chart_from_rows.cpp words/chart_plan.cpp words/column_layout.cpp words/cut_rows.cpp words/nested_rows.cpp words/open_repeats.cpp words/size_reaches.cpp words/rows_on_grid.cpp)
