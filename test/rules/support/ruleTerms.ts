/** The words that the texts of the rules use, for whoever writes the rules in another language. */
export const RULE_TERMS: Readonly<Record<string, string>> = {
  document:
    'As its parser gives it: whole, with short notation written out and what is optional left out where it is not there. Pointers (RFC 6901) lead into it. A record inside a log is judged like one of its own; its findings point into the log, below `/records/<place>`.',
  set: 'All documents that are checked together. The sheet of a document is the one with the `id` and `revision` of its `sheet`; the log of a record is the one whose `id` is its `machine`.',
  leaf: "A value at one of the places under `leaves`, where `*` is one step; and the `to` of each entry of an override (`/overrides/<place>/set/<place>/to`), which is judged as the leaf that the entry's `path` names. Base leaves come first, in the order of the document.",
  'stated value':
    'An object inside a leaf whose kind is `nominal`, `nominal with tolerance` or `limits`. It is the first printed figure; the entries of its `printed` are the others. Both are printed values.',
  exact:
    'Printed figures (decimal texts) and numbers (their shortest decimal) are converted by exact factors and compared as exact decimals, without rounding, wherever a text says `exact`. Params that are calculated are the nearest double.',
  volumes:
    'The low and the high volume of a stated value, in mL: of limits their `min` and `max`, the one for both where the other is absent; of other kinds the `value` for both, without tolerance. Not stated, or of another measure: not judged.',
  pairs:
    'Two leaves side by side: once as the base sheet has them, and once for each override that sets one of the two or both, with the base leaf for what it does not set. Both must be stated. The place is that of the first of the two that the block (base or override) sets.',
  'comparable size':
    'Of an interval: hours as printed, but for hours above 0 and up to 12 (`spec/period-as-hours` finds those); distance in km; period in days, (years × 12 + months) × 365.25 ÷ 12 + weeks × 7 + days. What is absent, not stated or not readable is not compared.',
  'name of a part':
    'Of an opening or cover: the name of its gearcase, a comma, a space, and its own name. Of a shield: its name.',
  condition:
    '`when` of variants and overrides; `appliesTo` of gearcases, openings, covers, shields and services.',
  'judged entry':
    'An entry of a record whose `detail` is `full` and whose sheet is in the set, on a gearcase that the sheet has.',
  'recorded tightening':
    'An item of `tightened` of an entry, then of `shields`, whose `on` is the pointer of an opening, cover or shield of the sheet in the set.',
  'stated for this machine':
    'The leaf with the overrides whose condition holds for the `identity` of the log; nothing where that cannot be determined.',
  order:
    'Findings of a document are in the order of its places, an object before what it holds; findings at one place in the order of `rules`.',
}
