import { describe, expect, it } from 'vitest'
import { COMMAND_NAMES, COMMAND_TABLE } from '../../src/cli/commandTable.js'
import { en } from '../../src/cli/message/en/index.js'
import { OPTION_TABLE, type OptionName } from '../../src/cli/optionTable.js'
import { parseWords } from '../../src/cli/parseWords.js'
import { readOptions } from '../../src/cli/readOptions.js'
import { renderHelp, runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'
import { usageText } from '../support/usageText.js'

const OPTIONS = Object.keys(OPTION_TABLE) as OptionName[]
const read = (...words: readonly string[]) => readOptions(parseWords(words, OPTIONS), memoryIo())

describe('the words of a command line', () => {
  it('have the defaults that the help states', () => {
    expect(read('a', 'b')).toEqual({
      paths: ['a', 'b'],
      level: 'warning',
      format: 'text',
      today: memoryIo().today(),
      services: 'due',
      samples: [],
      paper: 'visit',
      due: {
        soon: { hours: 10, distance: { value: 100, unit: 'km' }, days: 14 },
        staleAfter: { days: 30 },
      },
      period: {},
      iso6789: '2017',
      sheets: [],
      decimal: 'point',
      telematics: '2020',
      timesFrom: [],
    })
  })

  it('say all of it otherwise', () => {
    const words = [
      ...['--level', 'info', '--format', 'json', '--today', '2020-02-29', '--ambient', '43degF'],
      ...[
        '--machine',
        'm',
        '--service',
        's',
        '--service',
        't',
        '--severity',
        'severe',
        '--soon-hours',
        '1.5',
      ],
      ...[
        '--soon-km',
        '2',
        '--soon-days',
        '0',
        '--stale-days',
        '7',
        '--edition',
        '2003',
        '--tolerance',
        '5',
        '--out',
        'o',
      ],
      ...[
        '--to',
        'mm',
        '--assume',
        'us',
        '--sheet',
        'x',
        '--sheet',
        'y',
        '--equipment',
        'e',
        '--telematics',
        '2016',
        '--exit-code',
        '--sample',
        'front',
        '--record',
        'r',
        '--since',
        '2020-01-01',
        '--until',
        '2020-02-29',
      ],
    ]
    expect(read(...words)).toEqual({
      paths: [],
      level: 'info',
      format: 'json',
      today: '2020-02-29',
      ambient: { value: 43, unit: 'degF' },
      machine: 'm',
      services: ['s', 't'],
      samples: ['front'],
      paper: 'visit',
      due: { soon: { hours: 1.5, distance: { value: 2, unit: 'km' }, days: 0 }, staleAfter: { days: 7 } },
      severity: 'severe',
      period: { from: '2020-01-01', to: '2020-02-29' },
      iso6789: '2003',
      tolerancePercent: 5,
      out: 'o',
      to: 'mm',
      assume: 'us',
      sheets: ['x', 'y'],
      equipment: 'e',
      record: 'r',
      decimal: 'point',
      telematics: '2016',
      timesFrom: [],
      exitCode: true,
    })
    expect(parseWords(['-h'], []).values.help).toBe(true)
  })

  it.each([
    [['--ambient', '-10degC'], { value: -10, unit: 'degC' }],
    [['--ambient=-10 °C'], { value: -10, unit: 'degC' }],
    [['--ambient', '-0.5 degC'], { value: -0.5, unit: 'degC' }],
    [['--ambient', '-100degC'], { value: -100, unit: 'degC' }],
    [['--ambient', '100degC'], { value: 100, unit: 'degC' }],
    [['--ambient', '280 K'], { value: 280, unit: 'K' }],
  ] as const)('%j is a temperature', (words, ambient) => {
    expect(read(...words).ambient).toEqual(ambient)
  })

  it.each([
    [['--ambient', '-100.1degC'], /expected -100 degC to 100 degC/],
    [['--ambient', '100.1degC'], /expected -100 degC to 100 degC/],
    [['--ambient', '0 K'], /expected -100 degC to 100 degC/],
    [['--ambient', '5-10 degC'], /expected a temperature such as/],
    [['--ambient', '6 ± 1 degC'], /expected a temperature such as/],
    [['--ambient', '6'], /expected a temperature such as/],
    [['--ambient', ''], /expected a temperature such as/],
    [['--soon-hours', '-3'], /--soon-hours -3: expected a number/],
    [['--soon-km', '1e3'], /--soon-km 1e3: expected a number/],
    [['--soon-days', 'NaN'], /--soon-days NaN/],
    [['--stale-days', '12345678'], /expected a number/],
    [['--level', 'fatal'], /one of error, warning, info/],
    [['--severity', 'hard'], /one of normal, severe/],
    [['--telematics', '2017'], /one of 2016, 2020/],
    [['--today', '06.10.2023'], /a date such as/],
    [['--out'], /--out/],
    [['-x'], /-x/],
    [['--help=yes'], /help/],
  ])('%j is refused', async (words, message) => {
    expect(await usageText(() => read(...words))).toMatch(message)
  })

  it('a number below zero without an option is a word like others, and a file after `--` too', () => {
    expect(read('-40 degC', '--to', 'degF')).toMatchObject({ paths: ['-40 degC'], to: 'degF' })
    expect(read('-5', 'degC')).toMatchObject({ paths: ['-5', 'degC'] })
    expect(read('--', '-file.json')).toMatchObject({ paths: ['-file.json'] })
  })

  it('-40 degrees are as many in °F', async () => {
    const io = memoryIo()
    expect(await runCommand(['convert', '-40 degC', '--to', 'degF'], io)).toBe(0)
    expect(io.out.join('')).toMatch(/^[−-]40.°C = [−-]40.°F/)
  })
})

describe('each command', () => {
  it.each(COMMAND_NAMES)('%s takes the options that its help names, and no other', async (name) => {
    const help = renderHelp(name, en).replace(/^Example: .*$/m, '')
    const named = new Set(help.match(/--[a-z0-9-]+/g)?.map((word) => word.slice(2)))
    expect([...named].filter((word) => !OPTIONS.some((option) => option === word))).toEqual([])
    const takenNames: string[] = []
    for (const option of OPTIONS) {
      const io = memoryIo()
      expect(await runCommand([name, `--${option}`, '\u0000'], io)).toBe(2)
      if (!io.err.join('').includes(`--${option} is not an option of this command`)) takenNames.push(option)
    }
    expect(new Set(takenNames)).toEqual(named)
    expect(new Set<string>(COMMAND_TABLE[name].options)).toEqual(named)
  })
})
