/** Maximum levels of lists and objects. No document needs more than 12. */
export const MAX_DEPTH = 32

/** Maximum characters of one text or key: a note of a few pages. */
export const MAX_STRING_LENGTH = 20_000

/** Maximum characters of a document. Twenty years of hourly readings of one machine are about nine million. */
export const MAX_TEXT_LENGTH = 50_000_000

/** Maximum values of a document, so that parts shared in memory cannot multiply without end. Those readings are half as many. */
export const MAX_VALUES = 1_000_000

/** Maximum of a measure, a meter or a price; no printed figure reaches it. */
export const MAX_NUMBER = 1e9

/** Maximum count of one kind of thing, such as containers on a shelf or bolts of a cover. */
export const MAX_COUNT = 10_000

/** Absolute zero, in °C. */
export const ABSOLUTE_ZERO = -273.15

/** Maximum characters of foreign text that a finding quotes. */
export const MAX_SHOWN_LENGTH = 80
