import { stringify } from 'yaml'
import { dropUndefined, splitPointer } from '../base/index.js'
import { writeText } from '../schema/index.js'
import type { PartName, VisitPlan } from '../service/index.js'
import { cleanLine } from './cleanLine.js'
import type { CliWords } from './message/cliWords.js'

/** Marks a value that the technician must fill in: until then the document cannot be read. */
const BLANK_MARK = '?'

/**
 * A service record of a planned visit in short YAML. Settings, quantities and parts come from the plan, and
 * the technician corrects them. Values that only the machine can show are `?`, so that no record claims an
 * unseen fact.
 */
export function prefillRecord(plan: VisitPlan, { reports }: CliWords): string {
  const { hours, distance } = plan.readings
  const { sheet, log } = plan.machine
  const meters = [hours && `${BLANK_MARK} h`, distance && `${BLANK_MARK} ${distance.unit}`].filter(Boolean)
  const writtenParts = new Set<string>()
  const entries = plan.work.flatMap(({ service, task, part }) => {
    const key = `${part.path} ${part.instance?.id}`
    if (writtenParts.has(key)) return []
    writtenParts.add(key)
    return [writeEntry(plan, service, task, part)]
  })
  const asks = new Set(plan.warranty?.asks)
  const tools = new Set(
    plan.tightenings.flatMap(({ setting, wrench }) => (setting === undefined ? [] : wrench.id)),
  )
  const certificates = [...tools].map((tool) => ({ tool, number: BLANK_MARK, validTo: BLANK_MARK }))
  const shields = plan.tightenings
    .filter(({ part }) => part.path.startsWith('/shields/'))
    .map((tightening) => [
      tightening.part.path,
      writeText('tightened', describeTightening(tightening), () => ''),
    ])
  const record = dropUndefined({
    kind: 'service-record',
    version: '1.0',
    machine: log,
    sheet: `${sheet.id}, revision ${sheet.revision}`,
    date: plan.today,
    readings: meters.length === 0 ? {} : meters.join(', '),
    by: asks.has('who did it') ? BLANK_MARK : undefined,
    entries,
    shields: shields.length === 0 ? undefined : Object.fromEntries(shields),
    photos: asks.has('photos') ? [BLANK_MARK] : undefined,
    certificates: asks.has('wrench certificate') && tools.size > 0 ? certificates : undefined,
    signature: asks.has('signature') ? BLANK_MARK : undefined,
  })
  const uncountedParts = plan.missing
    .filter(({ reason }) => reason.params['role'] === 'fasteners')
    .map(({ part }) => `# ${reports.countFasteners({ part: cleanLine(part?.part ?? '') })}\n`)
  // One line for each key and each gearcase: inner maps are in braces.
  const lines = Object.entries(record).map(([key, value]) => {
    const isList = Array.isArray(value)
    const values = isList
      ? value.map((item) => `\n  - ${writeInline(item)}`).join('')
      : ` ${writeInline(value)}`
    return `${key}:${values}\n`
  })
  return [...uncountedParts, ...lines].join('')
}

const writeInline = (value: unknown): string =>
  stringify(value, { lineWidth: 0, collectionStyle: 'flow' }).trimEnd()

/**
 * One entry as a string, or as an object if the notation has no form for it: covers, filters, several seals of
 * one plug.
 */
function writeEntry(plan: VisitPlan, service: string, task: 'check' | 'change', gearcase: PartName): unknown {
  const isOfGearcase = ({ part }: { readonly part?: PartName }) =>
    part?.path.startsWith(`${gearcase.path}/`) === true &&
    (part.instance === undefined || part.instance.id === gearcase.instance?.id)
  const asks = new Set(plan.warranty?.asks)
  const hasStep = (action: string) => plan.steps.some((step) => step.do === action && isOfGearcase(step))
  const oil = plan.oil.find(({ part }) => part.path === gearcase.path)
  const refilled = oil?.measure ?? oil?.perInstance
  const [container] = oil?.take ?? []
  const tightened = plan.tightenings
    .filter(isOfGearcase)
    .map((tightening) => ({ on: tightening.part.path, ...describeTightening(tightening) }))
  const seals = plan.seals
    .filter(isOfGearcase)
    .filter(({ seal }) => seal.kind !== 'none')
    .map(({ part, replace, seal }) => {
      if (replace === 'on condition') return { on: part.path, done: 'inspected and used again' }
      const { supersededBy, partNumber = BLANK_MARK } = 'replace' in seal ? seal : {}
      return {
        on: part.path,
        done: 'new',
        ...(asks.has('part numbers') && { partNumber: supersededBy?.partNumber ?? partNumber }),
      }
    })
  const change = {
    drained: { value: BLANK_MARK, unit: refilled?.unit ?? 'mL' },
    refilled: refilled ?? { value: BLANK_MARK, unit: 'mL' },
    oil: {
      name: container?.name ?? BLANK_MARK,
      container: container?.container,
      batch: asks.has('oil batch') ? BLANK_MARK : undefined,
    },
    oilFinding: BLANK_MARK,
    magnet: hasStep('inspect the magnet') ? BLANK_MARK : undefined,
  }
  const entry = dropUndefined({
    service,
    gearcase: splitPointer(gearcase.path)?.[1] ?? '',
    instance: gearcase.instance?.id,
    ...(task === 'change' && change),
    sample: task === 'change' && hasStep('take an oil sample') ? { bottle: BLANK_MARK } : undefined,
    level: BLANK_MARK,
    leaks: BLANK_MARK,
    tightened,
    seals,
  })
  const fitsNotation =
    !seals.some((seal) => 'partNumber' in seal) &&
    [...tightened, ...seals].every(({ on }) => /^\/gearcases\/[^/]+\/openings\/[^/]+(\/seals\/0)?$/.test(on))
  if (fitsNotation) return writeText('entry', entry, () => '')
  const writePart = (name: 'tightened' | 'sealDone' | 'quantityVolume' | 'oilUsed', value: unknown) =>
    writeText(name, value, () => '')
  const writeByPart = (name: 'tightened' | 'sealDone', list: readonly { readonly on: string }[]) =>
    Object.fromEntries(list.map(({ on, ...done }) => [on, writePart(name, done)]))
  return dropUndefined({
    ...entry,
    ...(task === 'change' && {
      drained: writePart('quantityVolume', change.drained),
      refilled: writePart('quantityVolume', change.refilled),
      oil: change.oil.batch === undefined ? writePart('oilUsed', change.oil) : dropUndefined(change.oil),
    }),
    opened: [...new Set(tightened.map(({ on }) => on))],
    tightened: writeByPart('tightened', tightened),
    seals: writeByPart('sealDone', seals),
  })
}

function describeTightening({ verdict, setting, wrench }: VisitPlan['tightenings'][number]) {
  if (setting !== undefined) return { kind: 'torque set', torque: setting, tool: wrench.id }
  return verdict === 'by turns' ? { kind: 'turns', turns: BLANK_MARK } : { kind: BLANK_MARK }
}
