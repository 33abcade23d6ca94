#pragma once

namespace lacewright::app {

// Every how many rows or columns a number is written, so that numbers of `needed` pixels do not
// touch at `cell` pixels a cell: 1, 5, 10, 20, 50, 100 ... Requires: cell > 0.
int numberStep(int cell, int needed);

// Whether a number is written when only every `step`-th is: 1 and the multiples of the step.
inline bool isNumbered(int number, int step) {
    return number == 1 || number % step == 0;
}

}  // namespace lacewright::app
