import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

async function run(...words: readonly string[]) {
  const io = memoryIo()
  const code = await runCommand(words, io)
  return {
    code,
    out: io.out.join('\n').replaceAll('\u00a0', ' '),
    err: io.err.join('\n').replaceAll('\u00a0', ' '),
  }
}

const LAST = ['--last', '2022-11-20 at 301.4 h, 1200 mi']
const NOW = ['--now', '2023-10-06 at 512.6 h, 2200 mi']
const EVERY = '250 h, 2500 mi, 12 months'
const JUG = ['--vessel', '700 mL by 10']
const WRENCH = ['--wrench', '40–200 lbf·in by 1']
const HOSE = ['--at', '20 °C', '--hose', '8 mm x 1 m', '--funnel', '120 mm x 100 mm']

describe('one question: the answer first, the exit code by it', () => {
  it.each([
    [['due', '--every', EVERY, ...LAST, ...NOW], 0, 'Not due: 45 days left, due on 2023-11-20.'],
    [['due', '--every', '220h', ...LAST, ...NOW], 0, 'Due soon: 8.8 h left, due at 521.4 h.'],
    [
      ['due', '--every', '220 h', '--soon-hours', '5', ...LAST, ...NOW],
      0,
      'Not due: 8.8 h left, due at 521.4 h.',
    ],
    [['due', '--every', '211.2 h', ...LAST, ...NOW], 1, 'Due: 0 h left, due at 512.6 h.'],
    [['due', '--every', '100 h', ...LAST, ...NOW], 1, 'Overdue: 111.2 h over, due at 401.4 h.'],
    [
      ['due', '--every', '200 h', '--window', '20 h', ...LAST, ...NOW],
      1,
      'Due: 11.2 h over, due at 501.4 h.',
    ],
    [
      ['due', '--every', '100 h', '--exit-code', ...LAST, ...NOW],
      3,
      'Overdue: 111.2 h over, due at 401.4 h.',
    ],
    [['due', '--every', '1000 km', ...LAST, '--now', '512.6 h'], 1, 'Cannot tell.'],
    [['due', '--every', '1000 km', '--exit-code', ...LAST, '--now', '512.6 h'], 4, 'Cannot tell.'],
    [
      ['due', '--every', '300 h', '--severe', 'factor 0.5', ...LAST, ...NOW],
      1,
      'Overdue: 61.2 h over, due at 451.4 h.',
    ],
    [
      ['due', '--every', '300 h', '--severe', '150h when towing', ...LAST, ...NOW],
      1,
      'Overdue: 61.2 h over, due at 451.4 h.',
    ],
    [
      ['due', '--every', '250 h', '--first', '50 h', '--from-new', '2023-05-01', '--now', '20 h'],
      0,
      'Not due: 30 h left, due at 50 h.',
    ],
    [
      ['due', '--every', '12 months', '--from-new', '2022-10-07', '--now', '2023-10-06'],
      0,
      'Due soon: 1 day left, due on 2023-10-07.',
    ],
    [
      ['torque', '9.3 lbf·ft', ...WRENCH],
      0,
      'Set 112 lbf·in (with care). Actual torque: 8.97 lbf·ft to 9.72 lbf·ft.',
    ],
    [
      ['torque', '9.3 ft-lb', ...WRENCH, '--accuracy', '4%', '--tolerance', '5'],
      0,
      'Set 112 lbf·in. Actual torque: 8.97 lbf·ft to 9.72 lbf·ft.',
    ],
    [
      ['torque', '9.3 ft-lb', ...WRENCH, '--crowfoot', '22 mm', '--lever', '250 mm', '--tolerance', '5'],
      0,
      'Set 103 lbf·in. Actual torque: 8.98 lbf·ft to 9.73 lbf·ft.',
    ],
    [['torque', '25 ± 2 N·m', ...WRENCH], 1, 'Does not fit.'],
    [['fill', '340 cc', ...JUG], 0, '1 pour: to the 340 mL mark. Error at most 5 mL.'],
    [['fill', '340 ± 4 cc', ...JUG], 1, 'Does not fit.'],
    [['fill', '340 cc', ...JUG, '--tolerance', '5'], 0, '1 pour: to the 340 mL mark. Error at most 5 mL.'],
    [['fill', '340 cc', ...JUG, '--tolerance', '1'], 1, 'Does not fit.'],
    [
      ['fill', '1.7 L', ...JUG],
      0,
      '3 pours: to the 700 mL mark 2 times, then to the 300 mL mark. Error at most 0.015 L.',
    ],
    [['fill', '30 mL', '--vessel', '50–700 mL by 10'], 1, 'Does not fit.'],
    [['pour', '340 cc', '--kv40', '143', '--kv100', '15.1', ...HOSE], 0, /^About 3 min \d+ s\.$/],
    [['pour', '340 cc', '--kv40', '143', '--kv100', '15.1', ...HOSE, '--drop', '2 m'], 1, 'Cannot tell.'],
    [['pour', '340 cc', '--kv40', '15.1', '--kv100', '143', ...HOSE], 1, 'Cannot tell.'],
    [['meets', '80W-90 GL-4', '--manual', 'SAE 80W-90 GL-4'], 0, 'Yes.'],
    [['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4'], 1, 'Cannot tell.'],
    [['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4', '--yellow-metal', 'yes'], 1, 'No.'],
    [['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4', '--yellow-metal', 'no'], 0, 'Yes.'],
    [['meets', '80W-90 GL-4/GL-5', '--manual', '80W-90 GL-4', '--yellow-metal', 'yes'], 1, 'Ask the maker.'],
    [
      ['meets', '75W-90 GL-5', '--manual', '75W-90 GL-5, limited-slip required', '--additive', 'no'],
      1,
      'No.',
    ],
    [['meets', 'VG 220', '--manual', 'ISO VG 220, -10 to 30 °C', '--ambient', '35degC'], 1, 'No.'],
    [['washer', '18 x 22 x 1.5 mm', '--thread', 'M18x1.5'], 0, 'It fits.'],
    [['washer', '18×24×1.5 mm', '--thread', 'M18x1.5'], 0, 'It fits, by its size.'],
    [['washer', '16 x 20 x 1.5 mm', '--thread', 'M18x1.5'], 1, 'Does not fit.'],
  ] as const)('%j', async (words, code, answer) => {
    const { code: found, out, err } = await run(...words)
    const [first = '', ...why] = out.split('\n')
    expect(err).toBe('')
    expect(first).toEqual(typeof answer === 'string' ? answer : expect.stringMatching(answer))
    expect(found).toBe(code)
    expect(why.length).toBeGreaterThan(0)
    expect(why.length).toBeLessThanOrEqual(5)
  })

  it.each([
    [['due', '--every', EVERY, ...LAST, ...NOW], 'not due'],
    [['torque', '9.3 lbf·ft', ...WRENCH], 'fits with care'],
    [['fill', '340 cc', ...JUG], 'tolerance not stated'],
    [['pour', '340 cc', '--kv40', '143', '--kv100', '15.1', ...HOSE], 'pour time'],
    [['meets', '80W-90 GL-5', '--manual', '80W-90 GL-4'], 'cannot tell'],
    [['washer', '18 x 22 x 1.5 mm', '--thread', 'M18x1.5'], 'in the table'],
  ] as const)('%j gives the whole verdict as JSON', async (words, verdict) => {
    const { out } = await run(...words, '--format', 'json')
    expect(JSON.parse(out)).toMatchObject({ verdict, reasons: expect.any(Array) })
  })
})

describe('what cannot be read is a usage error that says what to write', () => {
  it.each([
    [['due', '--every', EVERY, ...NOW], /write --last/],
    [['due', '--every', EVERY, ...LAST, ...NOW, '--from-new', '2022-01-01'], /write --last/],
    [['due', '--every', EVERY, ...LAST], /write --now, such as/],
    [['due', '--every', EVERY, ...LAST, '--now', '2022-01-01 at 512.6 h'], /2022-11-20 is after 2022-01-01/],
    [['due', '--every', EVERY, '--last', '301.4 h', ...NOW], /expected a date and meters/],
    [['due', '--every', EVERY, ...LAST, '--now', '2023-13-40 at 5 h'], /expected a date and meters/],
    [['due', '--every', EVERY, '--from-new', 'May', ...NOW], /expected a date such as/],
    [['due', '--every', '250 hrs or so', ...LAST, ...NOW], /^drivetrain-service: --every "250 hrs or so": /],
    [['due', '--every', EVERY, ...LAST, ...NOW, 'examples/tind-4'], /needs no document/],
    [['torque', ...WRENCH], /torque: expected a value, such as/],
    [['torque', '9.3 lbf·ft'], /write --wrench, such as/],
    [['torque', '9.3', ...WRENCH], /torque "9.3": /],
    [['torque', '9.3 lbf·ft', '--wrench', '40–200 lbf·in'], /expected marks and a step/],
    [['torque', '9.3 lbf·ft', '--wrench', '200 lbf·in by 1'], /expected a range/],
    [['torque', '9.3 lbf·ft', '--wrench', '40–200 lbf·in by 0'], /step must be above 0/],
    [['torque', '9.3 lbf·ft', ...WRENCH, '--accuracy', 'good'], /--accuracy good: expected a percentage/],
    [['torque', '9.3 lbf·ft', ...WRENCH, '--crowfoot', '22 mm'], /write the length of the wrench too/],
    [['fill', '300–340 cc', ...JUG], /expected one volume/],
    [['fill', '1 qt', ...JUG], /fill "1 qt": /],
    [['pour', '340 cc', '--kv40', '143', ...HOSE], /write --kv100/],
    [
      ['pour', '340 cc', '--kv40', '143', '--kv100', '15', '--at', '5 °C', '--hose', '6 mm', '--funnel', 'x'],
      /expected two lengths/,
    ],
    [['meets', '80W-90 GL-5'], /write --manual/],
    [['meets', 'good oil', '--manual', '80W-90 GL-4'], /meets "good oil": /],
    [['meets', '80W-90', '--manual', 'SAE 80W-90; SAE 90'], /expected one oil/],
    [['meets', '80W-90', '--manual', '80W-90', '--additive', 'maybe'], /expected one of yes, no/],
    [['washer', '18 x 24', '--thread', 'M18x1.5'], /washer "18 x 24": /],
    [['washer', '18 x 24 x 1.5 mm'], /write --thread/],
  ] as const)('%j', async (words, message) => {
    const { code, out, err } = await run(...words)
    expect(out).toBe('')
    expect(err).toMatch(message)
    expect(code).toBe(2)
  })
})
