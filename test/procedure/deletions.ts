import { ACTIONS } from '../../src/procedure/actions.js'
import { EFFECTS } from '../../src/procedure/effects.js'
import { findTroubles } from '../../src/procedure/findTroubles.js'
import { readContext } from '../../src/procedure/readContext.js'
import type { MutableState } from '../../src/procedure/state.js'
import { type ActionRow, buildProcedure } from '../../src/v1/procedure.js'
import type { ProcedureDocument, SpecSheet } from '../../src/v1/spec.js'
import { build, filterSheet, makeCase, makeSheet, sharedSheet, varietySheet } from './sheets.js'
import type { UnsafeSequence } from './unsafe/edits.js'
import { DOUBTFUL_SHEET } from './unsafe/oddMachines.js'
import { UNSAFE_SEQUENCES } from './unsafeSequences.js'

// Deletes one entry of the table of actions at a time, in memory, and looks for a case that detects it: an unsafe
// sequence without its codes, or a good procedure with findings.

export interface Deletion {
  /** `crack loose: needs no-pan`, `take out: plug out`, `plug out: openings.everCracked`. */
  readonly entry: string
  /** Runs the work with the entry deleted. */
  readonly within: <T>(work: () => T) => T
  /** Sequences and good procedures that the entry may change. */
  readonly sequences: readonly UnsafeSequence[]
  readonly goodProcedures: readonly Good[]
}

interface Good {
  readonly name: string
  readonly sheet: SpecSheet
  readonly procedure: ProcedureDocument
}

const rolled = makeSheet({
  hub: makeCase('hub', {
    ...{ out: 'sole opening by wheel', method: 'to level hole', attitude: 'level on its wheels' },
    ...{ instances: true, recheck: true },
  }),
})

const submergedProcedure: ProcedureDocument = (() => {
  const built = buildProcedure({
    ...{ sheet: varietySheet, identity: {}, services: ['rear-change'] },
    events: ['submersion'],
  })
  if (!built.ok) throw new Error('not built')
  return built.value
})()

const GOODS: readonly Good[] = [
  {
    name: 'unknown variant',
    sheet: DOUBTFUL_SHEET,
    procedure: build(DOUBTFUL_SHEET, ['change'], {}),
  },
  { name: 'after submersion', sheet: varietySheet, procedure: submergedProcedure },
  ...['front', 'rear', 'hub', 'tail', 'transfer', 'bevel', 'glass', 'brake'].flatMap((id) =>
    ['change', 'check'].map((task) => toGood(varietySheet, `${id}-${task}`)),
  ),
  ...[rolled, filterSheet, sharedSheet].map((sheet) => toGood(sheet, 'change')),
  ...[...new Map(UNSAFE_SEQUENCES.map((item) => [item.good, item.sheet]))].map(([procedure, sheet]) => ({
    ...{ name: procedure.id, sheet, procedure },
  })),
]

function toGood(sheet: SpecSheet, service: string): Good {
  return { name: service, sheet, procedure: build(sheet, [service]) }
}

/** Entries without effect on safety: they only change states that `compareProcedures` compares. */
export const STATE_ONLY = [
  'let a leak show: waited for leaks',
  'plug out: openings.outAt',
  'waited for leaks: gearcases.waitedForLeaks',
]

/** The case that detects the deletion of an entry; undefined if there is none. */
export function findDetectingCase({ within, sequences, goodProcedures }: Deletion): string | undefined {
  return within(() => {
    const firstDetecting = goodProcedures.find(
      ({ procedure, sheet }) => findingsOf(procedure, sheet).length > 0,
    )
    if (firstDetecting !== undefined) return `good procedure ${firstDetecting.name}`
    return sequences.find((sequence) => !isRefused(sequence))?.fact
  })
}

/** The findings without fixes. */
function findingsOf(procedure: ProcedureDocument, sheet: SpecSheet) {
  const { context, findings } = readContext(procedure, sheet)
  const { troubles } = findTroubles(sheet, context, procedure)
  return [...findings, ...troubles.map(({ finding }) => finding)]
}

/** Whether an unsafe sequence gives its codes at the right step. */
export function isRefused({ sheet, bad, at, codes }: UnsafeSequence): boolean {
  const found = findingsOf(bad, sheet).filter(({ path }) => at === undefined || path === `/steps/${at}`)
  return codes.every((code) => found.some((candidate) => candidate.code === code))
}

/** Every need and every effect of every action, and every field that an effect changes. */
export function listDeletions(): readonly Deletion[] {
  return [...listNeedDeletions(), ...listChangeDeletions(), ...listFieldDeletions()]
}

function replaced<Key extends string, Value>(record: Readonly<Record<Key, Value>>, key: Key, value: Value) {
  return <T>(work: () => T): T => {
    const writableRecord = record as Record<Key, Value>
    const before = writableRecord[key]
    writableRecord[key] = value
    try {
      return work()
    } finally {
      writableRecord[key] = before
    }
  }
}

const ROWS = Object.entries(ACTIONS) as readonly (readonly [keyof typeof ACTIONS, ActionRow])[]

function listNeedDeletions(): readonly Deletion[] {
  // A need can change only sequences in which it fails at this action.
  const failing = new Map<string, UnsafeSequence[]>()
  for (const candidate of UNSAFE_SEQUENCES)
    for (const { code, path } of findingsOf(candidate.bad, candidate.sheet)) {
      const step = candidate.bad.steps[Number(/^\/steps\/(\d+)$/.exec(path)?.[1])]
      if (step === undefined || !candidate.codes.includes(code)) continue
      const key = `${step.do}: needs ${code.replace('procedure/', '')}`
      failing.set(key, [...(failing.get(key) ?? []), candidate])
    }
  return ROWS.flatMap(([action, row]) =>
    row.needs.map((need): Deletion => {
      const entry = `${action}: needs ${need}`
      const needs = row.needs.filter((otherNeed) => otherNeed !== need)
      const within = replaced(ACTIONS, action, { ...row, needs })
      return { entry, within, sequences: failing.get(entry) ?? [], goodProcedures: [] }
    }),
  )
}

function listChangeDeletions(): readonly Deletion[] {
  return ROWS.flatMap(([action, row]) =>
    row.changes.map((change): Deletion => {
      const changes = row.changes.filter((otherChange) => otherChange !== change)
      const within = replaced(ACTIONS, action, { ...row, changes })
      return { entry: `${action}: ${change}`, within, sequences: UNSAFE_SEQUENCES, goodProcedures: GOODS }
    }),
  )
}

type Effects = Record<string, (context: { readonly state: MutableState }) => void>

/** The steps where each effect occurs, and the fields that it changes there. */
interface Watched {
  readonly fields: Set<string>
  readonly goodProcedures: Set<Good>
  readonly sequences: Set<UnsafeSequence>
}

function listFieldDeletions(): readonly Deletion[] {
  const effects = EFFECTS as unknown as Effects
  return [...watchEffects(effects)].flatMap(([name, { fields, goodProcedures, sequences }]) => {
    const effect = effects[name]
    if (effect === undefined) return []
    return [...fields].map((field): Deletion => {
      const within = replaced(effects, name, (context) => {
        const before = structuredClone(context.state)
        effect(context)
        restoreField(before, context.state, field)
      })
      return {
        entry: `${name}: ${field}`,
        within,
        sequences: [...sequences],
        goodProcedures: [...goodProcedures],
      }
    })
  })
}

/** Runs everything once and records every effect. */
function watchEffects(effects: Effects): ReadonlyMap<string, Watched> {
  const seen = new Map<string, Watched>()
  let note: (watched: Watched) => void = () => {}
  const originalEffects = Object.entries(effects)
  for (const [name, effect] of originalEffects) {
    const watched: Watched = { fields: new Set(), goodProcedures: new Set(), sequences: new Set() }
    seen.set(name, watched)
    effects[name] = (context) => {
      const before = structuredClone(context.state)
      effect(context)
      for (const field of listChangedFields(before, context.state)) watched.fields.add(field)
      note(watched)
    }
  }
  try {
    for (const goodProcedure of GOODS) {
      note = ({ goodProcedures }) => goodProcedures.add(goodProcedure)
      findingsOf(goodProcedure.procedure, goodProcedure.sheet)
    }
    for (const sequence of UNSAFE_SEQUENCES) {
      note = ({ sequences }) => sequences.add(sequence)
      findingsOf(sequence.bad, sequence.sheet)
    }
  } finally {
    Object.assign(effects, Object.fromEntries(originalEffects))
  }
  return seen
}

const OF_PARTS = ['gearcases', 'openings', 'covers', 'filters'] as const

/** `engine`, `seals`, `openings.position`. */
function listChangedFields(before: MutableState, after: MutableState): readonly string[] {
  const differs = (candidate: unknown, other: unknown) => JSON.stringify(candidate) !== JSON.stringify(other)
  const ofMachine = Object.keys(after).filter(
    (key) =>
      !OF_PARTS.some((candidate) => candidate === key) &&
      differs(before[key as keyof MutableState], after[key as keyof MutableState]),
  )
  const ofParts = OF_PARTS.flatMap((kind) =>
    Object.entries(after[kind]).flatMap(([path, part]) =>
      Object.entries(part)
        .filter(([field, value]) => differs(Reflect.get(before[kind][path] ?? {}, field), value))
        .map(([field]) => `${kind}.${field}`),
    ),
  )
  return [...ofMachine, ...ofParts]
}

function restoreField(before: MutableState, after: MutableState, name: string): void {
  const [kind, field] = name.split('.')
  if (field === undefined) Object.assign(after, { [name]: Reflect.get(before, name) })
  for (const candidate of OF_PARTS)
    if (candidate === kind && field !== undefined)
      for (const [path, part] of Object.entries(after[candidate]))
        Object.assign(part, { [field]: Reflect.get(before[candidate][path] ?? {}, field) })
}
