target_sources(core PRIVATE
    verdict/empty_repeat.cpp
    verdict/explanation.cpp
    verdict/figure_slips.cpp
    verdict/placed_row.cpp
    verdict/row_slips.cpp
    verdict/slip_evidence.cpp
    verdict/slip_frame.cpp
    verdict/slip_letters.cpp
    verdict/slip_odds.cpp
    verdict/slip_search.cpp
    verdict/slip_trial.cpp
    verdict/slip_window.cpp
    verdict/straight_chart.cpp
    verdict/told_findings.cpp
    verdict/written_advice.cpp
    verdict/written_mends.cpp
    verdict/written_report.cpp)
