import { type PourVerdict, pourTime } from '../../fill/index.js'
import { viscosityAt } from '../../oil/index.js'
import type { LengthUnit, Quantity } from '../../quantity/index.js'
import { type ExitCode, type QuestionIo, UsageError } from '../cliIo.js'
import type { ParsedWords } from '../parseWords.js'
import { printAnswer } from './printAnswer.js'
import { readInUnit, readQuantity, requireOption, requireSubject } from './readText.js'

/** `pour`: how long a refill takes through a funnel and a hose. */
export async function runPour(words: ParsedWords, io: QuestionIo): Promise<ExitCode> {
  const volume = readQuantity('pour', requireSubject(words, 'pour', '"340 cc"'), 'volume', io)
  const readViscosity = (name: 'kv40' | 'kv100', example: string) =>
    readInUnit(`--${name}`, requireOption(words, 'pour', name, example), 'kinematicViscosity', 'mm2/s', io)
  const oil = { kv40: readViscosity('kv40', '143'), kv100: readViscosity('kv100', '15.1') }
  const temperature = readInUnit(
    '--at',
    requireOption(words, 'pour', 'at', '"-5 °C"'),
    'temperature',
    'degC',
    io,
  )
  const [bore, length] = readTwoLengths('--hose', requireOption(words, 'pour', 'hose', '"6 mm x 1 m"'), io)
  const funnelText = requireOption(words, 'pour', 'funnel', '"120 mm x 100 mm"')
  const [, shape = 'cone', sizes = ''] = /^\s*(cone|cylinder)?\s*(.*)$/s.exec(funnelText) ?? []
  const [diameter, depth] = readTwoLengths('--funnel', sizes, io)
  const { drop } = words.values
  const viscosity = viscosityAt(oil, temperature)
  const result: PourVerdict | typeof viscosity =
    viscosity.verdict === 'cannot tell'
      ? viscosity
      : pourTime({
          funnel: { shape: shape === 'cylinder' ? 'cylinder' : 'cone', diameter, depth },
          hose: {
            bore,
            length,
            drop: drop === undefined ? length : readQuantity('--drop', drop, 'length', io),
          },
          kinematicViscosity: viscosity.viscosity,
          volume,
        })
  const { answers } = io.words
  const isYes = result.verdict === 'pour time'
  const text = isYes ? answers.about({ time: formatTime(result.total.value) }) : answers.cannotTell
  return printAnswer(words, io, { text, result: isYes ? { ...result, viscosity } : result, isYes })
}

function readTwoLengths(
  option: string,
  text: string,
  io: QuestionIo,
): readonly [Quantity<LengthUnit>, Quantity<LengthUnit>] {
  const [first = '', second, ...others] = text.split(/\s*[x×]\s*/)
  if (second === undefined || others.length > 0)
    throw new UsageError('twoLengths', { given: `${option} ${JSON.stringify(text)}` })
  return [readQuantity(option, first, 'length', io), readQuantity(option, second, 'length', io)]
}

/** Long times are rounded to minutes: the model is not exact to the second. */
function formatTime(seconds: number): string {
  const wholeSeconds = Math.round(seconds)
  if (wholeSeconds < 120) return `${wholeSeconds} s`
  const minutes = Math.floor(wholeSeconds / 60)
  return minutes < 10 ? `${minutes} min ${wholeSeconds % 60} s` : `${Math.round(seconds / 60)} min`
}
