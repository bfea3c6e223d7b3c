package rutbook.bench;

import rutbook.app.Main;

/** The packaged program as its script starts it, told to say when its window is usable. */
public final class PackagedStart {
  private PackagedStart() {}

  public static void main(String[] arguments) {
    FirstFrame.tellWhenShown();
    Main.main(arguments);
  }
}
