import { type Finding, isSameJson } from '../../base/index.js'
import { judgeOilLoss } from '../../service/index.js'
import type { MachineLog, SpecSheet, TopUp } from '../../spec/index.js'
import { addReadings } from '../addReadings.js'
import { listMachines } from '../chooseMachine.js'
import { cleanLine } from '../cleanLine.js'
import { type CommandIo, type ExitCode, UsageError } from '../cliIo.js'
import { describeLosses } from '../describeState.js'
import type { ParsedWords } from '../parseWords.js'
import { readDay } from '../questions/readDay.js'
import { readQuantity, requireOption } from '../questions/readText.js'
import { readDocuments } from '../readDocuments.js'
import { readOptions } from '../readOptions.js'
import { chooseExitCode, locateFindings, renderFindings } from '../renderFindings.js'
import { findNewMistakes, saveLog } from '../saveLog.js'
import { showValue } from '../showValue.js'

/** `record --top-up`: appends oil added between services, with meter readings, to the log of a machine. */
export async function runTopUp(words: ParsedWords, io: CommandIo): Promise<ExitCode> {
  const options = readOptions(words, io)
  const { values } = words
  if (values['top-up'] === undefined) throw new UsageError('onlyWithTopUp')
  if (options.fromPlan || values.service !== undefined || values.ambient !== undefined)
    throw new UsageError('notWithTopUp')
  if (options.paths.length === 0) throw new UsageError('nameLogAndSheet', { command: 'record' })
  const report = options.format === 'text' ? io.print : io.printError
  const sets = await readDocuments(options.paths, io)
  const readFindings = sets.flatMap(({ findings }) => findings)
  if (readFindings.some(isError)) {
    io.print(renderFindings(locateFindings(readFindings, sets, io), options.format, io))
    return 1
  }
  const [machine, ...others] = listMachines(sets, options)
  if (machine === undefined || others.length > 0)
    throw new UsageError('oneLog', { given: 'record', count: others.length + 1 })
  const { log, sheet, fileSet } = machine
  const day = readDay('--on', values.on ?? options.today, io)
  for (const meter of ['hours', 'distance'] as const)
    if (day[meter] !== undefined && log.meters[meter] === undefined)
      throw new UsageError('noMeter', { given: `--on ${values.on}`, meter })
  const topUp = { date: day.date, ...readGearcase(words, sheet), ...readOil(values['top-up'], io) }
  const { hours, distance } = day
  const readings = {
    hours: hours === undefined ? [] : [{ date: day.date, value: hours }],
    ...(distance && {
      distance: { unit: distance.unit, readings: [{ date: day.date, value: distance.value }] },
    }),
  }
  const extend = (current: MachineLog): MachineLog | undefined =>
    (current.topUps ?? []).some((recorded) => isSameJson(recorded, topUp))
      ? undefined
      : { ...addReadings(current, readings).log, topUps: [...(current.topUps ?? []), topUp] }
  const extendedLog = extend(log)
  const newMistakes = extendedLog === undefined ? [] : findNewMistakes(fileSet.set, extendedLog, options)
  const locatedFindings = locateFindings([...readFindings, ...newMistakes], sets, io)
  if (locatedFindings.length > 0 || options.format !== 'text')
    io.print(renderFindings(locatedFindings, options.format, io))
  // Oil in the gearcase is recorded even if it is not permitted.
  if (newMistakes.some((finding) => isError(finding) && finding.code !== 'log/oil-not-permitted')) {
    report(io.words.reports.nothingWritten)
    return 1
  }
  const savedLog = options.out === undefined ? extendedLog : await saveLog(options.out, log, extend, io)
  if (savedLog === undefined) {
    report(io.words.reports.topUpExists)
    return 1
  }
  for (const line of describeLosses(judgeOilLoss({ sheet, log: savedLog, today: options.today }), io))
    report(line)
  report(
    cleanLine(
      options.out === undefined
        ? io.words.reports.nameLogFile
        : io.words.reports.topUpAppended({
            path: options.out,
            volume: showValue(topUp.volume, io.catalogue),
            date: topUp.date,
            count: savedLog.topUps?.length ?? 0,
          }),
    ),
  )
  return chooseExitCode(locatedFindings, options.level)
}

const isError = ({ severity }: Finding): boolean => severity === 'error'

/** `50 mL of gear oil 80W-90`. */
function readOil(text: string, io: CommandIo): Pick<TopUp, 'volume' | 'oil'> {
  const [, amount, oil] = /^(.{1,60}?) of (\S.{0,199})$/.exec(text.trim()) ?? []
  if (amount === undefined || oil === undefined)
    throw new UsageError('badTopUp', { given: `--top-up ${JSON.stringify(text)}` })
  const volume = readQuantity('--top-up', amount, 'volume', io)
  if (volume.value === 0) throw new UsageError('zeroTopUp', { given: `--top-up ${JSON.stringify(text)}` })
  return { volume, oil }
}

/** `front`, `hub left`. */
function readGearcase(words: ParsedWords, { gearcases }: SpecSheet): Pick<TopUp, 'gearcase' | 'instance'> {
  const text = requireOption(words, 'record', 'at', 'front')
  const [gearcase = '', instance, ...others] = text.trim().split(/[\s,]+/)
  const known = Object.hasOwn(gearcases, gearcase) ? gearcases[gearcase] : undefined
  const knownParts = Object.entries(gearcases).flatMap(([id, { instances = {} }]) => {
    const ids = Object.keys(instances)
    return ids.length === 0 ? [id] : ids.map((instanceId) => `${id} ${instanceId}`)
  })
  const isKnown =
    known !== undefined &&
    others.length === 0 &&
    (instance === undefined ? known.instances === undefined : Object.hasOwn(known.instances ?? {}, instance))
  if (!isKnown)
    throw new UsageError('notOneOf', {
      given: `--at ${JSON.stringify(text)}`,
      expected: knownParts.join(', '),
    })
  return { gearcase, ...(instance !== undefined && { instance }) }
}
