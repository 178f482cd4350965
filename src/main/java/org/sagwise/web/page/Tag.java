package org.sagwise.web.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;
import org.teavm.jso.JSProperty;

/** An element of the page, as far as it is needed here. What it says is set as text, never as markup. */
interface Tag extends JSObject {

    /** What is done when something happens. */
    @JSFunctor
    interface Deed extends JSObject {
        void on(Happening event);
    }

    /** Something that happened to an element. */
    interface Happening extends JSObject {
        @JSProperty
        String getKey();

        @JSProperty
        boolean isRepeat();

        @JSProperty
        boolean isCtrlKey();

        @JSProperty
        boolean isMetaKey();

        @JSProperty
        boolean isShiftKey();

        @JSProperty
        int getPointerId();

        @JSProperty
        int getButton();

        @JSProperty
        double getClientX();

        @JSProperty
        Tag getTarget();

        void preventDefault();
    }

    @JSProperty
    void setId(String id);

    @JSProperty
    String getId();

    @JSProperty
    void setTextContent(String text);

    @JSProperty
    String getTextContent();

    @JSProperty
    void setClassName(String name);

    @JSProperty
    void setHidden(boolean hidden);

    @JSProperty
    boolean isHidden();

    @JSProperty
    void setDisabled(boolean disabled);

    @JSProperty
    String getValue();

    @JSProperty
    void setValue(String value);

    /** Of a fold. */
    @JSProperty
    boolean isOpen();

    @JSProperty
    boolean isChecked();

    @JSProperty
    void setChecked(boolean checked);

    @JSProperty
    int getClientWidth();

    @JSProperty
    int getClientHeight();

    @JSProperty
    int getWidth();

    @JSProperty
    void setWidth(int width);

    @JSProperty
    int getHeight();

    @JSProperty
    void setHeight(int height);

    @JSProperty
    String getTagName();

    String getAttribute(String name);

    void setAttribute(String name, String value);

    Tag querySelector(String which);

    void appendChild(Tag child);

    void replaceWith(Tag other);

    void addEventListener(String event, Deed deed);

    void setPointerCapture(int pointer);

    void focus();

    void scrollIntoView(JSObject how);

    @JSBody(params = "id", script = "return document.getElementById(id);")
    static Tag byId(String id) {
        throw new UnsupportedOperationException(id);
    }
}
