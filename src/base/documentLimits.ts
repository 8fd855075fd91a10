/** Maximum depth of nested lists and objects. No document needs more than 12. */
export const MAX_DEPTH = 32

/** Maximum length of one text or key, in characters: enough for a note of a few pages. */
export const MAX_STRING_LENGTH = 20_000

/**
 * Maximum length of a document, in characters. Twenty years of hourly readings of one machine take about nine
 * million.
 */
export const MAX_TEXT_LENGTH = 50_000_000

/**
 * Maximum number of values in a document, since parts shared in memory can multiply. Twenty years of hourly
 * readings are half as many.
 */
export const MAX_VALUES = 1_000_000

/** Maximum value of a measure, meter or price; no printed figure is as large. */
export const MAX_NUMBER = 1e9

/** Maximum count of one kind of thing, such as containers on a shelf or bolts of a cover. */
export const MAX_COUNT = 10_000

/** Absolute zero, in °C. */
export const ABSOLUTE_ZERO = -273.15

/** Maximum length of foreign text in a finding, in characters. */
export const MAX_QUOTED_LENGTH = 80
