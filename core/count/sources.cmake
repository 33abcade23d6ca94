target_sources(core PRIVATE
    count/affine_form.cpp
    count/needle.cpp
    count/path.cpp
    count/row_solver.cpp
    count/shares.cpp
    count/tally.cpp
    count/ties.cpp)
