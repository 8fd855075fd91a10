/** The worst usual effect of a mistake, most serious first. */
export const HARMS: readonly string[] = ['injury', 'machine', 'job', 'record']

/** The terms in the texts of the rules, for people who write the rules in another language. */
export const RULE_TERMS: Readonly<Record<string, string>> = {
  document:
    'As its parser gives it: whole, with short notation written out and without the optional keys that are absent. Pointers (RFC 6901) lead into it. A record inside a log is judged like any other; its findings point into the log, below `/records/<place>`. A record that others correct is judged as they leave it, and a correction without its entries and shields; a finding about what a correction states points into that correction.',
  set: 'All documents that are checked together. The sheet of a document is the one with the `id` and `revision` of its `sheet`; the log of a record is the one whose `id` is its `machine`.',
  leaf: "A value at one of the places under `leaves`, where `*` is one step; and the `to` of each entry of an override (`/overrides/<place>/set/<place>/to`), which is judged as the leaf that the entry's `path` names. Base leaves come first, in the order of the document.",
  'stated value':
    'An object inside a leaf whose kind is `nominal`, `nominal with tolerance` or `limits`. It is the first printed figure; the entries of its `printed` are the others. Both are printed values.',
  exact:
    'Printed figures (decimal texts) and numbers (their shortest decimal) are converted by exact factors and compared as exact decimals, without rounding, wherever a text says `exact`. Params that are calculated are the nearest double.',
  volumes:
    'The low and the high volume of a stated value, in mL: of limits their `min` and `max`, the one for both if the other is absent; of other kinds the `value` for both, without tolerance. Not stated, or of another measure: not judged.',
  pairs:
    'Two leaves for the same machines: one pair for the base sheet, and one for each override that sets either of them or both, with the base leaf for what it does not set. Both must be stated. The place is that of the first of the two that the block (base or override) sets.',
  'comparable size':
    'Of an interval: hours rounded half up to 1/1000 h, except hours above 0 and up to 12 (`spec/period-as-hours` finds those); distance in km, rounded half up to 1 µm (1 mi = 1.609344 km), the shortest of the printed ones if there are several; period in days, (years × 12 + months) × 365.25 ÷ 12 + weeks × 7 + days. What is absent or not stated is not compared.',
  'name of the part':
    'Of an opening or cover: the name of its gearcase, a comma, a space, and its name. Of a shield: its name. Example: `front differential, drain plug`.',
  'leaf of a part':
    'A tightening or seal belongs to the opening, cover or shield that its place begins with; oils belong to the gearcase. One in an override belongs to what the `path` of the entry begins with; if the sheet has no such part, or no such gearcase with its own oil, rules on tightenings, seals and oils do not judge it (`spec/override-target-missing` may find it).',
  thread:
    'A designation is read as follows. Longer than 64 characters: not read. Made plain first, in this order: ¼ ½ ¾ ⅛ ⅜ ⅝ ⅞ are written out (`1¼` is `1 1/4`), an inch mark (`"`, `″`, `”`) behind a digit goes, dashes become hyphens, a comma between two digits becomes a point, each run of spaces becomes one, spaces at the ends are cut off. It must match one of the regular expressions in `threads.patterns`, in whose order they are tried, upper and lower case alike. metric: `pitch`, if absent, is the one of `size` in `threads.coarsePitches` (none there: not read); a pitch of 0, or above a third of the size, is not read; the usual form is `M<size>` for the coarse pitch, else `M<size>x<pitch>`, numbers without needless zeros, without the fit. pipe and pipeLettersLast: a hyphen inside `size` becomes a space; `BSP` is not read, since it may be `G` or `R`; `threads.pipeLetters` says which system the letters mean; a size that `threads.pipe` lacks is not read, nor, but for G, one without `npt` in it, nor is `per` other than the one in it (`npt` for NPT and NPTF, else `iso`); the usual form is `<system> <size>`, or `<size>-<per> <system>` for NPT and NPTF. unified: in `size` a `No.` becomes `#` and a hyphen a space, and 4, 5, 6, 8, 10 or 12 with a `per` of 24 or more gets a `#`; without a series it is the first of UNC, UNF, UNEF that has this `per` (none: not read); a size that `threads.unified` lacks, a `#` of UN, a size without the series, or `per` other than the one of its series (UN: one of `threads.constantPitch`), is not read; the usual form is `<size>-<per> <series>`. R, Rc, NPT and NPTF are taper; all others are parallel. Examples: `m 14 × 1,5` is `M14x1.5`; `M8x1.25 - 6g` is `M8`; `rc1/2` is `Rc 1/2` (taper); `1/2" BSPP` is `G 1/2`; `G 1/2 A` is `G 1/2`; `NPT 1/2` is `1/2-14 NPT` (taper); `1/2 - 13 unc 2B` is `1/2-13 UNC`; `3/4-16UNF-2A` is `3/4-16 UNF`; `10-32` is `#10-32 UNF`.',
  grade:
    'A viscosity grade is read from its first 41 characters, spaces at the ends cut off, in capitals. SAE: an optional `SAE`, an optional space, then a W grade (`80W`), a hot grade (`90`), or both with one hyphen, dash, slash or space between them or none (`80W-90`). ISO VG: an optional `ISO` and an optional `VG`, each with an optional hyphen or space after it, then the number. A system has a grade when each of its parts is in at least one of its editions under `grades`; an edition has it when it has each part itself, and, of a multigrade, the `min` of the W grade is below the `max` of the hot grade.',
  condition:
    '`when` of variants and overrides; `appliesTo` of gearcases, openings, covers, shields and services.',
  'judged entry':
    'An entry of a record whose `detail` is `full` and whose sheet is in the set, on a gearcase that the sheet has.',
  'judged change': 'A judged entry without `notDone` of a service whose `task` is `change`.',
  'recorded tightening':
    'An item of `tightened` of an entry, then of `shields`, whose `on` is the pointer of an opening, cover or shield of the sheet in the set.',
  'stated for this machine':
    'The leaf with the overrides whose condition holds for the `identity` of the log; nothing if that cannot be determined.',
  harm: 'The worst that a mistake usually leads to. `injury`: someone is hurt. `machine`: a gearcase, a thread or a seal is damaged, or runs without the right oil. `job`: the visit fails or comes at the wrong time: a part or a tool that does not fit, work done twice, no answer. `record`: the papers do not say what is or was. The severity says how certain the mistake is and whether it must be corrected.',
  vector:
    'A file below `vectors/`: one bad set of documents, as a change of a good one. `base` is a folder in `vectors/`, `files` are those of its files that are in the set; nothing is found in them as they are. `patch` is a JSON Patch (RFC 6902; add, remove and replace only) on one object with the names of the files as keys, so that its pointers begin with the file name: `/sheet.json/gearcases/…`. `today`, if present, is given to the check. `expect` lists the findings of all rules on the patched set, in order, with `code`, `severity`, `file`, `path` (a pointer into that file) and `params`; `why` is for readers. `also` lists variations: each is the same set with one more operation, `change`, after those of `patch`, and its own `expect`; `case` is `good` (nothing is found) or `boundary` (at a limit of the rule, or an input that a simpler rule would judge otherwise). With `refusedBy` of `schema` the patched document is not valid: its parser, or a JSON Schema, refuses it, and `expect` is what the parser finds; rules are not run.',
  order:
    'Sheets come first, then logs, each followed by its records, then toolboxes, stocks, procedures and records, each in the order given. Findings of a document are in the order of its places, an object before what it holds; findings at one place in the order of `rules`. A record inside a log counts as a document here: its findings come after all those of the log.',
}
