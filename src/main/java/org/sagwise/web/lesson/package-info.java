/** A lesson in a live page: what becomes of it when somebody does something, and what the browser keeps; without a page. */
package org.sagwise.web.lesson;
