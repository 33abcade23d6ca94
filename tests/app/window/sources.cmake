target_sources(app_tests PRIVATE
    app/window/command_table_test.cpp
    app/window/compare_window_test.cpp
    app/window/dialogs_test.cpp
    app/window/edge_controller_test.cpp
    app/window/edit_controller_test.cpp
    app/window/file_controller_test.cpp
    app/window/grading_dialog_test.cpp
    app/window/main_window_test.cpp
    app/window/plan_dialog_test.cpp
    app/window/recipe_dialogs_test.cpp
    app/window/repeat_controller_test.cpp
    app/window/rows_dialog_test.cpp
    app/window/window_set_test.cpp
)
