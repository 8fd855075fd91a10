/** Levels of lists and objects. The deepest place that any document has is the 12th; the rest is head room. */
export const MAX_DEPTH = 32

/** Characters of one text or key. The longest a person writes by hand is a note of a few pages. */
export const MAX_STRING_LENGTH = 20_000

/** Characters of a whole text. Twenty years of hourly readings of one machine are about nine million. */
export const MAX_TEXT_LENGTH = 50_000_000

/** Values of a whole document, so that shared parts handed to the API cannot unfold without end. Those readings are half as many. */
export const MAX_VALUES = 1_000_000

/** The largest number of a measure, a meter or a price: no printed figure reaches it. */
export const LARGEST_NUMBER = 1e9

/** The most things of one kind: containers on a shelf, bolts of a cover. */
export const LARGEST_COUNT = 10_000

/** Absolute zero, in °C. */
export const ABSOLUTE_ZERO = -273.15

/** Characters of foreign text that a finding repeats. */
export const MAX_SHOWN_LENGTH = 80
