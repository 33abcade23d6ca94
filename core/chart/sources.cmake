target_sources(core PRIVATE chart/chart.cpp chart/row.cpp chart/row_list.cpp)
