target_sources(core PRIVATE
    plan/edge_pairs.cpp
    plan/gauge.cpp
    plan/pick_up.cpp
    plan/planner.cpp
    plan/size_summary.cpp
    plan/spread.cpp
    plan/trade_offs.cpp
    plan/use_plan.cpp)
