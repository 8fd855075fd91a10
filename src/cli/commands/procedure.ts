import { stringify } from 'yaml'
import { type Finding, type Result, splitPointer } from '../../base/index.js'
import { cardModel, type PlannedVisit } from '../../card/index.js'
import { en } from '../../message/en/index.js'
import { buildProcedure, carryNotes, type ProcedureCodes } from '../../procedure/index.js'
import { chooseVisit, type ServiceCodes } from '../../service/index.js'
import { diffSheets, type MachineLog, type ProcedureDocument, type SpecSheet } from '../../spec/index.js'
import { chooseDueOptions, chooseToolboxAndStock, listMachines, planMachine } from '../chooseMachine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import { documentsOf, findSheet, type ReadSet, readDocuments } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { readProcedure } from '../readProcedure.js'
import { exitCodeOf, locateFindings, renderFindings, reportReading } from '../renderFindings.js'
import { safeLine } from '../safeLine.js'
import { writeOut } from '../writeOut.js'

/** The built procedure of the files, with the machine that it is for. */
interface Built {
  readonly written: Result<ProcedureDocument | undefined, ServiceCodes & ProcedureCodes>
  readonly sheet: SpecSheet
  readonly log: MachineLog
}

/** `procedure`: writes out the built steps, with the notes of an older procedure. */
export async function runProcedure(options: Options, io: CliIo): Promise<ExitCode> {
  const { out, from, paths } = options
  if (paths.length === 0) throw new UsageError('procedure: name the files or the folder of one machine')
  if (out !== undefined && !/\.(ya?ml|json)$/i.test(out))
    throw new UsageError(`--out ${out}: expected a name that ends in .yaml, .yml or .json`)
  const sets = await readDocuments(paths, io)
  const older = from === undefined ? undefined : await readProcedure('--from', from, io)
  if (reportReading([...sets, ...(older?.sets ?? [])], io)) return 1
  const old = older?.procedure
  const { written, sheet, log } = old === undefined ? buildForVisit(sets, options) : rebuild(old, sets)
  const report = (findings: readonly Finding[]): ExitCode => {
    const located = locateFindings(findings, sets)
    if (located.length > 0) io.printError(renderFindings(located, 'text'))
    return exitCodeOf(located, options.level)
  }
  if (!written.ok) return report(written.findings)
  if (written.value === undefined)
    throw new UsageError('procedure: no service is due; choose one with --service')
  const carried = old && carryNotes(old, written.value)
  const procedure = carried?.procedure ?? written.value
  const [shelf] = sets.map(chooseToolboxAndStock)
  const planned = planMachine(
    { read: sets[0] as ReadSet, sheet, log },
    { ...options, services: 'due' },
    shelf ?? {},
    procedure,
  )
  const isJson = options.format === 'json' || /\.json$/i.test(out ?? '')
  const text = isJson
    ? `${JSON.stringify(procedure, null, 2)}\n`
    : writeYaml(procedure, planned.ok ? planned : undefined)
  if (out === undefined) io.print(text)
  else {
    await writeOut(out, text, io, { isNew: true })
    io.print(`Written: ${out}`)
  }
  for (const { id, note } of carried?.lost ?? [])
    io.printError(safeLine(`Note without a step: ${id}: ${note}`))
  if (old !== undefined)
    for (const line of describeChanges(old, sheet, sets, procedure)) io.printError(safeLine(line))
  return report(written.findings)
}

/** The steps of the visit of one machine, or of the services of a sheet on its own. */
function buildForVisit(sets: readonly ReadSet[], options: Options): Built {
  const logs = documentsOf(sets, (set) => set.logs)
  if (logs.length === 0) {
    const [sheet, ...others] = documentsOf(sets, (set) => set.sheets)
    if (sheet === undefined || others.length > 0 || options.services === 'due')
      throw new UsageError('procedure: expected a log and its sheet, or one sheet and --service')
    const { services } = options
    return { written: buildProcedure({ sheet, identity: {}, services }), sheet, log: logFor(sheet, {}) }
  }
  const machines = listMachines(sets, options)
  const [machine] = machines
  if (machine === undefined || machines.length > 1)
    throw new UsageError(`found ${machines.length} logs: choose one with --machine`)
  const { sheet, log } = machine
  const { services, today, iso6789 } = options
  const visit = chooseVisit({ sheet, log, today }, { services, iso6789, due: chooseDueOptions(options, log) })
  return { written: visit.ok ? { ...visit, value: visit.value.procedure } : visit, sheet, log }
}

/** The steps of an older procedure's services, built again from the sheet of the files. */
function rebuild(old: ProcedureDocument, sets: readonly ReadSet[]): Built {
  const sheets = documentsOf(sets, (set) => set.sheets).filter(({ id }) => id === old.sheet.id)
  const others = sheets.filter(({ revision }) => revision !== old.sheet.revision)
  const [sheet = sheets[0]] = others
  if (sheet === undefined || others.length > 1)
    throw new UsageError(`procedure: expected the sheet ${old.sheet.id} in its new revision among the files`)
  const { id, name, services, only, events } = old
  const logs = documentsOf(sets, (set) => set.logs)
  const log = logs.find((one) => one.sheet.id === sheet.id && one.sheet.revision === sheet.revision)
  const { identity } = log ?? old
  const facts = { sheet, identity, services, ...(only && { only }), ...(events && { events }) }
  return { written: buildProcedure(facts, { id, name }), sheet, log: log ?? logFor(sheet, identity) }
}

/** A log for the lines of a machine that has none. */
function logFor({ id, revision, machine }: SpecSheet, identity: MachineLog['identity']): MachineLog {
  const name = `${machine.make} ${machine.model}`
  return {
    kind: 'machine-log',
    version: '1.0',
    id,
    name,
    sheet: { id, revision },
    identity,
    meters: {},
    records: [],
  }
}

/** The figures of these steps that differ from the older revision of the sheet, if it is among the files. */
function describeChanges(
  old: ProcedureDocument,
  sheet: SpecSheet,
  sets: readonly ReadSet[],
  { steps }: ProcedureDocument,
) {
  const before = findSheet(
    documentsOf(sets, (set) => set.sheets),
    old.sheet,
  )
  if (before === undefined || before === sheet) return []
  return diffSheets(before, sheet).leaves.flatMap(({ of, from, to }) => {
    const users = steps.filter(({ values = {} }) => Object.values(values).includes(of)).map(({ id }) => id)
    const [was, is] = [from, to].map((at) => (at === undefined ? 'nothing' : JSON.stringify(at.leaf)))
    return users.length === 0
      ? []
      : [`Changed at ${users.join(', ')}: ${splitPointer(of)?.join(' ')}: ${was} -> ${is}`]
  })
}

/** YAML with the line of the card above the steps that it joins. */
function writeYaml(procedure: ProcedureDocument, planned: PlannedVisit | undefined): string {
  const parts =
    planned === undefined ? [] : cardModel(planned, en).sections.flatMap((section) => section.parts)
  const lines = parts.flatMap((part) =>
    part.kind === 'steps' ? part.groups.flatMap(({ steps }) => steps) : [],
  )
  const comments = new Map(
    lines.map(({ number, steps: [first], full }) => [
      first,
      `${number}. ${full.map(({ text }) => text).join('')}`,
    ]),
  )
  const { steps, ...head } = procedure
  const blocks = steps.map((step) => {
    const comment =
      comments
        .get(step.id)
        ?.replaceAll('\u00a0', ' ')
        .match(/.{1,100}(?: |$)/g) ?? []
    const body = stringify([step], { lineWidth: 0 }).trimEnd().split('\n')
    return [...comment.map((text) => `# ${text.trimEnd()}`), ...body].map((text) => `  ${text}\n`).join('')
  })
  return `${stringify(head, { lineWidth: 0 })}steps:\n${blocks.join('')}`
}
