import { convert, type TorqueUnit } from '../../quantity/index.js'
import type { Tightening, TorqueWrench } from '../../spec/index.js'
import { checkWrench } from '../../torque/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { capitalize, formatAnswer, printAnswer } from './printAnswer.js'
import { readBand, readQuantity, readScale, requireOption, requireSubject } from './readText.js'

/** `torque`: the setting of a wrench, and the actual torque. */
export async function runTorque(words: ParsedWords, io: CliIo): Promise<ExitCode> {
  const text = requireSubject(words, 'torque', '"9.3 lbf·ft"')
  const torque = readBand('torque', text, 'torque')
  const scaleText = requireOption(words, 'torque', 'wrench', '"40–200 lbf·in by 1"')
  const { accuracy, crowfoot, lever } = words.values
  const wrench: TorqueWrench = {
    name: 'this wrench',
    type: 'click',
    drive: 'not stated',
    scales: [readWrenchScale(scaleText)],
    accuracy: readAccuracy(accuracy),
    ...(lever !== undefined && { leverLength: readQuantity('--lever', lever, 'length') }),
  }
  if (crowfoot !== undefined && lever === undefined)
    throw new UsageError('--crowfoot: write the length of the wrench too, such as --lever "250 mm"')
  const { iso6789, tolerancePercent } = readOptions(words, io)
  const tightening: Tightening = { kind: 'torque', torque, threadCondition: 'not stated' }
  const verdict = checkWrench(wrench, tightening, {
    iso6789,
    ...(tolerancePercent !== undefined && { tolerancePercent }),
    ...(crowfoot !== undefined && { adaptor: { extension: readQuantity('--crowfoot', crowfoot, 'length') } }),
  })
  const { setting } = verdict
  if (setting === undefined)
    return printAnswer(words, io, { text: `${capitalize(verdict.verdict)}.`, result: verdict, isYes: false })
  const { min, max } = setting.trueBand.sheetUnit
  const careText = verdict.verdict === 'fits' ? '' : ' (with care)'
  const answer = `Set ${formatAnswer(setting.setting)}${careText}. Actual torque: ${formatAnswer(min)} to ${formatAnswer(max)}.`
  return printAnswer(words, io, { text: answer, result: verdict, isYes: true })
}

function readWrenchScale(text: string): TorqueWrench['scales'][number] {
  const { band, step } = readScale('--wrench', text, 'torque')
  if (band.kind !== 'limits' || band.min === undefined || band.max === undefined)
    throw new UsageError(`--wrench ${JSON.stringify(text)}: expected a range, such as "40–200 lbf·in by 1"`)
  const unit: TorqueUnit = band.unit
  return { unit, lowest: Number(band.min), highest: Number(band.max), graduation: convert(step, unit).value }
}

function readAccuracy(text: string | undefined): TorqueWrench['accuracy'] {
  if (text === undefined) return { kind: 'ISO 6789' }
  const [, percent, of] =
    /^±?\s*(\d{1,2}(?:\.\d{1,3})?)\s*%?(\s+of (?:full scale|reading))?$/.exec(text.trim()) ?? []
  if (percent === undefined || Number(percent) === 0)
    throw new UsageError(`--accuracy ${text}: expected a percentage, such as 4% or "2% of full scale"`)
  return { kind: of?.trim() === 'of full scale' ? 'of full scale' : 'of reading', percent: Number(percent) }
}
