target_sources(app_tests PRIVATE
    app/document/document_test.cpp
    app/document/journal_test.cpp
    app/document/view_state_test.cpp
)
