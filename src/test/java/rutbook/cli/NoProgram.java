package rutbook.cli;

import java.util.Optional;

/** A program that has no window and prints no tour, for tests of commands. */
class NoProgram implements Program {
  @Override
  public String version() {
    return "1.2.3";
  }

  @Override
  public void tour() {}

  @Override
  public void window(Optional<String> file) {}

  @Override
  public void rehearse() {}
}
