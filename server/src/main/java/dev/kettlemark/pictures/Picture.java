package dev.kettlemark.pictures;

/**
 * A picture, whole in itself and fit to stand in a page beside others.
 *
 * @param title what it is called
 * @param words the same that it shows, in words
 * @param id that of its SVG element, with which every other id in it begins
 * @param head the picture as an SVG element, up to where its style stands
 * @param style its look, for itself alone
 * @param body the rest of the element
 */
public record Picture(
    String title, String words, String id, String head, String style, String body) {

  /** The picture as an SVG element with its style in it. */
  public String svg() {
    return head + "<style>\n" + style + "</style>\n" + body;
  }

  /** The picture without its style, for a page that takes styles from one place only. */
  public String bare() {
    return head + body;
  }

  /** The id of the group of a stage. */
  public String stage(int index) {
    return id + "-stage-" + index;
  }
}
