package rutbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rutbook.units.Amount;
import rutbook.units.Pressure;

/**
 * A value with one part changed has that part and keeps all its others: every {@code with…}, {@code
 * named}, {@code answered} and the like of every record that random notebooks are made of.
 */
class OnePartChangedTest {
  private static final int MOST_SAMPLES = 6;

  private final Map<Class<?>, List<Object>> samples = new LinkedHashMap<>();

  @Test
  void theOtherPartsStayAsTheyAre() throws Exception {
    Range gas = new Range(Amount.of("9.5", Pressure.BAR), Amount.of("10.5", Pressure.BAR));
    collect(Bench.sheet().parts().shock().withGas(Optional.of(gas)));
    for (int seed = 0; seed < 12; seed++) {
      Notebook notebook = Notebooks.of(seed, 8);
      collect(notebook.shelf());
      collect(notebook.entries());
    }
    TreeSet<String> changed = new TreeSet<>();
    TreeSet<String> all = new TreeSet<>();
    for (Class<?> kind : samples.keySet()) {
      for (Method method : kind.getDeclaredMethods()) {
        Optional<RecordComponent> part = changes(kind, method);
        if (part.isPresent()) {
          all.add(kind.getSimpleName() + "." + method.getName());
          if (holds(method, part.get())) {
            changed.add(kind.getSimpleName() + "." + method.getName());
          }
        }
      }
    }
    assertThat(changed).isEqualTo(all).hasSizeGreaterThan(35);
  }

  /** The one part that a method changes: it takes a part's type and gives the record's. */
  private static Optional<RecordComponent> changes(Class<?> kind, Method method) {
    if (!Modifier.isPublic(method.getModifiers())
        || Modifier.isStatic(method.getModifiers())
        || method.isBridge()
        || method.getReturnType() != kind
        || method.getParameterCount() != 1) {
      return Optional.empty();
    }
    List<RecordComponent> parts =
        Arrays.stream(kind.getRecordComponents())
            .filter(part -> part.getGenericType().equals(method.getGenericParameterTypes()[0]))
            .toList();
    return parts.stream()
        .filter(part -> parts.size() == 1 || named(method).equalsIgnoreCase(part.getName()))
        .findFirst();
  }

  private static String named(Method method) {
    return method.getName().replaceFirst("^with", "");
  }

  /** Whether the part was ever another one afterwards; what a record refuses is passed over. */
  private boolean holds(Method method, RecordComponent part) throws Exception {
    boolean everAnother = false;
    for (Object before : samples.get(method.getDeclaringClass())) {
      for (Object other : samples.get(method.getDeclaringClass())) {
        Object wanted = part.getAccessor().invoke(other);
        Object after;
        try {
          after = method.invoke(before, wanted);
        } catch (InvocationTargetException refused) {
          assertThat(refused.getCause()).isInstanceOf(NotebookException.class);
          continue;
        }
        for (RecordComponent each : method.getDeclaringClass().getRecordComponents()) {
          assertThat(each.getAccessor().invoke(after))
              .as("%s of %s", each.getName(), method)
              .isEqualTo(
                  each.getName().equals(part.getName())
                      ? wanted
                      : each.getAccessor().invoke(before));
        }
        everAnother |= !Objects.equals(wanted, part.getAccessor().invoke(before));
      }
    }
    return everAnother;
  }

  private void collect(Object value) throws Exception {
    if (value instanceof Collection<?> many) {
      for (Object each : many) {
        collect(each);
      }
    } else if (value instanceof Optional<?> maybe && maybe.isPresent()) {
      collect(maybe.get());
    } else if (value instanceof Record
        && value.getClass().getPackage() == Entry.class.getPackage()) {
      List<Object> known = samples.computeIfAbsent(value.getClass(), kind -> new ArrayList<>());
      if (known.size() < MOST_SAMPLES) {
        known.add(value);
      }
      for (RecordComponent part : value.getClass().getRecordComponents()) {
        collect(part.getAccessor().invoke(value));
      }
    }
  }
}
