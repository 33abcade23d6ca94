target_sources(core PRIVATE base/disk.cpp base/length.cpp base/text.cpp)
