package rutbook.notebook;

/** Names a proposal, so that its answer and its outcome can be found again. */
public record ProposalId(String text) implements Id {
  public ProposalId {
    Id.check(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
