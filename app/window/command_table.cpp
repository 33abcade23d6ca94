#include "app/window/command.h"

namespace lacewright::app {

namespace {

using enum CommandId;

// clang-format off
constexpr Command kCommands[] = {
    {NewChart, "newChart", "&New chart…", "Start a chart: its width, its rows, flat or in the round", "Ctrl+N", "new", Menu::File, false, false},
    {OpenChart, "openChart", "&Open…", "Open a chart from a file", "Ctrl+O", "open", Menu::File, false, false},
    {ShowStart, "showStart", "S&tart page", "Recent charts and charts to begin with", "", "", Menu::File, false, false},
    {Save, "save", "&Save", "Save the chart to its file", "Ctrl+S", "save", Menu::File, false, true},
    {SaveAs, "saveAs", "Save &as…", "Save the chart to another file", "Ctrl+Shift+S", "", Menu::File, false, false},
    {Revert, "revert", "&Revert to saved", "Go back to the chart as it is in its file", "", "", Menu::File, false, false},
    {ExportDrawing, "exportDrawing", "&Export drawing…", "Write the chart as a drawing: SVG, PDF or PNG", "Ctrl+E", "", Menu::File, false, true},
    {Print, "print", "&Print…", "Print the chart with its legend and sizes", "Ctrl+P", "", Menu::File, false, false},
    {CloseWindow, "closeWindow", "&Close window", "Close this chart", "Ctrl+W", "", Menu::File, false, true},
    {Quit, "quit", "&Quit", "Close every chart and leave", "Ctrl+Q", "", Menu::File, false, false},

    {Undo, "undo", "&Undo", "Take back the last step", "Ctrl+Z", "undo", Menu::Edit, false, false},
    {Redo, "redo", "&Redo", "Do the step again that was taken back", "Ctrl+Shift+Z", "redo", Menu::Edit, false, false},
    {Cut, "cut", "Cu&t", "Copy the selected cells and make them plain knit", "Ctrl+X", "", Menu::Edit, false, true},
    {Copy, "copy", "&Copy", "Copy the selected cells", "Ctrl+C", "", Menu::Edit, false, false},
    {Paste, "paste", "&Paste", "Put copied cells in, lower right corner at the selection", "Ctrl+V", "", Menu::Edit, false, false},
    {Clear, "clear", "C&lear to knit", "Make the selected cells plain knit", "Delete", "", Menu::Edit, false, false},
    {Mirror, "mirror", "&Mirror selection", "Reverse the selected cells and turn every stitch to lean the other way", "Ctrl+M", "mirror", Menu::Edit, false, true},
    {SelectAll, "selectAll", "Select &all", "Select the whole chart", "Ctrl+A", "", Menu::Edit, false, true},
    {SelectRows, "selectRows", "Select &whole rows", "Widen the selection to whole rows", "Ctrl+Alt+R", "", Menu::Edit, false, false},
    {SelectColumns, "selectColumns", "Select whole c&olumns", "Heighten the selection to whole columns", "Ctrl+Alt+C", "", Menu::Edit, false, false},
    {ChartProperties, "chartProperties", "Chart properties…", "Name, notes, gauge, cast-on and how the chart is worked", "Ctrl+I", "", Menu::Edit, false, true},
    {DefineStitch, "defineStitch", "&Define a stitch…", "Add a stitch of your own to this chart", "", "", Menu::Edit, false, false},
    {ChartFromRows, "chartFromRows", "Chart from wr&itten rows…", "Draw written rows from the clipboard, a file or the keyboard as a new chart", "Ctrl+Shift+V", "", Menu::Edit, false, true},

    {InsertRowsAbove, "insertRowsAbove", "Insert rows &above", "Put in as many plain rows as are selected, above them", "Alt+Up", "", Menu::Rows, false, false},
    {InsertRowsBelow, "insertRowsBelow", "Insert rows &below", "Put in as many plain rows as are selected, below them", "Alt+Down", "", Menu::Rows, false, false},
    {RemoveRows, "removeRows", "Remove &rows", "Take the selected rows out of the chart", "Ctrl+Delete", "", Menu::Rows, false, false},
    {InsertColumnsRight, "insertColumnsRight", "Insert columns to the ri&ght", "Put in as many plain columns as are selected, right of them", "Alt+Right", "", Menu::Rows, false, true},
    {InsertColumnsLeft, "insertColumnsLeft", "Insert columns to the &left", "Put in as many plain columns as are selected, left of them", "Alt+Left", "", Menu::Rows, false, false},
    {RemoveColumns, "removeColumns", "Remove &columns", "Take the selected columns out of the chart", "Alt+Delete", "", Menu::Rows, false, false},

    {MarkRepeat, "markRepeat", "&Mark repeat…", "Box the selected columns and rows as a repeat worked across", "Ctrl+R", "repeat", Menu::Repeats, false, false},
    {ChangeRepeat, "changeRepeat", "&Change repeat…", "Name, edges and rows of the repeat under the cursor", "", "", Menu::Repeats, false, false},
    {ShiftRepeat, "shiftRepeat", "&Shift repeat on this row…", "Jog the edges of the repeat under the cursor on the selected rows", "Ctrl+J", "", Menu::Repeats, false, false},
    {RemoveRepeat, "removeRepeat", "&Remove repeat", "Take the box off the repeat under the cursor", "", "", Menu::Repeats, false, false},
    {RepeatRows, "repeatRows", "Repeat these ro&ws…", "Say that the selected rows are worked again and again upward", "Ctrl+Shift+R", "repeat-rows", Menu::Repeats, false, true},
    {EndRowRepeat, "endRowRepeat", "&End row repeat", "No rows are worked again", "", "", Menu::Repeats, false, false},
    {AddSize, "addSize", "&Add size…", "Add a size that works the selected columns", "Ctrl+Shift+A", "size", Menu::Repeats, false, true},
    {ChangeSize, "changeSize", "C&hange size…", "Change the size that is looked at", "", "", Menu::Repeats, false, false},
    {RemoveSize, "removeSize", "Remo&ve size", "Remove the size that is looked at", "", "", Menu::Repeats, false, false},
    {PlanSizes, "planSizes", "&Plan sizes…", "Find columns and repeats for every size from gauge and measurements", "Ctrl+Shift+P", "", Menu::Repeats, false, false},
    {GradeSizes, "gradeSizes", "Rules f&or the sizes…", "What must hold from size to size: rising widths, halves, ease, shoulders", "Ctrl+Shift+G", "", Menu::Repeats, false, false},
    {StartLeft, "startLeft", "Start further le&ft", "Begin the size at the next column to the left where nothing is parted; on selected rows only, where rows are selected", "F6", "", Menu::Repeats, false, true},
    {StartRight, "startRight", "Start further ri&ght", "Begin the size at the next column to the right where nothing is parted; on selected rows only, where rows are selected", "Shift+F6", "", Menu::Repeats, false, false},
    {StartHere, "startHere", "&Begin size at the cursor", "Begin the size at the cursor's column, whatever that parts; on selected rows only, where rows are selected", "Ctrl+F6", "", Menu::Repeats, false, false},
    {EndLeft, "endLeft", "End further &left", "End the size at the next column to the left where nothing is parted; on selected rows only, where rows are selected", "F7", "", Menu::Repeats, false, false},
    {EndRight, "endRight", "End further r&ight", "End the size at the next column to the right where nothing is parted; on selected rows only, where rows are selected", "Shift+F7", "", Menu::Repeats, false, false},
    {EndHere, "endHere", "En&d size at the cursor", "End the size at the cursor's column, whatever that parts; on selected rows only, where rows are selected", "Ctrl+F7", "", Menu::Repeats, false, false},
    {RenamePoint, "renamePoint", "Re&name point…", "Give the point at the cursor's column another name", "F2", "", Menu::Repeats, false, false},
    {NextSize, "nextSize", "Ne&xt size", "Look at the next size", "F8", "", Menu::Repeats, false, true},
    {PreviousSize, "previousSize", "Previo&us size", "Look at the size before", "Shift+F8", "", Menu::Repeats, false, false},
    {SpreadEvenly, "spreadEvenly", "Spread sti&tches evenly…", "A recipe for increases or decreases spread evenly over a row", "Ctrl+Shift+E", "", Menu::Repeats, false, true},
    {PickUpStitches, "pickUpStitches", "Pic&k up stitches…", "A recipe for stitches picked up along the side of a piece, from the gauge", "Ctrl+Shift+U", "", Menu::Repeats, false, false},

    {NextFinding, "nextFinding", "&Next finding", "Go to the next thing the check found", "F4", "next", Menu::Check, false, false},
    {PreviousFinding, "previousFinding", "&Previous finding", "Go to the previous thing the check found", "Shift+F4", "previous", Menu::Check, false, false},
    {TryFirstMend, "tryFirstMend", "Do the first &mend", "Do the first mend that is offered for the chosen finding", "Ctrl+F4", "", Menu::Check, false, false},
    {CompareRows, "compareRows", "&Compare with written rows…", "Prove that a text and this chart are the same knitting, or see where they part", "Ctrl+K", "", Menu::Check, false, true},

    {DrawTool, "drawTool", "&Draw", "Draw with the chosen stitch where the pointer goes", "Ctrl+D", "draw", Menu::View, true, false},
    {SelectTool, "selectTool", "&Select", "Select cells with the pointer", "Ctrl+Shift+D", "select", Menu::View, true, false},
    {ZoomIn, "zoomIn", "Zoom &in", "Larger cells", "Ctrl++", "", Menu::View, false, true},
    {ZoomOut, "zoomOut", "Zoom &out", "Smaller cells", "Ctrl+-", "", Menu::View, false, false},
    {ZoomUsual, "zoomUsual", "&Usual size", "Cells at their usual size", "Ctrl+0", "", Menu::View, false, false},
    {ZoomToFit, "zoomToFit", "Fit in &window", "As large as the whole chart can be seen", "Ctrl+9", "", Menu::View, false, false},
    {ShowCompanions, "showCompanions", "Show &companions", "Join every yarn over to the decrease that balances it", "Ctrl+L", "companions", Menu::View, true, true},
    {WorkRowOut, "workRowOut", "Work the row ou&t", "Every stitch of the cursor's row as the size looked at works it", "Ctrl+U", "", Menu::View, false, false},
    {GoToChart, "goToChart", "Go to the c&hart", "Put the keyboard on the chart", "Ctrl+G", "", Menu::View, false, true},
    {FindStitch, "findStitch", "&Find a stitch", "Put the keyboard on the search of the stitches", "Ctrl+F", "", Menu::View, false, false},
    {AppearanceSystem, "appearanceSystem", "Colours of the s&ystem", "Light or dark as the system has it", "", "", Menu::View, true, true},
    {AppearanceLight, "appearanceLight", "&Light colours", "Light, whatever the system has", "", "", Menu::View, true, false},
    {AppearanceDark, "appearanceDark", "Dar&k colours", "Dark, whatever the system has", "", "", Menu::View, true, false},

    {ShortcutList, "shortcutList", "&Keys", "Every command that has a key", "F1", "", Menu::Help, false, false},
    {About, "about", "&About Lacewright", "What this is, its version and licence", "", "", Menu::Help, false, false},

    {Stitch1, "stitch1", "Most used stitch 1", "Draw with the stitch the chart uses most", "1", "", Menu::None, false, false},
    {Stitch2, "stitch2", "Most used stitch 2", "Draw with the 2nd most used stitch", "2", "", Menu::None, false, false},
    {Stitch3, "stitch3", "Most used stitch 3", "Draw with the 3rd most used stitch", "3", "", Menu::None, false, false},
    {Stitch4, "stitch4", "Most used stitch 4", "Draw with the 4th most used stitch", "4", "", Menu::None, false, false},
    {Stitch5, "stitch5", "Most used stitch 5", "Draw with the 5th most used stitch", "5", "", Menu::None, false, false},
    {Stitch6, "stitch6", "Most used stitch 6", "Draw with the 6th most used stitch", "6", "", Menu::None, false, false},
    {Stitch7, "stitch7", "Most used stitch 7", "Draw with the 7th most used stitch", "7", "", Menu::None, false, false},
    {Stitch8, "stitch8", "Most used stitch 8", "Draw with the 8th most used stitch", "8", "", Menu::None, false, false},
    {Stitch9, "stitch9", "Most used stitch 9", "Draw with the 9th most used stitch", "9", "", Menu::None, false, false},
};
// clang-format on

}  // namespace

std::span<const Command> commandTable() {
    return kCommands;
}

const char* menuTitle(Menu menu) {
    switch (menu) {
        case Menu::File:
            return "&File";
        case Menu::Edit:
            return "&Edit";
        case Menu::Rows:
            return "&Rows and columns";
        case Menu::Repeats:
            return "Re&peats and sizes";
        case Menu::Check:
            return "&Check";
        case Menu::View:
            return "&View";
        case Menu::Help:
            return "&Help";
        case Menu::None:
            break;
    }
    return "";
}

}  // namespace lacewright::app
