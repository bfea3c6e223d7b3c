package rutbook.file;

import java.io.IOException;

/** Carries a fault that is already known through code that throws. */
public final class FaultException extends IOException {
  private static final long serialVersionUID = 1L;

  private final transient FileFault fault;

  public FaultException(FileFault fault) {
    super(fault.toString());
    this.fault = fault;
  }

  public FaultException(FileFault fault, IOException cause) {
    super(fault.toString(), cause);
    this.fault = fault;
  }

  public FileFault fault() {
    return fault;
  }
}
