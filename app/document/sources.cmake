target_sources(app_lib PRIVATE
    document/document.cpp
    document/document.h
    document/edit_command.cpp
    document/view_state.cpp
    document/view_state.h
)
