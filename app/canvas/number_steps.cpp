#include "app/canvas/number_steps.h"

#include <initializer_list>

namespace lacewright::app {

int numberStep(int cell, int needed) {
    if (cell >= needed) return 1;
    for (int power = 1;; power *= 10) {
        for (const int step : {5 * power, 10 * power, 20 * power}) {
            if (step * cell >= needed) return step;
        }
    }
}

}  // namespace lacewright::app
