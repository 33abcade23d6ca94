target_sources(core PRIVATE count/affine_form.cpp count/needle.cpp count/path.cpp count/tally.cpp)
