import { published } from '../support/published.js'

const Z535 = {
  room: 'signal words',
  source: 'ANSI Z535.4, product safety signs and labels',
  edition: '2007',
  read: 'where it is quoted',
  agrees: 'exactly',
} as const

/** What each word says of the worst that happens if the hazard is not avoided; in our own words. */
export const Z535_WORDS = published(
  {
    ...Z535,
    place: 'clauses 4.14.1 to 4.14.4, safetylabel.com/safetylabelstandards/ansi-signal-words.php',
    note: 'which harm a hazard of a gearcase service can do at worst is judged in the test',
  },
  [
    { word: 'danger', worst: 'will kill or injure seriously' },
    { word: 'warning', worst: 'could kill or injure seriously' },
    { word: 'caution', worst: 'could injure slightly or moderately' },
    { word: 'notice', worst: 'no injury' },
  ],
)

/** The alert symbol shall not be used with NOTICE; it marks hazards that can injure. */
export const Z535_SYMBOL = published(
  { ...Z535, place: 'clause 4.14.4, the same page', statements: 1 },
  { withSymbol: ['WARNING', 'CAUTION'], without: ['NOTICE'] },
)

/** Where one hazard can do several harms, the greatest decides: one word for it in the whole visit. */
export const Z535_GREATEST = published(
  {
    ...Z535,
    place:
      'several hazards on one label, safetysign.com/content/maincategorycontent/ansi-z535-iso-3684-headers.php',
  },
  { could: ['caution', 'warning'], word: 'warning' },
)

/** Injuries that the page gives as examples of CAUTION, with our hazards that do them. */
export const MINOR_INJURIES = published(
  {
    ...Z535,
    source: 'a label maker’s guide to ANSI Z535.4',
    place: 'examples of CAUTION, safetylabel.com/safetylabelstandards/ansi-signal-words.php',
    read: 'in the source',
    note: 'four examples of one sentence',
    statements: 1,
  },
  [
    { injury: 'minor burns', hazard: 'hotOil' },
    { injury: 'cuts', hazard: 'sharpScraper' },
    { injury: 'pinch points', hazard: 'wheelTurns' },
    { injury: 'minor chemical irritation', hazard: 'oilOnSkin' },
  ],
)

/** The words as manuals print them. */
export const GERMAN_WORDS = published(
  {
    ...Z535,
    source: 'a drive maker’s manual in German, which grades hazards by ANSI Z535',
    edition: 'A7',
    place: 'Gefahrenklassen, doku.amk-motion.com, PDK_207438_A7_de',
    read: 'in the source',
  },
  [
    { word: 'danger', printed: 'GEFAHR' },
    { word: 'warning', printed: 'WARNUNG' },
    { word: 'caution', printed: 'VORSICHT' },
    { word: 'notice', printed: 'HINWEIS' },
  ],
)

export const SPANISH_WORDS = published(
  {
    ...Z535,
    source: 'a farm machine maker’s manual in Spanish',
    edition: '07.18',
    place: 'section 2.2, manualslib.mx/manual/27638, page 11',
    read: 'in the source',
    note: 'it has other words for what is not about injury; AVISO is from memory',
  },
  [
    { word: 'danger', printed: 'PELIGRO' },
    { word: 'warning', printed: 'ADVERTENCIA' },
    { word: 'caution', printed: 'PRECAUCIÓN' },
  ],
)

export const FRENCH_WORDS = published(
  {
    ...Z535,
    source: 'a dental maker’s manual in French',
    edition: 'not dated',
    place: 'section 1.4, esmanual.top/manual/235583, page 73',
    read: 'in the source',
    note: 'it prints PRUDENCE for CAUTION, another manual PRÉCAUTION; ATTENTION and AVIS are from memory',
  },
  [
    { word: 'danger', printed: 'DANGER' },
    { word: 'warning', printed: 'AVERTISSEMENT' },
  ],
)
