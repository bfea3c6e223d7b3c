package rutbook.offenders.notebook;

/** Looks a class up by its name. */
final class Reflects {
  private Reflects() {}

  static Class<?> named(String name) throws ClassNotFoundException {
    return Class.forName(name);
  }
}
