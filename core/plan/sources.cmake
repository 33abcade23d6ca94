target_sources(core PRIVATE
    plan/gauge.cpp
    plan/pick_up.cpp
    plan/spread.cpp)
