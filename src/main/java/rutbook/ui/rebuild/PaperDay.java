package rutbook.ui.rebuild;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import rutbook.words.WindowWords;

/** A day as it is written on a sheet: of the whole sheet, or from one row on. */
record PaperDay(LocalDate today, WindowWords words) {
  /** The day; empty where none is written or it is wrong. */
  Optional<LocalDate> read(String typed) {
    return typed.isBlank() || fault(typed).isPresent()
        ? Optional.empty()
        : Optional.of(LocalDate.parse(typed.strip()));
  }

  /** What is wrong with it; empty when nothing is. */
  Optional<String> fault(String typed) {
    try {
      return LocalDate.parse(typed.strip()).isAfter(today)
          ? Optional.of(words.text("sheet.late"))
          : Optional.empty();
    } catch (DateTimeException noDay) {
      return Optional.of(words.text("sheet.no.day", today.toString()));
    }
  }
}
