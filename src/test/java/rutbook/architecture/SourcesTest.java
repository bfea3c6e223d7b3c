package rutbook.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What bytecode does not show: comments, and how long a file is. */
class SourcesTest {
  private static final Path SOURCES = Path.of("src/main/java/rutbook");
  private static final Set<String> CALCULATE = Set.of("physics", "stats");

  @Test
  void everyTypeSaysInACommentWhatItIs() throws IOException {
    List<String> silent =
        without(
            SOURCES,
            (tree, path) ->
                tree instanceof ClassTree
                    && path.getParentPath().getLeaf() instanceof CompilationUnitTree);
    assertThat(silent).isEmpty();
  }

  @Test
  void everyPublicCalculationSaysWhatItTakesAndGives() throws IOException {
    List<String> silent = new ArrayList<>();
    for (String layer : CALCULATE) {
      silent.addAll(
          without(
              SOURCES.resolve(layer),
              (tree, path) ->
                  tree instanceof MethodTree method
                      && method.getModifiers().getFlags().contains(Modifier.PUBLIC)
                      && method.getModifiers().getFlags().contains(Modifier.STATIC)));
    }
    assertThat(silent).isEmpty();
  }

  private static List<String> without(Path folder, BiPredicate<Tree, TreePath> wanted)
      throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<String> silent = new ArrayList<>();
    int[] seen = {0};
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, files, null, null, null, files.getJavaFileObjectsFromPaths(java(folder)));
      DocTrees docs = DocTrees.instance(task);
      for (CompilationUnitTree unit : task.parse()) {
        new TreePathScanner<Void, Void>() {
          @Override
          public Void visitClass(ClassTree tree, Void nothing) {
            look(tree, tree.getSimpleName().toString());
            return super.visitClass(tree, nothing);
          }

          @Override
          public Void visitMethod(MethodTree tree, Void nothing) {
            look(tree, tree.getName().toString());
            return super.visitMethod(tree, nothing);
          }

          private void look(Tree tree, String name) {
            if (wanted.test(tree, getCurrentPath())) {
              seen[0]++;
              if (docs.getDocComment(getCurrentPath()) == null) {
                silent.add(unit.getSourceFile().getName() + ": " + name);
              }
            }
          }
        }.scan(unit, null);
      }
    }
    assertThat(seen[0]).as("looked at").isGreaterThan(10);
    return silent;
  }

  private static List<Path> java(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.endsWith("package-info.java"))
          .sorted()
          .toList();
    }
  }
}
