package rutbook.share;

import java.util.List;

/** A handing over or taking back that cannot be; carries the facts for the sentence about it. */
public final class ShareException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final ShareFault fault;
  private final transient List<Object> facts;

  public ShareException(ShareFault fault, Object... facts) {
    super(fault + " " + List.of(facts));
    this.fault = fault;
    this.facts = List.of(facts);
  }

  public ShareFault fault() {
    return fault;
  }

  public List<Object> facts() {
    return facts;
  }
}
