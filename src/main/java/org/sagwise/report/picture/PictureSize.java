package org.sagwise.report.picture;

/**
 * Size of a picture.
 *
 * @param width pixels, {@value #LEAST} to {@value #MOST}
 * @param height pixels, {@value #LEAST} to {@value #MOST}
 */
public record PictureSize(int width, int height) {

    public static final int LEAST = 320;
    public static final int MOST = 8000;

    /** Fits a post in a forum. */
    public static final PictureSize FORUM = new PictureSize(1200, 900);

    /** Fills a projector. */
    public static final PictureSize PROJECTOR = new PictureSize(1920, 1080);

    public PictureSize {
        if (Math.min(width, height) < LEAST || Math.max(width, height) > MOST) {
            throw new IllegalArgumentException("a picture of "
                    + width
                    + " × "
                    + height
                    + " is out of range: each side must be "
                    + LEAST
                    + " to "
                    + MOST
                    + " pixels");
        }
    }
}
