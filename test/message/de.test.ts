import fc from 'fast-check'
import { toCardinal } from 'n2words/de-DE'
import { describe, expect, it } from 'vitest'
import { UNITS_BY_MEASURE, type Unit } from '../../src/quantity/unit.js'
import { de, deCalculations } from '../../src/v1/message/de.js'
import { renderMessage, type StepParams } from '../../src/v1/message.js'
import { law } from '../support/law.js'

const write = (code: string, params: object) => renderMessage({ code, params }, de)
const litres = (value: number) => ({ value, unit: 'L' })
const torque = (value: number) => ({ value, unit: 'N.m' })
const { numeral, quantity, name, band, range, duration } = de.speech

function writeLine(actions: readonly string[], ...params: readonly StepParams[]) {
  const found = de.lines.find(({ actions: lineActions }) => lineActions.join() === actions.join())
  const steps = (found?.actions ?? []).map((action, place) => ({
    do: action,
    ...(params[place] ?? params[0]),
  }))
  return { full: found?.full(...steps), short: found?.short(...steps) }
}

// Expected sentences are typed by hand.
describe('German findings', () => {
  it.each([
    [
      'calendar/not-a-date',
      { text: '2031-02-30' },
      '„2031-02-30“ ist kein Kalenderdatum. Jahr, Monat und Tag schreiben wie in 2031-01-12.',
    ],
    [
      'fill/refill-band-not-stated',
      { refilled: litres(0.86), printed: litres(0.95), difference: litres(-0.09) },
      'Eingefüllt: 0,86 L, 0,09 L weniger als die 0,95 L, die die Anleitung ohne Toleranz angibt.',
    ],
    [
      'fill/refill-level-decides',
      { difference: litres(0.05), method: 'dipstick' },
      'Der Peilstab entscheidet; eingefüllt wurden 0,05 L mehr als angegeben.',
    ],
    [
      'fill/refill-level-decides',
      { difference: litres(0), method: 'to level hole' },
      'Die Kontrollbohrung entscheidet; eingefüllt wurde genau die angegebene Menge.',
    ],
    ['fill/vessel-in-several-pours', { vessel: 'Krug', pours: 1 }, 'Mit „Krug“ in 1 Füllung abmessen.'],
    ['fill/vessel-in-several-pours', { vessel: 'Krug', pours: 2 }, 'Mit „Krug“ in 2 Füllungen abmessen.'],
    [
      'interval/by-event',
      { event: 'seal failure', date: '2023-10-01' },
      'fällig: Ausfall einer Dichtung am 2023-10-01. Wartung vor dem nächsten Einsatz ausführen.',
    ],
    [
      'interval/interval-not-stated',
      { which: 'window' },
      'Die Anleitung gibt kein Wartungsfenster an: siehe Anleitung.',
    ],
    [
      'interval/reading-at-start-missing',
      { meter: 'hours', of: 'last service', date: '2023-01-02' },
      'Kein Zählerstand (Betriebsstundenzähler) bei der letzten Wartung am 2023-01-02. Stand dieses Tages eintragen.',
    ],
    [
      'interval/fractional-period',
      { period: 'P1Y3M', factor: '0.5' },
      '1 Jahr und 3 Monate × 0,5 ergibt keine ganze Zahl von Monaten oder Tagen; Grenze nicht bekannt.',
    ],
    [
      'oil/limited-slip-not-on-label',
      { limitedSlip: 'not permitted' },
      'Das Etikett sagt nicht, ob das Öl einen Zusatz für Sperrdifferenziale enthält; laut Anleitung: nicht zulässig. Produktdatenblatt prüfen.',
    ],
    [
      'procedure/plug-not-cracked',
      { part: 'Ablassschraube', gearcase: 'Hinterachse', instance: 'links', step: 'a' },
      'Ablassschraube (Hinterachse, links): sitzt noch fest (Schritt „a“). Zuerst lösen.',
    ],
    ['procedure/plug-not-cracked', {}, 'Schraube: sitzt noch fest. Zuerst lösen.'],
    [
      'procedure/wrong-part',
      { step: 'a', action: 'tighten', required: ['opening', 'cover seal'] },
      'Schritt „a“: „tighten“ gilt für eine Öffnung und eine Deckeldichtung. „on“ berichtigen.',
    ],
    [
      'procedure/caution-hot-oil',
      { signal: 'caution' },
      'VORSICHT: Heißes Öl verbrüht. Abkühlen lassen, bis es nur noch warm ist; Gesicht und Hände fernhalten.',
    ],
    [
      'quantity/unit-of-other-measure',
      { unit: 'mm', measure: 'dynamicViscosity' },
      'mm ist keine Einheit für: dynamische Viskosität.',
    ],
    [
      'record/level-not-right',
      { gearcase: 'Nabe', level: 'above' },
      'Nabe: Ölstand über der Markierung. Berichtigen, bevor die Maschine arbeitet.',
    ],
    [
      'record/seal-not-new',
      { part: 'Ablassschraube', seal: 'crush washer', usedAgain: true },
      'Ablassschraube: wiederverwendet (Dichtring). Bei jedem Öffnen muss die Dichtung neu sein; neue einsetzen.',
    ],
    [
      'seal/material-suitable',
      {
        material: 'fibre',
        medium: 'mineral gear oil',
        min: { value: -20, unit: 'degC' },
        max: { value: 100, unit: 'degC' },
      },
      'Faserstoff ist in mineralischem Getriebeöl von −20 °C bis 100 °C beständig.',
    ],
    [
      'seal/keep-spare',
      { count: 1 },
      '1 Ersatzdichtung bereithalten, falls die alte die Prüfung nicht besteht.',
    ],
    [
      'service/figure-not-known',
      { part: { path: '/a', gearcase: 'Nabe' }, role: 'drain temperature', facts: ['serial', 'modelYear'] },
      'Nabe: Ablasstemperatur hängt ab von: Seriennummer und Modelljahr. Zuerst feststellen.',
    ],
    [
      'service/hand-tools',
      { tools: ['chocks', 'jack', 'breaker bar'] },
      'Handwerkzeug: Unterlegkeile, Wagenheber und Knebel mit langem Hebel.',
    ],
    [
      'service/time-sum',
      { steps: 1, minutes: 1.5, waitMinutes: 1 },
      '1 Schritt: 1,5 Minuten Arbeit und 1 Minute Wartezeit (eigene Schätzung).',
    ],
    [
      'spec/dangling-reference',
      { to: 'cover', id: 'hinten', known: ['vorn'], more: 2, meant: undefined },
      'Das Datenblatt hat keinen Deckel „hinten“. Vorhanden: „vorn“ und 2 weitere.',
    ],
    [
      'spec/wrong-type',
      { expected: 'whole-number', found: 'text', value: 'x' },
      'Erwartet: eine ganze Zahl; gefunden: ein Text (x).',
    ],
    [
      'spec/bad-notation',
      { text: 'x', range: [0, 1], found: 'x', expected: ['torque', 'turns'] },
      'Erwartet: ein Drehmoment wie "30 N·m" oder Umdrehungen wie "1 to 1.5 turns"; gefunden: "x".',
    ],
    [
      'spec/position-contradicts-place',
      { part: 'P', place: 'rear', position: 'front' },
      'P: Die Lage in Worten sagt „hinten“, die Position „vorn“. Anleitung prüfen und eine davon berichtigen.',
    ],
    [
      'thread/plug-not-in-table',
      { thread: 'M18x1.5', housing: 'cast iron' },
      'Für M18x1.5 (Gehäuse: Gusseisen) ist kein veröffentlichtes Drehmoment bekannt, daher wird es nicht verglichen.',
    ],
    [
      'torque/nearest-mark',
      { setting: torque(30), nominal: torque(31), percent: -3.2 },
      '30 N·m einstellen: der nächste Teilstrich, 3,2 % unter 31 N·m laut Anleitung.',
    ],
    [
      'torque/turns-correct',
      { turns: 2, min: '1.50', max: '3' },
      '2 Umdrehungen: richtig (1,50 bis 3 Umdrehungen).',
    ],
    [
      'torque/turns-too-few',
      { turns: 1, min: '1.5' },
      '1 Umdrehung: zu wenig; laut Anleitung mindestens 1,5.',
    ],
    [
      'torque/iso-figure-unknown',
      { type: 'beam' },
      'Der zulässige Fehler nach ISO 6789 ist für diese Bauart nicht bekannt (mit Biegestab). Genauigkeit des Herstellers in Prozent im Werkzeugkasten eintragen.',
    ],
  ])('%s', (code, params, sentence) => {
    expect(write(code, params).replaceAll('\u00a0', ' ')).toBe(sentence)
  })

  it('keep a value that no table has as it is typed', () => {
    expect(write('thread/plug-not-in-table', { thread: 'M8', housing: 'wood' })).toContain('(Gehäuse: wood)')
  })

  it('are the same in the smaller catalogue', () => {
    const finding = { code: 'torque/not-stated', params: {} }
    expect(renderMessage(finding, deCalculations)).toBe(
      'Das Datenblatt gibt kein Drehmoment an. Siehe Anleitung.',
    )
  })
})

describe('German forms', () => {
  it.each([
    [0, 'other'],
    [1, 'one'],
    [1.5, 'other'],
    [2, 'other'],
    [1.0004, 'one'],
    [21, 'other'],
  ] as const)('the plural of %s is %s', (value, form) => {
    expect(de.plural(value)).toBe(form)
  })

  it('joins lists', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((items) => de.list(items))).toEqual([
      '',
      'a',
      'a und b',
      'a, b und c',
    ])
  })

  it('writes periods, durations and clock times', () => {
    const none = { years: 0, months: 0, weeks: 0, days: 0 }
    expect(de.card.period({ years: 1, months: 1, weeks: 1, days: 1 })).toBe(
      '1\u00a0Jahr, 1\u00a0Monat, 1\u00a0Woche und 1\u00a0Tag',
    )
    expect(de.card.period({ years: 2, months: 6, weeks: 2, days: 3 })).toBe(
      '2\u00a0Jahre, 6\u00a0Monate, 2\u00a0Wochen und 3\u00a0Tage',
    )
    expect(de.card.period(none)).toBe('0\u00a0Tage')
    expect(de.card.duration(3725)).toBe('1\u00a0h 2\u00a0min 5\u00a0s')
    expect(de.wall.clock(65)).toBe('1:05')
    expect(de.card.moreMissing(1)).toBe('und 1 weiterer Wert, nicht angegeben oder nicht bekannt')
    expect(de.card.moreMissing(2)).toBe('und 2 weitere Werte, nicht angegeben oder nicht bekannt')
  })
})

describe('German steps', () => {
  const plug: StepParams = { part: 'Ablassschraube', gearcase: 'Hinterachse', instance: 'links' }

  it('have the gender of each seal', () => {
    const old = (seal: NonNullable<StepParams['seal']>) =>
      de.steps['take off old seal'].full({ ...plug, seal }).split('.')[0]
    expect(old('crush washer')).toBe('Alten Dichtring entfernen')
    expect(old('bonded seal')).toBe('Alten Gummi-Metall-Dichtring entfernen')
    expect(old('o-ring')).toBe('Alten O-Ring entfernen')
    expect(old('gasket')).toBe('Alte Flachdichtung entfernen')
    expect(old('not stated')).toBe('Alte Dichtung entfernen')
    const fresh = (seal: NonNullable<StepParams['seal']>) => de.steps['fit new seal'].short({ seal })
    expect(fresh('crush washer')).toBe('Neuer Dichtring: Öffnung')
    expect(fresh('thread sealant')).toBe('Neues Gewindedichtmittel: Öffnung')
    expect(fresh('gasket')).toBe('Neue Flachdichtung: Öffnung')
  })

  it('name the part without an article', () => {
    expect(
      de.steps.tighten.full({ ...plug, torque: '20–25 N·m', setting: '22,5 N·m', wrench: 'klein' }),
    ).toBe(
      'Ablassschraube (Hinterachse, links) mit 20–25 N·m anziehen: Schlüssel „klein“ auf 22,5 N·m einstellen.',
    )
    expect(de.steps.tighten.full({ part: 'Stopfen', turns: '2–3' })).toBe(
      'Stopfen 2–3 Umdrehungen über handfest anziehen.',
    )
    expect(de.steps['crack loose'].full({ beforeDraining: true, fluid: 'grease' })).toBe(
      'Schraube lösen. Geht das nicht: Fett nicht ablassen.',
    )
    expect(de.steps['turn the wheel'].short({ wheelMark: 'mark level', instance: 'links' })).toBe(
      'Rad drehen (links): Markierung auf Höhe der Nabe; wenn eine Bremse oder ein Gang hält, siehe Anleitung',
    )
    expect(
      de.steps['tighten cover'].short({ torque: '25 N·m', cover: { bolts: 4, pattern: 'in turn' } }),
    ).toBe('Schrauben (Deckel) der Reihe nach anziehen')
  })

  it('join what is done with one plug', () => {
    const { full, short } = writeLine(['fit new seal', 'fit', 'tighten'], {
      part: 'Ablassschraube',
      seal: 'crush washer',
      torque: '30 N·m',
      setting: '30 N·m',
    })
    expect(full).toBe(
      'Neuen Dichtring einsetzen und Schraube von Hand handfest eindrehen: Ablassschraube. Mit 30 N·m anziehen: Drehmomentschlüssel auf 30 N·m einstellen.',
    )
    expect(short).toBe('Neuer Dichtring; Ablassschraube anziehen')
    expect(
      writeLine(['place the pan', 'clean around', 'crack loose', 'take out'], {
        part: 'Ablassschraube',
        socket: 'Innensechskant 8 mm',
      }).full,
    ).toBe(
      'Auffangwanne unterstellen: Ablassschraube. Umgebung reinigen, mit Innensechskant 8 mm lösen und herausdrehen.',
    )
  })
})

describe('German numbers in words', () => {
  // Typed by hand.
  it.each([
    ['0', 'null'],
    ['1', 'eins'],
    ['8.9', 'acht Komma neun'],
    ['10.0', 'zehn'],
    ['-12.05', 'minus zwölf Komma null fünf'],
    ['16', 'sechzehn'],
    ['21', 'einundzwanzig'],
    ['101', 'einhunderteins'],
    ['1001', 'eintausendeins'],
    ['21000', 'einundzwanzigtausend'],
    ['101000', 'einhunderteintausend'],
    ['1000000', 'eine Million'],
    ['2000001', 'zwei Millionen eins'],
    ['1234567890', 'eins zwei drei vier fünf sechs sieben acht neun null'],
    ['½', '½'],
  ])('%s is %s', (digits, words) => {
    expect(numeral(digits)).toBe(words)
  })

  it('are those of n2words up to a million', () => {
    // Source: n2words 4.0.0 (MIT), de-DE, an independent implementation. It writes `einhunderteinstausend`; German has
    // `ein` before `tausend` (from memory).
    law(2000, fc.integer({ min: 0, max: 1_000_000 }), (value) => {
      expect(numeral(String(value))).toBe(toCardinal(value).replace('einstausend', 'eintausend'))
    })
  })

  it('count one of each unit with its gender, and many', () => {
    for (const unit of Object.values(UNITS_BY_MEASURE).flat()) {
      expect(quantity('1', unit)).toMatch(/^eine? \p{L}/u)
      expect(quantity('2', unit)).toMatch(/^zwei \p{L}/u)
      expect(quantity('2', unit)).not.toMatch(/[0-9_./]/)
    }
    const one = (unit: Unit) => quantity('1', unit)
    expect([one('h'), one('min'), one('mi'), one('L'), one('in'), one('gal_us')]).toEqual([
      'eine Stunde',
      'eine Minute',
      'eine Meile',
      'ein Liter',
      'ein Zoll',
      'eine US-Gallone',
    ])
    expect([quantity('21', 'd'), quantity('1.5', 'h'), quantity('1.0', 'h')]).toEqual([
      'einundzwanzig Tage',
      'eins Komma fünf Stunden',
      'eine Stunde',
    ])
  })

  it('say names, fractions, bands and durations', () => {
    expect(name('SAE 80W-90, API GL-5')).toBe('SAE achtzig W neunzig, API GL fünf')
    expect(name('1-Liter-Messbecher')).toBe('ein-Liter-Messbecher')
    expect(name('Steckschlüssel 10 mm')).toBe('Steckschlüssel zehn Millimeter')
    expect(name('1/2-Zoll-Schlüssel')).toBe('einhalb-Zoll-Schlüssel')
    expect(name('Halter 11/2')).toBe('Halter 11/2')
    expect(band({ kind: 'nominal', value: '7.5', asPrinted: '7 1/2', unit: 'lbf.ft' })).toBe(
      'siebeneinhalb Foot-pounds',
    )
    expect(band({ kind: 'nominal', value: '2.875', asPrinted: '2⅞', unit: 'qt_us' })).toBe(
      'zwei siebenachtel US-Quarts',
    )
    expect(band({ kind: 'nominal', value: '1.5', asPrinted: '1½', unit: 'L' })).toBe('eineinhalb Liter')
    expect(band({ kind: 'nominal', value: '0.75', asPrinted: '3/4', unit: 'L' })).toBe('dreiviertel Liter')
    expect(band({ kind: 'nominal', value: '450', asPrinted: '450 cc', unit: 'mL' })).toBe(
      'vierhundertfünfzig Kubikzentimeter',
    )
    expect(band({ kind: 'limits', min: '20', max: '25', unit: 'N.m' })).toBe(
      'zwanzig bis fünfundzwanzig Newtonmeter',
    )
    expect(band({ kind: 'limits', min: '20', unit: 'N.m' })).toBe('mindestens zwanzig Newtonmeter')
    expect(band({ kind: 'limits', max: '1', unit: 'h' })).toBe('höchstens eine Stunde')
    expect(band({ kind: 'nominal with tolerance', value: '45', minus: '5', plus: '5', unit: 'N.m' })).toBe(
      'fünfundvierzig plus oder minus fünf Newtonmeter',
    )
    expect(range('zwei', 'drei')).toBe('zwei bis drei')
    expect(duration(3661)).toBe('eine Stunde eine Minute eine Sekunde')
    expect(duration(0)).toBe('null Sekunden')
  })

  it('count seals on a cue sheet', () => {
    const { 'crush washer': washer, gasket, 'liquid gasket': sealant } = de.card.seals
    expect(
      de.cues.seals([
        { count: 1, kind: washer },
        { count: 2, kind: gasket },
        { count: 3, kind: sealant },
      ]),
    ).toBe('Diese Dichtungen bereitlegen: ein Dichtring, zwei Flachdichtungen und Flüssigdichtung.')
  })
})
