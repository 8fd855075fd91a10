import { isDate } from '../../calendar/index.js'
import { type DueVerdict, judgeInterval } from '../../interval/index.js'
import type { Interval, SevereUse } from '../../spec/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { readOptions } from '../readOptions.js'
import { capitalize, formatAnswer, printAnswer } from './printAnswer.js'
import { readDay } from './readDay.js'
import { readNotation, requireOption } from './readText.js'

/** `due --every`: whether one service is due, from the interval and two readings. */
export async function runDueQuestion(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const { values, positionals } = words
  if (positionals.length > 0)
    throw new UsageError('everyNeedsNoDocument', { found: JSON.stringify(positionals[0]) })
  const { due, today, brief, format } = readOptions(words, io)
  if (brief || format === 'csv') throw new UsageError('everyGivesOneAnswer')
  const { last, first, window, severe } = values
  const firstUse = values['from-new']
  if ((last === undefined) === (firstUse === undefined)) throw new UsageError('lastOrFirstUse')
  if (firstUse !== undefined && !isDate(firstUse))
    throw new UsageError('notADate', { given: `--from-new ${firstUse}` })
  const now = readDay('--now', requireOption(words, 'due', 'now', '"2023-10-06 at 512.6 h"'), io, today)
  const lastService = last === undefined ? undefined : readDay('--last', last, io)
  if (lastService !== undefined && lastService.date > now.date)
    throw new UsageError('lastAfterNow', {
      given: `--last ${last}`,
      last: lastService.date,
      now: now.date,
    })
  const verdict = judgeInterval(
    {
      every: readInterval('--every', values.every ?? '', 'interval', io),
      ...(first !== undefined && { first: readInterval('--first', first, 'interval', io) }),
      ...(window !== undefined && { window: readInterval('--window', window, 'window', io) }),
      ...(severe !== undefined && { severe: readSevereUse(severe, io) }),
      ...(lastService && { last: lastService }),
      ...(firstUse !== undefined && { firstUse }),
      now,
    },
    { soon: due.soon },
  )
  const isYes = verdict.verdict === 'not due' || verdict.verdict === 'due soon'
  const code = printAnswer(words, io, { text: describeVerdict(verdict, io), result: verdict, isYes })
  if (values['exit-code'] !== true || isYes) return code
  return verdict.verdict === 'cannot tell' ? 4 : 3
}

function describeVerdict({ verdict, lines, dueBy }: DueVerdict, { words, catalogue }: QuestionIo): string {
  const { answers } = words
  const state = capitalize(words.dueStates[verdict])
  const { left, duePoint } = lines.find(({ by }) => by === dueBy) ?? {}
  const point = duePoint?.meter
    ? answers.dueAt({ meter: formatAnswer(duePoint.meter, catalogue) })
    : duePoint?.date
      ? answers.dueOn({ date: duePoint.date })
      : ''
  if (verdict === 'cannot tell' || left === undefined) return `${state}.`
  const amount =
    left.unit === 'd'
      ? answers.days({ count: Math.abs(left.value) })
      : formatAnswer({ ...left, value: Math.abs(left.value) }, catalogue)
  const amountText = left.value < 0 ? answers.over({ amount }) : answers.left({ amount })
  return answers.due({ state, amount: amountText, point })
}

/** An interval in short notation; the space before a unit is optional. */
function readInterval(
  option: string,
  text: string,
  notation: 'interval' | 'window',
  io: QuestionIo,
): Interval {
  return readNotation(option, separateUnits(text), notation, io, text) as Interval
}

const separateUnits = (text: string): string => text.replaceAll(/(?<=\d)(?=[a-z])/gi, ' ')

/** A factor or an interval; a reason may follow after `when`. */
function readSevereUse(text: string, io: QuestionIo): SevereUse {
  const [intervalText = '', ...reasons] = text.split(' when ')
  const reason = reasons.length === 0 ? io.words.answers.asGiven : reasons.join(' when ')
  return readNotation(
    '--severe',
    `${separateUnits(intervalText)} when ${reason}`,
    'severeUse',
    io,
    text,
  ) as SevereUse
}
