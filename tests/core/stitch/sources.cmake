target_sources(
    core_tests
    PRIVATE core/stitch/catalogue_test.cpp
            core/stitch/glyph_pen.cpp
            core/stitch/glyph_test.cpp
            core/stitch/loop_needles.cpp
            core/stitch/loop_needles_test.cpp
            core/stitch/published_stitches_test.cpp
            core/stitch/stitch_reading_test.cpp)
