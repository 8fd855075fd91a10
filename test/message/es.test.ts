import fc from 'fast-check'
import { toCardinal } from 'n2words/es-ES'
import { describe, expect, it } from 'vitest'
import { es } from '../../src/message/es/index.js'
import { join, withDe } from '../../src/message/es/words.js'
import { UNITS_BY_MEASURE, type Unit } from '../../src/quantity/unit.js'
import type { StepParams } from '../../src/v1/message.js'
import { explain, renderMessage } from '../../src/v1/message.js'
import type { Action } from '../../src/v1/spec.js'
import { law } from '../support/law.js'

const write = (code: string, params: object = {}) => renderMessage({ code, params }, es)
const { numeral, quantity, name, band, range, duration } = es.speech

describe('Spanish sentences', () => {
  // Typed by hand: the figures with the marks of the language, names from documents in quotes and without an article.
  it.each([
    [
      'calendar/not-a-period',
      { text: 'P1.5M' },
      '“P1.5M” no es un período del calendario. Escribir años, meses, semanas o días enteros, como P6M o P1Y.',
    ],
    [
      'fill/refill-band-not-stated',
      {
        refilled: { value: 0.5, unit: 'L' },
        printed: { value: '0.45', unit: 'L' },
        difference: { value: -0.05, unit: 'L' },
      },
      'Se llenó con 0,5 L, 0,05 L menos que los 0,45 L que el manual indica sin tolerancia.',
    ],
    [
      'fill/refill-level-decides',
      { difference: { value: 0, unit: 'L' }, method: 'sight glass' },
      'Decide la mirilla; se llenó con la cantidad indicada exacta.',
    ],
    [
      'interval/by-meter',
      {
        by: 'hours',
        verdict: 'overdue',
        printed: { value: '200', unit: 'h' },
        since: 'last service',
        from: { date: '2022-11-20', meter: { value: 301.4, unit: 'h' } },
        duePoint: { meter: { value: 501.4, unit: 'h' } },
        now: { date: '2023-10-04', meter: { value: 512.6, unit: 'h' } },
        left: { value: -11.2, unit: 'h' },
      },
      'Vencido: 200 h desde el último servicio, el 2022-11-20, con 301,4 h; vence a 501,4 h; 512,6 h el 2023-10-04, 11,2 h de más.',
    ],
    [
      'interval/by-event',
      { event: 'submersion', date: '2023-10-01' },
      'Pendiente: inmersión el 2023-10-01. Hacer el servicio antes del próximo uso.',
    ],
    [
      'interval/interval-depends',
      { which: 'severe', facts: ['variant', 'serial'] },
      'El intervalo de uso severo depende de la variante y del número de serie. Anotarlo en el historial.',
    ],
    [
      'interval/reading-stale',
      { meter: 'hours', date: '2023-10-01', days: 1, staleAfter: 30 },
      'La última lectura del horómetro, del 2023-10-01, tiene 1 día de uso (límite 30). Volver a leer el contador.',
    ],
    [
      'interval/date-in-the-future',
      { what: 'distance', date: '2031-01-01' },
      'El odómetro tiene fecha 2031-01-01, posterior a hoy, así que no se cuenta.',
    ],
    [
      'interval/fractional-period',
      { period: 'P1Y1M', factor: '0.5' },
      '1 año y 1 mes × 0,5 no es un número entero de meses o días; límite desconocido.',
    ],
    [
      'oil/limited-slip-not-on-label',
      { limitedSlip: 'not permitted' },
      'La etiqueta no dice si el aceite lleva aditivo de deslizamiento limitado; según el manual: no permitido. Comprobar la ficha técnica.',
    ],
    [
      'oil/viscosities-missing',
      { missing: ['kv40', 'kv100'] },
      'No se conoce la viscosidad a 40 °C y 100 °C. Ver la ficha técnica.',
    ],
    [
      'procedure/fill-not-cracked',
      { part: 'drain plug', gearcase: 'rear axle', instance: 'left', step: 'open-drain' },
      'Se abre “drain plug” de “rear axle” (left) antes de saber que el tapón de llenado cede (paso “open-drain”). Aflojar antes el tapón de llenado: una caja drenada que no se puede llenar deja la máquina parada.',
    ],
    ['procedure/face-not-wiped', {}, 'La cara de sellado de la pieza no se ha limpiado. Limpiarla antes.'],
    [
      'procedure/no-pan',
      { part: 'tapón' },
      'No hay bandeja debajo de “tapón” al abrirse. Poner antes la bandeja.',
    ],
    [
      'procedure/filter-not-changed',
      {},
      'Un filtro o colador de la caja de engranajes nunca se quita. Cambiarlo o limpiarlo con el aceite fuera.',
    ],
    [
      'procedure/wrong-part',
      { step: 'a', action: 'tighten', required: ['cover', 'opening'] },
      'Paso “a”: “tighten” se aplica a una tapa o una abertura. Corregir “on”.',
    ],
    [
      'procedure/caution-hot-oil',
      { signal: 'caution' },
      'PRECAUCIÓN: El aceite caliente quema. Dejar que se enfríe hasta que esté tibio; apartar la cara y las manos.',
    ],
    [
      'procedure/caution-lifting',
      { signal: 'danger' },
      'PELIGRO: Una máquina elevada puede caer y matar. Mantenerse apartado mientras se mueve el gato; nunca trabajar bajo un gato.',
    ],
    [
      'quantity/printed-figures-slip',
      {
        first: { kind: 'nominal', value: '12', unit: 'lbf.in' },
        second: { kind: 'nominal', value: '12', unit: 'lbf.ft' },
        slip: 'foot for inch',
        ratio: '12',
      },
      '12 lbf·in y 12 lbf·ft difieren en un factor de 12: quizá se confundieron libras-pulgada y libras-pie. Averiguar cuál es correcto antes de usarlos.',
    ],
    [
      'record/leak-left',
      { gearcase: 'Rear gearcase', found: 'weeping' },
      'Rear gearcase: se cerró aunque rezumaba. Un tapón con arandela necesita una arandela nueva, nunca más par; un tapón cónico se puede apretar dentro de sus vueltas.',
    ],
    [
      'spec/dangling-reference',
      { to: 'axle', id: 'rea', known: ['front', 'rear'], more: 0, meant: 'rear' },
      'La hoja de datos no tiene ningún eje “rea”. ¿Se quería decir “rear”?',
    ],
    [
      'spec/dangling-reference',
      { to: 'source', id: 'x', known: ['manual'], more: 2, meant: undefined },
      'La hoja de datos no tiene ninguna fuente “x”. Hay “manual” y 2 más.',
    ],
    [
      'spec/wrong-type',
      { expected: 'list', found: 'text', value: 'x' },
      'Se esperaba una lista; se encontró un texto (x).',
    ],
    [
      'spec/not-in-list',
      { found: 'x', allowed: ['fill', 'other'] },
      'Se esperaba "fill" u "other"; se encontró "x".',
    ],
    [
      'spec/bad-notation',
      { text: '30', range: [0, 2], found: '30', expected: ['torque', 'turns'] },
      'Se esperaba un par como "30 N·m" o vueltas como "1 to 1.5 turns"; se encontró "30".',
    ],
    [
      'seal/replace-not-stated',
      { kind: 'o-ring' },
      'Junta tórica: el manual no dice cuándo cambiar esta pieza. Poner una nueva.',
    ],
    [
      'seal/material-unsuitable',
      { material: 'EPDM', medium: 'hypoid EP oil' },
      'EPDM se hincha en aceite EP para engranajes hipoides. No montarlo nunca.',
    ],
    [
      'service/hand-tools',
      { tools: ['chocks', 'jack', 'breaker bar'] },
      'Herramientas de mano: calzos, gato y barra de fuerza.',
    ],
    [
      'service/figure-not-known',
      { part: { path: '', gearcase: 'rear axle', part: 'plug' }, role: 'tightening', facts: ['market'] },
      'Rear axle: plug: par de apriete depende del mercado. Averiguarlo primero.',
    ],
    [
      'service/socket-missing',
      { part: { path: '', part: 'plug' }, drive: 'internal hex', size: '10 mm' },
      'La caja de herramientas no tiene herramienta para hexágono interior 10 mm (plug).',
    ],
    [
      'service/only-on-some-machines',
      { modelYears: { from: 2019, to: 2021 }, market: ['EU', 'US'] },
      'Solo en años de modelo 2019 a 2021 y mercado EU o US',
    ],
    [
      'thread/plug-not-in-table',
      { thread: 'M18x1.5', housing: 'cast iron' },
      'No se conoce ningún par publicado para un tapón M18x1.5 (caja: fundición), así que el par no se compara.',
    ],
    ['torque/turns-too-few', { turns: 1, min: '1.5' }, '1 vuelta: pocas; el manual dice al menos 1,5.'],
    [
      'torque/iso-figure-unknown',
      { type: 'beam' },
      'No se conoce el error permitido por ISO 6789 para una llave de aguja. Anotar en la caja de herramientas la exactitud del fabricante, en tanto por ciento.',
    ],
    [
      'torque/nearest-mark',
      {
        setting: { value: 22.5, unit: 'N.m' },
        nominal: { value: '22.49', unit: 'N.m' },
        percent: 0.04,
      },
      'Ajustar a 22,5 N·m: la marca más cercana, menos de 0,1 % por encima del valor del manual, 22,49 N·m.',
    ],
  ])('%s %j', (code, params, text) => {
    expect(write(code, params).replace(/[\u00a0\u202f]/g, ' ')).toBe(text)
  })

  it('explains reasons inside a result', () => {
    expect(explain({ reasons: [{ code: 'torque/not-stated', params: {} }] }, es)).toEqual([
      'La hoja de datos no indica ningún par. Ver el manual.',
    ])
  })
})

describe('articles, lists and plurals', () => {
  it('joins “de” to an article', () => {
    expect([withDe('el tapón'), withDe('la tapa'), withDe('“el 4”')]).toEqual([
      'del tapón',
      'de la tapa',
      'de “el 4”',
    ])
  })

  // Source: RAE, consulta sobre la conjunción y/e (epe.es, 2023-09-13) and o/u before the sound of o (memoflores.tv).
  it('joins lists as Spanish does', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((items) => es.list(items))).toEqual([
      '',
      'a',
      'a y b',
      'a, b y c',
    ])
    expect(join(['aguja', 'hilo'], 'y')).toBe('aguja e hilo')
    expect(join(['madera', 'hierro'], 'y')).toBe('madera y hierro')
    expect(join(['GL-4', 'ISO VG 220'], 'y')).toBe('GL-4 e ISO VG 220')
    expect(join(['minutos', 'horas'], 'o')).toBe('minutos u horas')
    expect(['8', '80', '11', '110', '7'].map((last) => join(['1', last], 'o'))).toEqual([
      '1 u 8',
      '1 u 80',
      '1 u 11',
      '1 o 110',
      '1 o 7',
    ])
  })

  it('has the plural forms of 0, 1, 1.5 and 2', () => {
    expect([0, 1, 1.5, 2].map((turns) => write('torque/turns-correct', { turns, min: '1' }))).toEqual(
      ['0\u00a0vueltas', '1\u00a0vuelta', '1,5\u00a0vueltas', '2\u00a0vueltas'].map(
        (count) => `${count}: correcto (al menos 1 vuelta).`,
      ),
    )
  })

  // Up to 1e15: beyond it, the Intl of Node 20 says `other` of some whole millions, such as 999999999999e6.
  it('has the plural of Intl', () => {
    const rules = new Intl.PluralRules('es')
    const value = fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.integer({ min: -1e6, max: 1e6 }).map((count) => count * 1_000_000),
      fc.double({ min: -1e15, max: 1e15, noNaN: true }),
      fc.double({ min: 0.998, max: 1.002, noNaN: true }),
    )
    law(2000, value, (number) => es.plural(number) === rules.select(number))
  })

  it('writes periods and durations', () => {
    const none = { years: 0, months: 0, weeks: 0, days: 0 }
    expect(es.card.period({ ...none, months: 6 })).toBe('6\u00a0meses')
    expect(es.card.period({ years: 1, months: 1, weeks: 2, days: 3 })).toBe(
      '1\u00a0año, 1\u00a0mes, 2\u00a0semanas y 3\u00a0días',
    )
    expect(es.card.period(none)).toBe('0\u00a0días')
    expect(es.card.duration(3725)).toBe('1\u00a0h 2\u00a0min 5\u00a0s')
  })
})

describe('Spanish steps', () => {
  const full = (action: Action, params: StepParams = {}) => es.steps[action].full(params)
  const short = (action: Action, params: StepParams = {}) => es.steps[action].short(params)

  it('gives a word of the catalogue its article, and a name of the sheet quotes', () => {
    expect(full('place the pan')).toBe('Poner la bandeja de drenaje debajo de la abertura de drenaje.')
    expect(full('inspect the magnet')).toContain('Inspeccionar el imán del tapón.')
    expect(full('inspect the magnet', { part: 'drain plug', instance: 'left' })).toContain(
      'Inspeccionar el imán de “drain plug” (left).',
    )
    expect(full('take off cover')).toContain('Aflojar todos los tornillos de la tapa.')
    expect(short('crack loose', { part: 'fill plug' })).toBe('fill plug: aflojar')
  })

  it('agrees the words of a seal', () => {
    expect(full('fit new seal', { part: 'plug', seal: 'o-ring' })).toBe(
      'Montar una junta tórica nueva en “plug”.',
    )
    expect(full('take off old seal', { seal: 'crush washer' })).toBe(
      'Quitar la arandela de sellado vieja. No dejar restos en la caja. Si está pegada al tapón o a la caja, rasparla. No rayar la cara.',
    )
    expect(
      es.cues.seals([
        { count: 1, kind: es.card.seals['o-ring'] },
        { count: 2, kind: es.card.seals.gasket },
        { count: 1, kind: es.card.seals['liquid gasket'] },
      ]),
    ).toBe('Tener preparado: una junta tórica, dos juntas planas y junta líquida.')
  })

  it('tells the torque, the setting, the turns and the gap apart', () => {
    const plug = { part: 'drain plug' }
    expect(
      full('tighten', { ...plug, torque: '20–25 N·m', setting: '22,5 N·m', wrench: 'small wrench' }),
    ).toBe('Ajustar “small wrench” a 22,5 N·m. Apretar “drain plug” con un par de 20–25 N·m.')
    expect(full('tighten', { ...plug, turns: '2–3' })).toBe(
      'Apretar “drain plug” por vueltas. Vueltas después del apriete a mano: 2–3.',
    )
    expect(full('tighten', { ...plug, gap: 'not stated' })).toBe(
      'Apretar “drain plug” como dice el manual. El par no se indica aquí: ver el manual.',
    )
    expect(full('tighten', { ...plug, gap: 'cannot tell' })).toContain('El par no se sabe aquí')
  })

  it('names the wheel mark and the order of bolts in its own words', () => {
    expect(short('turn the wheel', { wheelMark: 'mark level' })).toContain('marca a la altura del cubo')
    expect(short('tighten cover', { torque: '25 N·m', cover: { pattern: 'crosswise' } })).toBe(
      'tapa, tornillos (en cruz): apretar',
    )
  })
})

describe('Spanish speech', () => {
  // Typed by hand after RAE, Ortografía de los numerales cardinales (rae.es).
  it.each([
    ['0', 'cero'],
    ['8.90', 'ocho coma nueve'],
    ['-12.05', 'menos doce coma cero cinco'],
    ['16', 'dieciséis'],
    ['21', 'veintiuno'],
    ['31', 'treinta y uno'],
    ['100', 'cien'],
    ['101', 'ciento uno'],
    ['500', 'quinientos'],
    ['1000', 'mil'],
    ['21000', 'veintiún mil'],
    ['31031', 'treinta y un mil treinta y uno'],
    ['1000000', 'un millón'],
    ['2000001', 'dos millones uno'],
    ['1234567890', 'uno dos tres cuatro cinco seis siete ocho nueve cero'],
    ['½', '½'],
  ])('%s is %s', (digits, words) => {
    expect(numeral(digits)).toBe(words)
  })

  /**
   * n2words, es-ES (https://github.com/forzagreen/n2words), with two corrections after RAE: it writes “dieciseis” without
   * its accent, and “veintiuno mil” for “veintiún mil”.
   */
  const spellByPackage = (value: number) =>
    toCardinal(value)
      .replace(/dieciseis/g, 'dieciséis')
      .replace(/veintiuno mil/, 'veintiún mil')
      .replace(/uno mil/, 'un mil')

  it('spells every number up to a million as n2words does', () => {
    law(4000, fc.integer({ min: 0, max: 1_000_000 }), (value) => {
      expect(numeral(String(value))).toBe(spellByPackage(value))
    })
    for (let value = 0; value <= 1100; value++) expect(numeral(String(value))).toBe(spellByPackage(value))
  })

  it('agrees a number with its unit', () => {
    expect(quantity('1', 'L')).toBe('un litro')
    expect(quantity('1', 'h')).toBe('una hora')
    expect(quantity('21', 'km')).toBe('veintiún kilómetros')
    expect(quantity('21', 'lbf.ft')).toBe('veintiuna libras pie')
    expect(quantity('31', 'N.m')).toBe('treinta y un newtons metro')
    expect(quantity('200', 'h')).toBe('doscientas horas')
    expect(quantity('500', 'mi')).toBe('quinientas millas')
    expect(quantity('200000', 'mi')).toBe('doscientas mil millas')
    expect(quantity('8.9', 'lbf.ft')).toBe('ocho coma nueve libras pie')
    expect(quantity('1000000', 'mL')).toBe('un millón de mililitros')
  })

  it('names every unit, one and many', () => {
    for (const unit of Object.values(UNITS_BY_MEASURE).flat()) {
      expect(quantity('1', unit)).toMatch(/^una? \p{L}/u)
      expect(quantity('2', unit)).toMatch(/^dos \p{L}/u)
      expect(quantity('2', unit)).not.toMatch(/[0-9_./]/)
      expect(quantity('2', unit).slice('dos '.length)).not.toBe(quantity('1', unit).replace(/^una? /, ''))
    }
  })

  it('says bands, ranges, fractions and durations', () => {
    expect(band({ kind: 'limits', min: '20', max: '25', unit: 'N.m' })).toBe(
      'veinte a veinticinco newtons metro',
    )
    expect(band({ kind: 'limits', min: '200', max: '250', unit: 'h' })).toBe(
      'doscientas a doscientas cincuenta horas',
    )
    expect(band({ kind: 'limits', min: '20', unit: 'N.m' })).toBe('al menos veinte newtons metro')
    expect(band({ kind: 'limits', max: '1', unit: 'h' })).toBe('como máximo una hora')
    const tolerance = { kind: 'nominal with tolerance', value: '20', minus: '2', unit: 'N.m' } as const
    expect(band({ ...tolerance, plus: '2' })).toBe('veinte más menos dos newtons metro')
    expect(band({ ...tolerance, plus: '3' })).toBe('veinte más tres menos dos newtons metro')
    const printed = (value: string, asPrinted: string, unit: Unit) =>
      band({ kind: 'nominal', value, asPrinted, unit })
    expect(printed('7.5', '7 1/2', 'lbf.ft')).toBe('siete libras pie y media')
    expect(printed('1.5', '1½', 'pt_us')).toBe('una pinta estadounidense y media')
    expect(printed('0.5', '½', 'gal_us')).toBe('medio galón estadounidense')
    expect(printed('0.75', '3/4', 'L')).toBe('tres cuartos de litro')
    expect(printed('2.875', '2⅞', 'in')).toBe('dos pulgadas y siete octavos')
    expect(printed('450', '450 cc', 'mL')).toBe('cuatrocientos cincuenta centímetros cúbicos')
    expect(range('dos', 'tres')).toBe('dos a tres')
    expect(duration(3725)).toBe('una hora, dos minutos y cinco segundos')
    expect(duration(0)).toBe('cero segundos')
  })

  it('says names as people read them', () => {
    expect(name('SAE 80W-90, API GL-5')).toBe('SAE ochenta W noventa, API GL cinco')
    expect(name('vaso de 10 mm')).toBe('vaso de diez milímetros')
    expect(name('galga de 1 mm')).toBe('galga de un milímetro')
    expect(name('cordón de 1,5 mm')).toBe('cordón de uno coma cinco milímetros')
    expect(name('llave de 1/2 in')).toBe('llave de media pulgada')
    expect(name('llave de 3/8 in')).toBe('llave de tres octavos de pulgada')
    expect(name('21\u00a0días')).toBe('veintiún días')
    expect(name('1\u00a0año y 21\u00a0semanas')).toBe('un año y veintiuna semanas')
    expect(name('soporte 11/2')).toBe('soporte 11/2')
  })
})
