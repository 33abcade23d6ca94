target_sources(app_tests PRIVATE
    app/canvas/chart_geometry_test.cpp
    app/canvas/chart_view_input_test.cpp
    app/canvas/chart_view_paint_test.cpp
    app/canvas/colours_test.cpp
    app/canvas/drawing_test.cpp
    app/canvas/quick_paint_test.cpp
    app/canvas/stitch_picture_test.cpp
    app/canvas/view_layout_test.cpp
)
