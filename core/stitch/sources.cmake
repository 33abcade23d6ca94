target_sources(core PRIVATE stitch/catalogue.cpp)
