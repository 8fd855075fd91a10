import { chooseVessel, type VolumeAmount } from '../../fill/index.js'
import { formatCount } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { capitalize, formatAnswer, printAnswer } from './printAnswer.js'
import { readBand, readScale, requireOption, requireSubject } from './readText.js'

/** `fill`: how to measure a refill with one jug. */
export async function runFill(words: ParsedWords, io: CliIo): Promise<ExitCode> {
  const text = requireSubject(words, 'fill', '"340 cc"')
  const band = readBand('fill', text, 'volume')
  if (band.kind === 'limits')
    throw new UsageError(`fill ${JSON.stringify(text)}: expected one volume, not a range`)
  const { value, unit } = band
  const { tolerancePercent } = readOptions(words, io)
  const scaleText = requireOption(words, 'fill', 'vessel', '"700 mL by 10"')
  const { band: marks, step } = readScale('--vessel', scaleText, 'volume')
  if (marks.kind === 'nominal with tolerance' || (marks.kind === 'limits' && marks.max === undefined))
    throw new UsageError(
      `--vessel ${JSON.stringify(scaleText)}: expected the highest mark and the step, such as "700 mL by 10"`,
    )
  const size = marks.kind === 'limits' ? marks.max : marks.value
  const lowest = marks.kind === 'limits' ? marks.min : undefined
  let tolerance: VolumeAmount | undefined
  if (tolerancePercent !== undefined) tolerance = { value: (Number(value) * tolerancePercent) / 100, unit }
  else if (band.kind === 'nominal with tolerance')
    tolerance = { value: Math.min(Number(band.minus), Number(band.plus)), unit }
  const choice = chooseVessel(
    {
      jug: {
        name: 'this jug',
        size: { value: Number(size), unit: marks.unit },
        graduation: step,
        ...(lowest !== undefined && { lowestMark: { value: Number(lowest), unit: marks.unit } }),
      },
    },
    { value, unit },
    tolerance,
  )
  if (choice.verdict === 'does not fit')
    return printAnswer(words, io, { text: `${capitalize(choice.verdict)}.`, result: choice, isYes: false })
  const pours = `${formatCount(choice.marks.length, 'pour')}: to the ${describeMarks(choice.marks.map(formatAnswer))}`
  return printAnswer(words, io, {
    text: `${pours}. Error at most ${formatAnswer(choice.error)}.`,
    result: choice,
    isYes: true,
  })
}

/** `700 mL mark`, `700 mL mark 2 times, then to the 340 mL mark`. */
function describeMarks(marks: readonly string[]): string {
  const groups: { readonly mark: string; count: number }[] = []
  for (const mark of marks) {
    const before = groups.at(-1)
    if (before?.mark === mark) before.count += 1
    else groups.push({ mark, count: 1 })
  }
  return groups
    .map(({ mark, count }) => `${mark} mark${count === 1 ? '' : ` ${count} times`}`)
    .join(', then to the ')
}
