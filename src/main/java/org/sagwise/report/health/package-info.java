/** Resistances on a bench beside what such cells, joints and switches usually have, judged in words. */
package org.sagwise.report.health;
