package org.sagwise.picture.export;

import java.awt.Graphics2D;

/** Something that fills a picture of a size, on whatever surface. */
interface Sheet {
    void paint(Graphics2D surface);
}
