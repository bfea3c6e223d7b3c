package rutbook.app;

/** Reads the command line, makes the objects and starts them. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.out.println("Rutbook");
  }
}
