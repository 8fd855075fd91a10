import { stringify } from 'yaml'
import { dropUndefined, type Finding, type Result, splitPointer } from '../../base/index.js'
import { cardModel, type PlannedVisit } from '../../card/index.js'
import type { Catalogue } from '../../message/index.js'
import { buildProcedure, type ProcedureCodes, refreshProcedure } from '../../procedure/index.js'
import { chooseVisit, type ServiceCodes } from '../../service/index.js'
import { diffSheets, type MachineLog, type ProcedureDocument, type SpecSheet } from '../../spec/index.js'
import { chooseDueOptions, chooseToolboxAndStock, planMachine, requireOneMachine } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import type { CliWords } from '../message/cliWords.js'
import { type FileSet, findSheet, listDocuments, readDocuments, readProcedure } from '../readDocuments.js'
import type { Options } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings, reportReadErrors } from '../renderFindings.js'
import { writeOut } from '../writeOut.js'

/** The procedure built from the files, with its machine. */
interface BuiltProcedure {
  readonly result: Result<ProcedureDocument | undefined, ServiceCodes & ProcedureCodes>
  readonly sheet: SpecSheet
  readonly log: MachineLog
}

/** `procedure`: writes the built steps, or updates a writer's procedure to the new revision of its sheet. */
export async function runProcedure(options: Options, io: CommandIo): Promise<ExitCode> {
  const { out, from, paths } = options
  if (paths.length === 0) throw new UsageError('nameMachine', { command: 'procedure' })
  if (out !== undefined && !/\.(ya?ml|json)$/i.test(out))
    throw new UsageError('badEnding', { given: `--out ${out}`, endings: '.yaml, .yml, .json' })
  const sets = await readDocuments(paths, io)
  const olderFiles = from === undefined ? undefined : await readProcedure('--from', from, io)
  if (reportReadErrors([...sets, ...(olderFiles?.sets ?? [])], io)) return 1
  const oldProcedure = olderFiles?.procedure
  const { result, sheet, log } =
    oldProcedure === undefined ? buildForVisit(sets, options) : findRevision(oldProcedure, sets)
  const refreshedProcedure = oldProcedure && refreshProcedure(oldProcedure, sheet, log.identity)
  const report = (findings: readonly Finding[]): ExitCode => {
    const locatedFindings = locateFindings(findings, sets, io)
    if (locatedFindings.length > 0) io.printError(renderFindings(locatedFindings, 'text', io))
    return chooseExitCode(locatedFindings, options.level)
  }
  if (!result.ok) return report(result.findings)
  const procedure = refreshedProcedure?.procedure ?? result.value
  if (procedure === undefined) throw new UsageError('noServiceDue')
  const [toolboxAndStock] = sets.map(chooseToolboxAndStock)
  const planned = planMachine(
    { fileSet: sets[0] as FileSet, sheet, log },
    { ...options, services: 'due' },
    toolboxAndStock ?? {},
    procedure,
  )
  const isJson = options.format === 'json' || /\.json$/i.test(out ?? '')
  const text = isJson
    ? `${JSON.stringify(procedure, null, 2)}\n`
    : writeYaml(procedure, planned.ok ? planned : undefined, io.catalogue) +
      (refreshedProcedure?.lostNotes ?? [])
        .map((lost) => `# ${cleanLine(io.words.reports.lostNote(lost))}\n`)
        .join('')
  if (out === undefined) io.print(text)
  else {
    await writeOut(out, text, io, { mustBeNew: true })
    io.print(io.words.reports.written({ path: out }))
  }
  if (oldProcedure !== undefined && refreshedProcedure !== undefined) {
    const lines = [
      ...describeRefresh(oldProcedure, refreshedProcedure, io.words),
      ...describeChanges(oldProcedure, sheet, sets, procedure, io.words),
    ]
    for (const line of lines) io.printError(cleanLine(line))
  }
  return report(refreshedProcedure?.left ?? result.findings)
}

/** Steps removed and added for a new revision, and the notes of removed steps. */
function describeRefresh(
  oldProcedure: ProcedureDocument,
  { procedure, removedSteps, moved, lostNotes, isRebuilt }: ReturnType<typeof refreshProcedure>,
  { reports }: CliWords,
): readonly string[] {
  const listAddedSteps = (steps: ProcedureDocument['steps'], others: ProcedureDocument['steps']) =>
    steps.filter(({ id }) => !others.some((step) => step.id === id))
  const replacedSteps = listAddedSteps(oldProcedure.steps, procedure.steps).filter(
    (step) => !removedSteps.some(({ id }) => id === step.id),
  )
  return [
    ...removedSteps.map(({ id, on = '' }) => reports.stepWithoutPart({ id, part: on })),
    ...replacedSteps.map(({ id, do: action }) => reports.stepRemoved({ id, action })),
    ...listAddedSteps(procedure.steps, oldProcedure.steps).map(({ id, do: action }) =>
      reports.stepAdded({ id, action }),
    ),
    ...(isRebuilt ? [] : moved.map((id) => reports.stepMoved({ id }))),
    ...(isRebuilt ? [reports.stepsRebuilt] : []),
    ...lostNotes.map(reports.lostNote),
  ]
}

/** The steps for a visit to one machine, or for the services of a sheet without a log. */
function buildForVisit(sets: readonly FileSet[], options: Options): BuiltProcedure {
  const logs = listDocuments(sets, (set) => set.logs)
  if (logs.length === 0) {
    const [sheet, ...others] = listDocuments(sets, (set) => set.sheets)
    if (sheet === undefined || others.length > 0 || options.services === 'due')
      throw new UsageError('logOrSheet')
    const { services, raiseOn = 'stands' } = options
    return {
      result: buildProcedure({ sheet, identity: {}, services, raiseOn }),
      sheet,
      log: makeEmptyLog(sheet, {}),
    }
  }
  const { sheet, log } = requireOneMachine(sets, options)
  const { services, today, iso6789, raiseOn } = options
  const visit = chooseVisit(
    dropUndefined({ sheet, log, today, toolbox: sets.map(chooseToolboxAndStock)[0]?.toolbox }),
    dropUndefined({ services, iso6789, due: chooseDueOptions(options, log), raiseOn }),
  )
  return { result: visit.ok ? { ...visit, value: visit.value.procedure } : visit, sheet, log }
}

/** The new revision of the sheet for an older procedure, with the machine. */
function findRevision(oldProcedure: ProcedureDocument, sets: readonly FileSet[]): BuiltProcedure {
  const sheets = listDocuments(sets, (set) => set.sheets).filter(({ id }) => id === oldProcedure.sheet.id)
  const others = sheets.filter(({ revision }) => revision !== oldProcedure.sheet.revision)
  const [sheet = sheets[0]] = others
  if (sheet === undefined || others.length > 1)
    throw new UsageError('noNewRevision', { id: oldProcedure.sheet.id })
  const logs = listDocuments(sets, (set) => set.logs)
  const log = logs.find(
    (candidate) => candidate.sheet.id === sheet.id && candidate.sheet.revision === sheet.revision,
  )
  return {
    result: { ok: true, value: oldProcedure, findings: [] },
    sheet,
    log: log ?? makeEmptyLog(sheet, oldProcedure.identity),
  }
}

/** An empty log, so that the steps can be planned. */
function makeEmptyLog({ id, revision, machine }: SpecSheet, identity: MachineLog['identity']): MachineLog {
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

/** Figures of these steps that differ from the older revision of the sheet, if it is among the files. */
function describeChanges(
  oldProcedure: ProcedureDocument,
  sheet: SpecSheet,
  sets: readonly FileSet[],
  { steps }: ProcedureDocument,
  { reports }: CliWords,
) {
  const before = findSheet(
    listDocuments(sets, (set) => set.sheets),
    oldProcedure.sheet,
  )
  if (before === undefined || before === sheet) return []
  return diffSheets(before, sheet).leaves.flatMap(({ of, from, to }) => {
    const stepIds = steps.filter(({ values = {} }) => Object.values(values).includes(of)).map(({ id }) => id)
    const write = (at: typeof from) => (at === undefined ? reports.nothingThere : JSON.stringify(at.leaf))
    const figure = splitPointer(of)?.join(' ') ?? ''
    return stepIds.length === 0
      ? []
      : [reports.figureChanged({ steps: stepIds.join(', '), figure, from: write(from), to: write(to) })]
  })
}

/** YAML with each line of the card as a comment above its steps. */
function writeYaml(
  procedure: ProcedureDocument,
  planned: PlannedVisit | undefined,
  catalogue: Catalogue,
): string {
  const parts =
    planned === undefined ? [] : cardModel(planned, catalogue).sections.flatMap((section) => section.parts)
  const cardLines = parts.flatMap((part) =>
    part.kind === 'steps' ? part.groups.flatMap(({ steps }) => steps) : [],
  )
  const comments = new Map(
    cardLines.map(({ number, steps: [first], full }) => [
      first,
      `${number}. ${full.map(({ text }) => text).join('')}`,
    ]),
  )
  const { steps, ...header } = procedure
  const blocks = steps.map((step) => {
    const comment =
      comments
        .get(step.id)
        ?.replaceAll('\u00a0', ' ')
        .match(/.{1,100}(?: |$)/g) ?? []
    const stepLines = stringify([step], { lineWidth: 0 }).trimEnd().split('\n')
    return [...comment.map((text) => `# ${text.trimEnd()}`), ...stepLines]
      .map((text) => `  ${text}\n`)
      .join('')
  })
  return `${stringify(header, { lineWidth: 0 })}steps:\n${blocks.join('')}`
}
