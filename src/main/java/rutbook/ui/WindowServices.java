package rutbook.ui;

import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Supplier;
import rutbook.edit.Editor;
import rutbook.edit.Ids;
import rutbook.ui.fx.Background;

/**
 * What the window is handed by the program: the editor, made on the window's thread, where ids and
 * days come from, and what stands behind files, save light and memory.
 */
public record WindowServices(
    Editor editor,
    Ids ids,
    Supplier<LocalDate> today,
    Locale locale,
    NotebookFiles files,
    SaveLight saveLight,
    WindowMemory memory,
    Background background) {}
