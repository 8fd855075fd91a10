import { convert, type TorqueUnit } from '../../quantity/index.js'
import type { Tightening, TorqueWrench } from '../../spec/index.js'
import { checkWrench } from '../../torque/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { formatAnswer, printAnswer } from './printAnswer.js'
import { readBand, readQuantity, readScale, requireOption, requireSubject } from './readText.js'

/** `torque`: the setting of a wrench, and the actual torque. */
export async function runTorque(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const text = requireSubject(words, 'torque', '"9.3 lbf·ft"')
  const torque = readBand('torque', text, 'torque', io)
  const scaleText = requireOption(words, 'torque', 'wrench', '"40–200 lbf·in by 1"')
  const { accuracy, crowfoot, lever } = words.values
  const { answers } = io.words
  const wrench: TorqueWrench = {
    name: answers.thisWrench,
    type: 'click',
    drive: 'not stated',
    scales: [readWrenchScale(scaleText, io)],
    accuracy: readAccuracy(accuracy),
    ...(lever !== undefined && { leverLength: readQuantity('--lever', lever, 'length', io) }),
  }
  if (crowfoot !== undefined && lever === undefined) throw new UsageError('crowfootNeedsLever')
  const { iso6789, tolerancePercent } = readOptions(words, io)
  const tightening: Tightening = { kind: 'torque', torque, threadCondition: 'not stated' }
  const verdict = checkWrench(wrench, tightening, {
    iso6789,
    ...(tolerancePercent !== undefined && { tolerancePercent }),
    ...(crowfoot !== undefined && {
      adaptor: { extension: readQuantity('--crowfoot', crowfoot, 'length', io) },
    }),
  })
  const { setting } = verdict
  if (setting === undefined)
    return printAnswer(words, io, {
      text: verdict.verdict === 'does not fit' ? answers.doesNotFit : answers.cannotTell,
      result: verdict,
      isYes: false,
    })
  const { min, max } = setting.trueBand.sheetUnit
  const write = verdict.verdict === 'fits' ? answers.setTo : answers.setWithCare
  const answer = write({
    setting: formatAnswer(setting.setting, io.catalogue),
    min: formatAnswer(min, io.catalogue),
    max: formatAnswer(max, io.catalogue),
  })
  return printAnswer(words, io, { text: answer, result: verdict, isYes: true })
}

function readWrenchScale(text: string, io: QuestionIo): TorqueWrench['scales'][number] {
  const { band, step } = readScale('--wrench', text, 'torque', io)
  if (band.kind !== 'limits' || band.min === undefined || band.max === undefined)
    throw new UsageError('wrenchRange', { given: `--wrench ${JSON.stringify(text)}` })
  const unit: TorqueUnit = band.unit
  return { unit, lowest: Number(band.min), highest: Number(band.max), graduation: convert(step, unit).value }
}

function readAccuracy(text: string | undefined): TorqueWrench['accuracy'] {
  if (text === undefined) return { kind: 'ISO 6789' }
  const [, percent, of] =
    /^±?\s*(\d{1,2}(?:\.\d{1,3})?)\s*%?(\s+of (?:full scale|reading))?$/.exec(text.trim()) ?? []
  if (percent === undefined || Number(percent) === 0)
    throw new UsageError('badAccuracy', { given: `--accuracy ${text}` })
  return { kind: of?.trim() === 'of full scale' ? 'of full scale' : 'of reading', percent: Number(percent) }
}
