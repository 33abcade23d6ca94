target_sources(app_tests PRIVATE app/panels/panels_test.cpp app/panels/worked_row_test.cpp)
