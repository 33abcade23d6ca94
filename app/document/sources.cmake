target_sources(app_lib PRIVATE
    document/cell_text.cpp
    document/document.cpp
    document/document.h
    document/edit_command.cpp
    document/journal.cpp
    document/journal.h
    document/view_state.cpp
    document/view_state.h
)
