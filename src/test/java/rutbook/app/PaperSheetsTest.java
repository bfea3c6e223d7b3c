package rutbook.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rutbook.file.RealDisk;
import rutbook.notebook.Bike;
import rutbook.notebook.Notebook;
import rutbook.notebook.Renewed;
import rutbook.notebook.Scope;
import rutbook.notebook.Timeline;
import rutbook.rebuild.Advisor;
import rutbook.rebuild.Plan;
import rutbook.rebuild.PlanFrom;
import rutbook.rebuild.Planner;
import rutbook.samples.Samples;
import rutbook.ui.Printing;
import rutbook.units.Display;
import rutbook.words.Phrases;

/** Sheets for the bench lie beside the notebook, replace nothing, and are shown where possible. */
class PaperSheetsTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-10-17T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final List<List<String>> shown = new ArrayList<>();
  private final List<Printing.Printed> answers = new ArrayList<>();
  private final Notebook season = Samples.season();
  private final Bike bike = season.bikes().get(0);

  private PaperSheets sheets(Optional<Path> notebook, SystemViewer.Starter starter) {
    return new PaperSheets(
        new PaperSheets.Means(
            new RealDisk("Linux"),
            TODAY,
            () -> notebook,
            Runnable::run,
            Runnable::run,
            new SystemViewer("Linux", starter)),
        Phrases.english(Display.METRIC));
  }

  private PaperSheets sheets() {
    return sheets(Optional.of(folder.resolve("season.rutbook")), shown::add);
  }

  private Plan plan(Scope scope) {
    return Planner.plan(
        PlanFrom.beginning(Timeline.of(season, bike.id()), scope, Set.of(Renewed.OIL))
            .orElseThrow(),
        Advisor.SILENT);
  }

  private void print(PaperSheets sheets, Printing.Form form) {
    sheets.print(season, new Printing.Sheet.Work(bike.id(), plan(Scope.FORK)), form, answers::add);
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void aWorkSheetLiesBesideTheNotebookAndIsShown() throws IOException {
    print(sheets(), Printing.Form.PDF);
    Path path = folder.resolve("Corvane 250 work sheet 2026-10-17.pdf");
    assertThat(answers).containsExactly(new Printing.Printed.Shown(path));
    assertThat(shown).containsExactly(List.of("xdg-open", path.toString()));
    assertThat(text(path)).contains("Drain it and pump the old oil out").contains("345 mL");
  }

  @Test
  void noSheetReplacesAnother() {
    PaperSheets sheets = sheets();
    print(sheets, Printing.Form.HTML);
    print(sheets, Printing.Form.HTML);
    assertThat(answers)
        .containsExactly(
            new Printing.Printed.Shown(folder.resolve("Corvane 250 work sheet 2026-10-17.html")),
            new Printing.Printed.Shown(
                folder.resolve("Corvane 250 work sheet 2026-10-17 (2).html")));
  }

  @Test
  void aShopSheetSaysWhatIsWanted() throws IOException {
    sheets()
        .print(
            season,
            new Printing.Sheet.Shop(bike.id(), plan(Scope.SHOCK)),
            Printing.Form.PDF,
            answers::add);
    Path path = folder.resolve("Corvane 250 shop sheet 2026-10-17.pdf");
    assertThat(answers).containsExactly(new Printing.Printed.Shown(path));
    assertThat(text(path)).contains("gas-charged reservoir");
  }

  @Test
  void withoutAViewerItIsKept() {
    PaperSheets sheets =
        sheets(
            Optional.of(folder.resolve("season.rutbook")),
            command -> {
              throw new IOException("no such program");
            });
    print(sheets, Printing.Form.HTML);
    assertThat(answers)
        .containsExactly(
            new Printing.Printed.Kept(folder.resolve("Corvane 250 work sheet 2026-10-17.html")));
  }

  @Test
  void aNotebookInNoFileHasNoFolderForASheet() {
    print(sheets(Optional.empty(), shown::add), Printing.Form.PDF);
    assertThat(answers).singleElement().isInstanceOf(Printing.Printed.Refused.class);
    assertThat(shown).isEmpty();
  }

  @Test
  void aFolderThatIsGoneIsSaid() {
    print(
        sheets(Optional.of(folder.resolve("gone").resolve("season.rutbook")), shown::add),
        Printing.Form.PDF);
    assertThat(answers).singleElement().isInstanceOf(Printing.Printed.Refused.class);
    assertThat(shown).isEmpty();
  }

  @Test
  void everySystemHasItsOwnWay() {
    new SystemViewer("Windows 11", shown::add).show(Path.of("/a"));
    new SystemViewer("Mac OS X", shown::add).show(Path.of("/a"));
    assertThat(shown.get(0)).startsWith("rundll32", "url.dll,FileProtocolHandler");
    assertThat(shown.get(1)).startsWith("open");
  }
}
