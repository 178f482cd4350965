/**
 * What a person can do to a scenario: each edit a small value that makes a new document of an old
 * one and knows what it is called, so that it can be taken back by name.
 */
package org.sagwise.scenario.edit;
