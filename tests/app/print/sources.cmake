target_sources(app_tests PRIVATE app/print/glyph_path_test.cpp app/print/svg_picture_test.cpp app/print/write_sheet_test.cpp)
