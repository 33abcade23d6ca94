target_sources(core PRIVATE
    verdict/empty_repeat.cpp
    verdict/straight_chart.cpp
    verdict/told_findings.cpp
    verdict/written_advice.cpp
    verdict/written_mends.cpp
    verdict/written_report.cpp)
