# The samples and the tests' own chart against resources/chart.schema.json, by an independent validator.
find_package(Python3 REQUIRED COMPONENTS Interpreter)
file(GLOB charts CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/samples/*.lacewright
    ${PROJECT_SOURCE_DIR}/tests/core/file/data/*.lacewright)
add_test(NAME chart_schema
    COMMAND Python3::Interpreter ${CMAKE_CURRENT_LIST_DIR}/validate_charts.py
        ${PROJECT_SOURCE_DIR}/resources/chart.schema.json ${charts})
