package org.sagwise.report.picture;

import org.sagwise.picture.pen.Pen;

/** Something that fills a picture of a size, on whatever surface. */
interface Sheet {
    void paint(Pen surface);
}
