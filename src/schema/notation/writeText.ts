import type { NotationName } from './allPlaces.js'
import type { SheetNotation } from './sheetNotations.js'
import { MEASURED_WRITERS } from './writeMeasured.js'
import type { Value, Writer, WriteSource } from './writer.js'
import { sealText } from './writeSeal.js'
import { band, isNotStated, join, printed, value } from './writeValue.js'

/** Writes a value in a notation as well as it can; who uses the text reads it back. Undefined where no text says it. */
export function writeText(name: NotationName, value: Value, source: WriteSource): string | undefined {
  // Joined here: a bundle that only reads would keep a table that is joined beside.
  return { ...SHEET_WRITERS, ...MEASURED_WRITERS }[name](value, source)
}

function tighteningText({
  kind,
  stages = [],
  torque,
  thenAngle,
  min,
  max,
  maxTorque,
  threadCondition,
}: Value): string {
  const figures =
    kind === 'torque'
      ? [...[...stages, torque].map(printed), ...(thenAngle === undefined ? [] : [band(thenAngle)])].join(
          ' then ',
        )
      : kind === 'turns'
        ? join(`${min}${max === undefined ? '' : ` to ${max}`} turns`, maxTorque && printed(maxTorque))
        : 'not stated'
  return join(figures, threadCondition !== 'not stated' && threadCondition)
}

const defaultSystemOf = (grade: string): string =>
  Number.parseInt(grade, 10) >= 65 ? 'SAE J306' : 'SAE J300'

function oilText({
  kind,
  name,
  grade,
  system,
  edition,
  category,
  ambient,
  limitedSlip,
  additive,
}: Value): string {
  const isPlain = edition === undefined && system === defaultSystemOf(grade)
  const standard = isPlain ? 'SAE' : `${system}${edition === undefined ? '' : `:${edition}`}`
  const graded = system === 'ISO VG' ? `ISO ${grade}` : `${standard} ${grade}`
  return join(
    kind === 'maker fluid' ? `maker fluid ${name}` : [graded, category].filter(Boolean).join(' '),
    ambient && printed(ambient),
    limitedSlip !== 'not stated' && `limited-slip ${limitedSlip}`,
    additive &&
      `${additive.includedInRefill ? 'including' : 'plus'} ${printed(additive.volume)} of ${additive.name}`,
  )
}

const PERIOD_WORDS = { Y: 'year', M: 'month', W: 'week', D: 'day' } as const

function intervalText({ kind, hours, distance, period }: Value): string {
  if (kind === 'not stated') return kind
  const one = (given: Value) => `${given.value} ${given.unit}`
  const others = distance?.printed?.map(one).join(', ')
  const parts = [...(period ?? '').matchAll(/(\d+)([YMWD])/g)].map(([, count, letter]) => {
    const word = PERIOD_WORDS[letter as keyof typeof PERIOD_WORDS]
    return `${count} ${word}${count === '1' ? '' : 's'}`
  })
  return join(
    hours && `${hours} h`,
    distance && (others ? `${one(distance)} (${others})` : one(distance)),
    parts.join(' '),
  )
}
const interval: Writer = (given, source) => intervalText(given) + source(given.source)

function driveText({ kind, size }: Value): string {
  return size === undefined ? kind : `${kind} ${size}`
}

function fastenersText(given: Value, source: WriteSource): string | undefined {
  const { count, thread, propertyClass, drive, tightening = { kind: 'not stated' }, pattern } = given
  const bolts = [typeof count === 'number' && `${count} x`, thread, propertyClass].filter(Boolean).join(' ')
  const tightened = isNotStated(tightening) && !tightening.source ? undefined : tighteningText(tightening)
  return (
    join(
      bolts,
      drive && !isNotStated(drive) && driveText(drive),
      tightened,
      pattern !== 'not stated' && pattern,
    ) + source(tightening.source)
  )
}

function methodText({ kind, opening, below, reading }: Value): string {
  const at = opening === undefined ? '' : ` at ${opening}`
  return join(`${kind}${reading === undefined ? '' : ` ${reading}`}${at}`, below && `${printed(below)} below`)
}

function conditionText({ variants, modelYears, serials, market }: Value): string {
  const range = ({ from, to }: Value) =>
    from === undefined ? `to ${to}` : to === undefined ? `from ${from}` : `${from} to ${to}`
  return join(
    variants && `variant ${variants.join(' or ')}`,
    modelYears && `model years ${range(modelYears)}`,
    serials && `serial ${serials.prefix === undefined ? '' : `${serials.prefix} `}${range(serials)}`,
    market && `market ${market.join(' or ')}`,
  )
}

const SHEET_WRITERS: Readonly<Record<SheetNotation, Writer>> = {
  volume: value,
  length: value,
  temperature: value,
  mass: value,
  minutes: value,
  interval,
  window: interval,
  tightening: (given, source) => tighteningText(given) + source(given.source),
  oils: (given, source) =>
    (isNotStated(given) ? 'not stated' : given.choices.map(oilText).join('; ')) + source(given.source),
  seal: (given, source) => sealText(given, source) + source(given.source),
  place: (given, source) => (isNotStated(given) ? 'not stated' : given.text) + source(given.source),
  severeUse: ({ kind, interval: limits, factor, criteria, source: own }, source) =>
    kind === 'factor'
      ? `factor ${factor} when ${criteria}${source(own)}`
      : `${intervalText(limits)} when ${criteria}${source(limits.source)}`,
  access: ({ kind, supports, source: own }, source) =>
    supports === undefined ? kind + source(own) : `raised on ${supports.join(', ')}`,
  oilSpace: ({ with: owner, portion }, source) =>
    owner && join(`shared with ${owner}`, portion && value(portion, source)),
  fill: ({ drainAndRefill = { kind: 'not stated' }, method, ...others }, source) =>
    Object.keys(others).length > 0
      ? undefined
      : join(printed(drainAndRefill), method && !isNotStated(method) && methodText(method)) +
        source(drainAndRefill.source),
  method: (given, source) => methodText(given) + source((given.below ?? given).source),
  level: (
    { attitude = 'not stated', engine = 'not stated', temperature, minutesAfterStop, recheckAfterRun },
    source,
  ) =>
    join(
      attitude,
      engine !== 'not stated' && `engine ${engine}`,
      temperature && value(temperature, source),
      minutesAfterStop && `${printed(minutesAfterStop)} after stop${source(minutesAfterStop.source)}`,
      recheckAfterRun && 'recheck after run',
    ),
  uses: (given) =>
    join(
      ...given.map(({ role, wheelMark }: Value) =>
        wheelMark === undefined ? role : `${role} at ${wheelMark}`,
      ),
    ),
  emptying: ({ kind, opening, cover, also }) =>
    kind === 'cover'
      ? `cover ${cover}`
      : `${kind === 'suction' ? kind : 'drain'} at ${opening}${also === undefined ? '' : ` with ${also.join(' and ')}`}`,
  filterHold: ({ kind, opening, cover }) => (kind === 'screwed' ? undefined : `${kind} ${opening ?? cover}`),
  drive: (given, source) => driveText(given) + source(given.source),
  fasteners: fastenersText,
  bolts: fastenersText,
  condition: conditionText,
  variant: ({ name, when }) => join(name, when && `when ${conditionText(when)}`),
  support: ({ at, jack, axle }) => join(at, jack && `jack ${jack}`, axle && `lifts ${axle}`),
  axle: ({ wheels, ramps }) =>
    join(
      `${wheels} ${wheels === 1 ? 'wheel' : 'wheels'}`,
      ramps !== undefined && (ramps ? 'ramps' : 'no ramps'),
    ),
  documentSource: ({ title, document, edition, date }) =>
    join(title, document, edition && `edition ${edition}`, date),
  source: (given, source) => source(given).slice(2, -1),
}
