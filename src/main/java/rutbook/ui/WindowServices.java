package rutbook.ui;

import java.time.Clock;
import java.util.Locale;
import java.util.function.Supplier;
import rutbook.edit.Editor;
import rutbook.edit.Ids;
import rutbook.reasoning.RuleBook;
import rutbook.ui.fx.Background;

/**
 * What the window is handed by the program: the editor, made on the window's thread, where ids and
 * times come from, the rules of the trade as soon as they are asked for, what stands behind files,
 * paper, save light and memory, and the way to files of others.
 */
public record WindowServices(
    Editor editor,
    Ids ids,
    Clock clock,
    Locale locale,
    Supplier<RuleBook> rules,
    NotebookFiles files,
    Printing printing,
    SaveLight saveLight,
    WindowMemory memory,
    Background background,
    OutsideFiles outside,
    FilePicker picker) {}
