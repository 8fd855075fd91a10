import { type PourVerdict, pourTime } from '../../fill/index.js'
import { viscosityAt } from '../../oil/index.js'
import type { LengthUnit, Quantity } from '../../quantity/index.js'
import { type CliIo, type ExitCode, UsageError } from '../cliIo.js'
import type { Words } from '../parseWords.js'
import { printAnswer } from './printAnswer.js'
import { readIn, readSingle, requireOption, requireSubject } from './readText.js'

/** `pour`: how long a refill takes through a funnel and a hose. */
export async function runPour(words: Words, io: CliIo): Promise<ExitCode> {
  const volume = readSingle('pour', requireSubject(words, 'pour', '"340 cc"'), 'volume')
  const viscosity = (name: 'kv40' | 'kv100', example: string) =>
    readIn(`--${name}`, requireOption(words, 'pour', name, example), 'kinematicViscosity', 'mm2/s')
  const oil = { kv40: viscosity('kv40', '143'), kv100: viscosity('kv100', '15.1') }
  const temperature = readIn('--at', requireOption(words, 'pour', 'at', '"-5 °C"'), 'temperature', 'degC')
  const [bore, length] = readPair('--hose', requireOption(words, 'pour', 'hose', '"6 mm x 1 m"'))
  const funnelText = requireOption(words, 'pour', 'funnel', '"120 mm x 100 mm"')
  const [, shape = 'cone', sizes = ''] = /^\s*(cone|cylinder)?\s*(.*)$/s.exec(funnelText) ?? []
  const [diameter, depth] = readPair('--funnel', sizes)
  const { drop } = words.values
  const thick = viscosityAt(oil, temperature)
  const result: PourVerdict | typeof thick =
    thick.verdict === 'cannot tell'
      ? thick
      : pourTime({
          funnel: { shape: shape === 'cylinder' ? 'cylinder' : 'cone', diameter, depth },
          hose: { bore, length, drop: drop === undefined ? length : readSingle('--drop', drop, 'length') },
          kinematicViscosity: thick.viscosity,
          volume,
        })
  const isYes = result.verdict === 'pour time'
  const text = isYes ? `About ${showTime(result.total.value)}.` : 'Cannot tell.'
  return printAnswer(words, io, { text, result: isYes ? { ...result, viscosity: thick } : result, isYes })
}

function readPair(where: string, text: string): readonly [Quantity<LengthUnit>, Quantity<LengthUnit>] {
  const [first = '', second, ...rest] = text.split(/\s*[x×]\s*/)
  if (second === undefined || rest.length > 0)
    throw new UsageError(`${where} ${JSON.stringify(text)}: expected two lengths, such as "6 mm x 1 m"`)
  return [readSingle(where, first, 'length'), readSingle(where, second, 'length')]
}

/** The model is not exact to the second: longer times are whole minutes. */
function showTime(seconds: number): string {
  const whole = Math.round(seconds)
  if (whole < 120) return `${whole} s`
  const minutes = Math.floor(whole / 60)
  return minutes < 10 ? `${minutes} min ${whole % 60} s` : `${Math.round(seconds / 60)} min`
}
