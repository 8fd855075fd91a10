import { isDate } from '../../calendar/index.js'
import { type DueVerdict, judgeInterval } from '../../interval/index.js'
import type { Interval, SevereUse } from '../../spec/index.js'
import { formatCount } from '../cleanLine.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { capitalize, formatAnswer, printAnswer } from './printAnswer.js'
import { readDay } from './readDay.js'
import { readNotation, requireOption } from './readText.js'

/** `due --every`: whether one service is due, from the interval and two readings. */
export async function runDueQuestion(words: ParsedWords, io: CliIo): Promise<ExitCode> {
  const { values, positionals } = words
  if (positionals.length > 0)
    throw new UsageError(`due: --every needs no document; found ${JSON.stringify(positionals[0])}`)
  const { due, today, brief, format } = readOptions(words, io)
  if (brief || format === 'csv')
    throw new UsageError('due: --every gives one answer, without --brief or --format csv')
  const { last, first, window, severe } = values
  const firstUse = values['from-new']
  if ((last === undefined) === (firstUse === undefined))
    throw new UsageError(
      'due: write --last "2022-11-20 at 301.4 h", or --from-new with the date of first use if it was never serviced',
    )
  if (firstUse !== undefined && !isDate(firstUse))
    throw new UsageError(`--from-new ${firstUse}: expected a date such as 2022-05-01`)
  const now = readDay('--now', requireOption(words, 'due', 'now', '"2023-10-06 at 512.6 h"'), today)
  const lastService = last === undefined ? undefined : readDay('--last', last)
  if (lastService !== undefined && lastService.date > now.date)
    throw new UsageError(`--last ${last}: ${lastService.date} is after ${now.date}, the date of --now`)
  const verdict = judgeInterval(
    {
      every: readInterval('--every', values.every ?? '', 'interval'),
      ...(first !== undefined && { first: readInterval('--first', first, 'interval') }),
      ...(window !== undefined && { window: readInterval('--window', window, 'window') }),
      ...(severe !== undefined && { severe: readSevereUse(severe) }),
      ...(lastService && { last: lastService }),
      ...(firstUse !== undefined && { firstUse }),
      now,
    },
    { soon: due.soon },
  )
  const isYes = verdict.verdict === 'not due' || verdict.verdict === 'due soon'
  const code = printAnswer(words, io, { text: describeVerdict(verdict), result: verdict, isYes })
  if (values['exit-code'] !== true || isYes) return code
  return verdict.verdict === 'cannot tell' ? 4 : 3
}

function describeVerdict({ verdict, lines, dueBy }: DueVerdict): string {
  const { left, duePoint } = lines.find(({ by }) => by === dueBy) ?? {}
  const point = duePoint?.meter
    ? `at ${formatAnswer(duePoint.meter)}`
    : duePoint?.date
      ? `on ${duePoint.date}`
      : ''
  if (verdict === 'cannot tell' || left === undefined) return `${capitalize(verdict)}.`
  const amount =
    left.unit === 'd'
      ? formatCount(Math.abs(left.value), 'day')
      : formatAnswer({ ...left, value: Math.abs(left.value) })
  return `${capitalize(verdict)}: ${left.value < 0 ? `${amount} over` : `${amount} left`}, due ${point}.`
}

/** An interval in short notation; the space before a unit is optional. */
function readInterval(option: string, text: string, notation: 'interval' | 'window'): Interval {
  return readNotation(option, separateUnits(text), notation, text) as Interval
}

const separateUnits = (text: string): string => text.replaceAll(/(?<=\d)(?=[a-z])/gi, ' ')

/** A factor or an interval; a reason may follow after `when`. */
function readSevereUse(text: string): SevereUse {
  const [intervalText = '', ...reasons] = text.split(' when ')
  const reason = reasons.length === 0 ? 'as given' : reasons.join(' when ')
  return readNotation(
    '--severe',
    `${separateUnits(intervalText)} when ${reason}`,
    'severeUse',
    text,
  ) as SevereUse
}
