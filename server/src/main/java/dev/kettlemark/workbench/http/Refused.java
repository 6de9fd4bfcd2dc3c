package dev.kettlemark.workbench.http;

/** A request that is answered with an error before anybody looks at what it wants. */
public final class Refused extends Exception {

  private final int status;

  /**
   * A refusal.
   *
   * @param status of RFC 9110, section 15
   * @param why in plain words, shown to whoever asked
   */
  public Refused(int status, String why) {
    super(why, null, false, false);
    this.status = status;
  }

  public Answer answer() {
    return Answer.text(status, getMessage() + "\n");
  }
}
