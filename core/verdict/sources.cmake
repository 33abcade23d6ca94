target_sources(core PRIVATE
    verdict/straight_chart.cpp
    verdict/written_advice.cpp
    verdict/written_mends.cpp
    verdict/written_report.cpp)
