target_sources(core PRIVATE
    chart/cast_on_words.cpp
    chart/cell_run.cpp
    chart/chart.cpp
    chart/edit_steps.cpp
    chart/edits_cells.cpp
    chart/edits_grid.cpp
    chart/edits_properties.cpp
    chart/edits_repeats.cpp
    chart/edits_sizes.cpp
    chart/frame_problem.cpp
    chart/letter_names.cpp
    chart/point_letters.cpp
    chart/repeat_overlap.cpp
    chart/row.cpp
    chart/row_list.cpp
    chart/shaping.cpp)
