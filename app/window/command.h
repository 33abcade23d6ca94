#pragma once

#include <span>

namespace lacewright::app {

// Everything a person can ask the window to do. The table in command_table.cpp has one row for
// each.
enum class CommandId {
    NewChart,
    OpenChart,
    ShowStart,
    Save,
    SaveAs,
    Revert,
    ExportDrawing,
    Print,
    CloseWindow,
    Quit,
    Undo,
    Redo,
    Cut,
    Copy,
    Paste,
    Clear,
    SelectAll,
    SelectRows,
    SelectColumns,
    Mirror,
    InsertRowsAbove,
    InsertRowsBelow,
    InsertColumnsRight,
    InsertColumnsLeft,
    RemoveRows,
    RemoveColumns,
    MarkRepeat,
    ChangeRepeat,
    ShiftRepeat,
    RemoveRepeat,
    RepeatRows,
    EndRowRepeat,
    AddSize,
    ChangeSize,
    RemoveSize,
    PlanSizes,
    GradeSizes,
    StartLeft,
    StartRight,
    StartHere,
    EndLeft,
    EndRight,
    EndHere,
    RenamePoint,
    NextSize,
    PreviousSize,
    SpreadEvenly,
    PickUpStitches,
    ChartProperties,
    DefineStitch,
    ChartFromRows,
    NextFinding,
    PreviousFinding,
    TryFirstMend,
    CompareRows,
    DrawTool,
    SelectTool,
    ZoomIn,
    ZoomOut,
    ZoomUsual,
    ZoomToFit,
    ShowCompanions,
    WorkRowOut,
    FindStitch,
    GoToChart,
    AppearanceSystem,
    AppearanceLight,
    AppearanceDark,
    ShortcutList,
    About,
    Stitch1,
    Stitch2,
    Stitch3,
    Stitch4,
    Stitch5,
    Stitch6,
    Stitch7,
    Stitch8,
    Stitch9
};

enum class Menu { File, Edit, Rows, Repeats, Check, View, Help, None };

struct Command {
    CommandId id;
    const char* name;      // object name of its action, stable
    const char* text;      // in menus, & marks the letter for the keyboard
    const char* tip;       // one sentence for the status bar and the tooltip
    const char* shortcut;  // portable text as of QKeySequence; empty for none
    const char* icon;      // file in resources/icons without ending; empty for none
    Menu menu;
    bool checkable;
    bool separatorBefore;  // in its menu
};

// In the order of the menus.
std::span<const Command> commandTable();
const char* menuTitle(Menu menu);

}  // namespace lacewright::app
