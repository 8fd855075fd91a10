import type { NotationName } from './notationTables.js'
import type { SheetNotationName } from './sheetNotations.js'
import { MEASURED_WRITERS } from './writeMeasured.js'
import type { Value, Writer, WriteSource } from './writeValue.js'
import { formatBand, formatPrinted, formatSeal, isNotStated, joinParts, value } from './writeValue.js'

/**
 * Writes a value in a notation, perhaps with losses: the caller must read the text back. Undefined if no text
 * can express the value.
 */
export function writeText(name: NotationName, value: Value, source: WriteSource): string | undefined {
  // Merged only at use: otherwise a bundle that only reads would keep the table.
  return { ...SHEET_WRITERS, ...MEASURED_WRITERS }[name](value, source)
}

function formatTightening({
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
      ? [
          ...[...stages, torque].map(formatPrinted),
          ...(thenAngle === undefined ? [] : [formatBand(thenAngle)]),
        ].join(' then ')
      : kind === 'turns'
        ? joinParts(
            `${min}${max === undefined ? '' : ` to ${max}`} turns`,
            maxTorque && formatPrinted(maxTorque),
          )
        : 'not stated'
  return joinParts(figures, threadCondition !== 'not stated' && threadCondition)
}

const findDefaultSystem = (grade: string): string =>
  Number.parseInt(grade, 10) >= 65 ? 'SAE J306' : 'SAE J300'

function formatOil({
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
  const isDefaultSystem = edition === undefined && system === findDefaultSystem(grade)
  const standard = isDefaultSystem ? 'SAE' : `${system}${edition === undefined ? '' : `:${edition}`}`
  const gradeText = system === 'ISO VG' ? `ISO ${grade}` : `${standard} ${grade}`
  return joinParts(
    kind === 'maker fluid' ? `maker fluid ${name}` : [gradeText, category].filter(Boolean).join(' '),
    ambient && formatPrinted(ambient),
    limitedSlip !== 'not stated' && `limited-slip ${limitedSlip}`,
    additive &&
      `${additive.includedInRefill ? 'including' : 'plus'} ${formatPrinted(additive.volume)} of ${additive.name}`,
  )
}

const PERIOD_WORDS = { Y: 'year', M: 'month', W: 'week', D: 'day' } as const

function formatInterval({ kind, hours, distance, period }: Value): string {
  if (kind === 'not stated') return kind
  const formatDistance = (input: Value) => `${input.value} ${input.unit}`
  const others = distance?.printed?.map(formatDistance).join(', ')
  const parts = [...(period ?? '').matchAll(/(\d+)([YMWD])/g)].map(([, count, letter]) => {
    const word = PERIOD_WORDS[letter as keyof typeof PERIOD_WORDS]
    return `${count} ${word}${count === '1' ? '' : 's'}`
  })
  return joinParts(
    hours && `${hours} h`,
    distance && (others ? `${formatDistance(distance)} (${others})` : formatDistance(distance)),
    parts.join(' '),
  )
}
const interval: Writer = (input, source) => formatInterval(input) + source(input.source)

function formatDrive({ kind, size }: Value): string {
  return size === undefined ? kind : `${kind} ${size}`
}

function formatFasteners(input: Value, source: WriteSource): string | undefined {
  const { count, thread, propertyClass, drive, tightening = { kind: 'not stated' }, pattern } = input
  const bolts = [typeof count === 'number' && `${count} x`, thread, propertyClass].filter(Boolean).join(' ')
  const tightened = isNotStated(tightening) && !tightening.source ? undefined : formatTightening(tightening)
  return (
    joinParts(
      bolts,
      drive && !isNotStated(drive) && formatDrive(drive),
      tightened,
      pattern !== 'not stated' && pattern,
    ) + source(tightening.source)
  )
}

function formatMethod({ kind, opening, below, reading }: Value): string {
  const at = opening === undefined ? '' : ` at ${opening}`
  return joinParts(
    `${kind}${reading === undefined ? '' : ` ${reading}`}${at}`,
    below && `${formatPrinted(below)} below`,
  )
}

function formatCondition({ variants, modelYears, serials, market }: Value): string {
  const range = ({ from, to }: Value) =>
    from === undefined ? `to ${to}` : to === undefined ? `from ${from}` : `${from} to ${to}`
  return joinParts(
    variants && `variant ${variants.join(' or ')}`,
    modelYears && `model years ${range(modelYears)}`,
    serials && `serial ${serials.prefix === undefined ? '' : `${serials.prefix} `}${range(serials)}`,
    market && `market ${market.join(' or ')}`,
  )
}

const SHEET_WRITERS: Readonly<Record<SheetNotationName, Writer>> = {
  volume: value,
  length: value,
  temperature: value,
  mass: value,
  minutes: value,
  interval,
  window: interval,
  tightening: (input, source) => formatTightening(input) + source(input.source),
  oils: (input, source) =>
    (isNotStated(input) ? 'not stated' : input.choices.map(formatOil).join('; ')) + source(input.source),
  seal: (input, source) => formatSeal(input, source) + source(input.source),
  place: (input, source) => (isNotStated(input) ? 'not stated' : input.text) + source(input.source),
  position: ({ kind, face, across, height, offset, source: own }, source) =>
    (kind === 'position'
      ? joinParts(`${face} face`, across, height, offset && formatPrinted(offset))
      : kind) + source(own),
  severeUse: ({ kind, interval: limits, factor, criteria, source: own }, source) =>
    kind === 'factor'
      ? `factor ${factor} when ${criteria}${source(own)}`
      : `${formatInterval(limits)} when ${criteria}${source(limits.source)}`,
  access: ({ kind, supports, source: own }, source) =>
    supports === undefined ? kind + source(own) : `raised on ${supports.join(', ')}`,
  oilSpace: ({ with: owner, portion }, source) =>
    owner && joinParts(`shared with ${owner}`, portion && value(portion, source)),
  fill: ({ drainAndRefill = { kind: 'not stated' }, method, ...others }, source) =>
    Object.keys(others).length > 0
      ? undefined
      : joinParts(formatPrinted(drainAndRefill), method && !isNotStated(method) && formatMethod(method)) +
        source(drainAndRefill.source),
  method: (input, source) => formatMethod(input) + source((input.below ?? input).source),
  level: (
    { attitude = 'not stated', engine = 'not stated', temperature, minutesAfterStop, recheckAfterRun },
    source,
  ) =>
    joinParts(
      attitude,
      engine !== 'not stated' && `engine ${engine}`,
      temperature && value(temperature, source),
      minutesAfterStop && `${formatPrinted(minutesAfterStop)} after stop${source(minutesAfterStop.source)}`,
      recheckAfterRun && 'recheck after run',
    ),
  uses: (input) =>
    joinParts(
      ...input.map(({ role, wheelMark }: Value) =>
        wheelMark === undefined ? role : `${role} at ${wheelMark}`,
      ),
    ),
  emptying: ({ kind, opening, cover, also }) =>
    kind === 'cover'
      ? `cover ${cover}`
      : `${kind === 'suction' ? kind : 'drain'} at ${opening}${also === undefined ? '' : ` with ${also.join(' and ')}`}`,
  filterHold: ({ kind, opening, cover }) => (kind === 'screwed' ? undefined : `${kind} ${opening ?? cover}`),
  drive: (input, source) => formatDrive(input) + source(input.source),
  fasteners: formatFasteners,
  bolts: formatFasteners,
  condition: formatCondition,
  variant: ({ name, when }) => joinParts(name, when && `when ${formatCondition(when)}`),
  support: ({ at, jack, axle }) => joinParts(at, jack && `jack ${jack}`, axle && `lifts ${axle}`),
  axle: ({ wheels, ramps }) =>
    joinParts(
      `${wheels} ${wheels === 1 ? 'wheel' : 'wheels'}`,
      ramps !== undefined && (ramps ? 'ramps' : 'no ramps'),
    ),
  documentSource: ({ title, document, edition, date }) =>
    joinParts(title, document, edition && `edition ${edition}`, date),
  source: (input, source) => source(input).slice(2, -1),
}
