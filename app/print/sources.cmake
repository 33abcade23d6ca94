target_sources(app_lib PRIVATE print/glyph_path.cpp print/paint_sheet.cpp print/write_sheet.cpp)
