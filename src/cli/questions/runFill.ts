import { chooseVessel, type VolumeAmount } from '../../fill/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { formatAnswer, printAnswer } from './printAnswer.js'
import { readBand, readScale, requireOption, requireSubject } from './readText.js'

/** `fill`: how to measure a refill with one jug. */
export async function runFill(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const text = requireSubject(words, 'fill', '"340 cc"')
  const band = readBand('fill', text, 'volume', io)
  if (band.kind === 'limits') throw new UsageError('oneVolume', { given: `fill ${JSON.stringify(text)}` })
  const { value, unit } = band
  const { tolerancePercent } = readOptions(words, io)
  const scaleText = requireOption(words, 'fill', 'vessel', '"700 mL by 10"')
  const { band: marks, step } = readScale('--vessel', scaleText, 'volume', io)
  if (marks.kind === 'nominal with tolerance' || (marks.kind === 'limits' && marks.max === undefined))
    throw new UsageError('highestMarkAndStep', { given: `--vessel ${JSON.stringify(scaleText)}` })
  const size = marks.kind === 'limits' ? marks.max : marks.value
  const lowest = marks.kind === 'limits' ? marks.min : undefined
  const {
    words: { answers },
    catalogue,
  } = io
  let tolerance: VolumeAmount | undefined
  if (tolerancePercent !== undefined) tolerance = { value: (Number(value) * tolerancePercent) / 100, unit }
  else if (band.kind === 'nominal with tolerance')
    tolerance = { value: Math.min(Number(band.minus), Number(band.plus)), unit }
  const choice = chooseVessel(
    {
      jug: {
        name: answers.thisJug,
        size: { value: Number(size), unit: marks.unit },
        graduation: step,
        ...(lowest !== undefined && { lowestMark: { value: Number(lowest), unit: marks.unit } }),
      },
    },
    { value, unit },
    tolerance,
  )
  if (choice.verdict === 'does not fit')
    return printAnswer(words, io, { text: answers.doesNotFit, result: choice, isYes: false })
  const marksText = answers.marks(groupMarks(choice.marks.map((mark) => formatAnswer(mark, catalogue))))
  const error = formatAnswer(choice.error, catalogue)
  return printAnswer(words, io, {
    text: answers.pours({ count: choice.marks.length, marks: marksText, error }),
    result: choice,
    isYes: true,
  })
}

/** Equal marks one after the other, with their number. */
function groupMarks(marks: readonly string[]): readonly { readonly mark: string; readonly count: number }[] {
  const groups: { readonly mark: string; count: number }[] = []
  for (const mark of marks) {
    const before = groups.at(-1)
    if (before?.mark === mark) before.count += 1
    else groups.push({ mark, count: 1 })
  }
  return groups
}
