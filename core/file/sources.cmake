target_sources(core PRIVATE
    file/chart_file.cpp
    file/chart_reader.cpp
    file/chart_writer.cpp
    file/fields.cpp
    file/grading_text.cpp
    file/json_parse.cpp
    file/json_value.cpp
    file/layout_text.cpp
    file/object_writer.cpp
    file/report_text.cpp
    file/row_scanner.cpp
    file/row_text.cpp
    file/size_text.cpp
    file/stitch_id.cpp
    file/stitch_table.cpp
    file/stitch_text.cpp
    file/version_steps.cpp)
