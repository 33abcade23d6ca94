target_sources(core PRIVATE
    words/edit_distance.cpp words/figure.cpp words/lexer.cpp words/pattern_heading.cpp words/read_message.cpp
    words/reader.cpp words/right_side_stitch.cpp words/worked_row.cpp words/prove.cpp words/row_forms.cpp words/row_heading.cpp words/row_parser.cpp words/row_parser_figures.cpp
    words/row_parser_repeat.cpp words/row_parser_stitch.cpp words/row_table.cpp words/token_cursor.cpp
    words/vocabulary.cpp)
