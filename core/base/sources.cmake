target_sources(core PRIVATE base/disk.cpp base/text.cpp)
