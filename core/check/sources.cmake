target_sources(core PRIVATE
    check/companions.cpp
    check/pairing.cpp
)
